package lodeswing.analysis.trace;

import java.util.Arrays;

/**
 * A path in plan on a uniform grid of time: columns of one length. Owns its arrays; those handed
 * out are not to be written to.
 */
public final class Samples {

  private final double interval;
  private final double[] x;
  private final double[] y;
  private final double[] vx;
  private final double[] vy;
  private final double[] energy;

  /**
   * Takes over columns.
   *
   * @param interval time between samples
   * @param columns x, y, vx, vy [SI on the bench] and energy [J on the bench], taken over
   */
  public Samples(double interval, double[]... columns) {
    if (columns.length != 5
        || Arrays.stream(columns).anyMatch(c -> c.length != columns[0].length)) {
      throw new IllegalArgumentException("a path has five columns of one length");
    }
    this.interval = interval;
    x = columns[0];
    y = columns[1];
    vx = columns[2];
    vy = columns[3];
    energy = columns[4];
  }

  /** How many samples there are. */
  public int count() {
    return x.length;
  }

  /** Time of sample i. */
  public double t(int i) {
    return i * interval;
  }

  /** Time between samples. */
  public double interval() {
    return interval;
  }

  /** Times of all samples, a new array. */
  public double[] times() {
    double[] times = new double[count()];
    Arrays.setAll(times, this::t);
    return times;
  }

  /** Plan positions along x. */
  public double[] x() {
    return x;
  }

  /** Plan positions along y. */
  public double[] y() {
    return y;
  }

  /** Plan velocities along x. */
  public double[] vx() {
    return vx;
  }

  /** Plan velocities along y. */
  public double[] vy() {
    return vy;
  }

  /** Mechanical energies. */
  public double[] energy() {
    return energy;
  }
}
