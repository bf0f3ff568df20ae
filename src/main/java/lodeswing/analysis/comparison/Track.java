package lodeswing.analysis.comparison;

/**
 * Recorded and foretold places side by side; owns its arrays, which are not to be written to.
 *
 * <p>Columns begin at the first place that was compared.
 */
public final class Track {

  private final int first;
  private final double[] x;
  private final double[] y;
  private final double[] distance;
  private final double[] deviation;

  /**
   * Takes over columns of one length.
   *
   * @param first place of the recording that the columns begin with
   * @param x foretold plan places [m]
   * @param y foretold plan places [m]
   * @param distance between recorded and foretold place [m]
   * @param deviation standard deviation of the foretold place along its longest axis, from what is
   *     not known of the start and the parts [m]
   */
  public Track(int first, double[] x, double[] y, double[] distance, double[] deviation) {
    if (x.length != y.length || x.length != distance.length || x.length != deviation.length) {
      throw new IllegalArgumentException("a track has columns of one length");
    }
    this.first = first;
    this.x = x;
    this.y = y;
    this.distance = distance;
    this.deviation = deviation;
  }

  /** Place of the recording that the columns begin with. */
  public int first() {
    return first;
  }

  /** How many places there are. */
  public int count() {
    return x.length;
  }

  /** Foretold plan places. */
  public double[] x() {
    return x;
  }

  /** Foretold plan places. */
  public double[] y() {
    return y;
  }

  /** Distances between recorded and foretold places. */
  public double[] distance() {
    return distance;
  }

  /** Standard deviations of the foretold places. */
  public double[] deviation() {
    return deviation;
  }
}
