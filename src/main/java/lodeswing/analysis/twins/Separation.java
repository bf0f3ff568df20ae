package lodeswing.analysis.twins;

/**
 * How far apart two bobs are, at times for a picture; owns its arrays, which are not to be written
 * to.
 */
public final class Separation {

  private final double[] t;
  private final double[] distance;
  private final double[] phase;

  /**
   * Takes over columns of one length.
   *
   * @param t times
   * @param distance distances in plan
   * @param phase distances with velocities, those over the natural rate
   */
  public Separation(double[] t, double[] distance, double[] phase) {
    if (t.length != distance.length || t.length != phase.length) {
      throw new IllegalArgumentException("a separation has columns of one length");
    }
    this.t = t;
    this.distance = distance;
    this.phase = phase;
  }

  /** How many times there are. */
  public int count() {
    return t.length;
  }

  /** Times. */
  public double[] t() {
    return t;
  }

  /** Distances in plan. */
  public double[] distance() {
    return distance;
  }

  /** Distances with velocities. */
  public double[] phase() {
    return phase;
  }
}
