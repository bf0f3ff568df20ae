package lodeswing.core.geometry;

/**
 * The cubic that has two values and two slopes at the ends of an interval (Hermite's
 * interpolation), over a parameter from 0 to 1; slopes are per whole interval.
 */
public final class HermiteCubic {

  private HermiteCubic() {}

  /**
   * The value.
   *
   * @param start value at 0
   * @param startSlope slope at 0
   * @param end value at 1
   * @param endSlope slope at 1
   * @param t where, 0 to 1
   */
  public static double value(
      double start, double startSlope, double end, double endSlope, double t) {
    double rise = end - start;
    double second = 3 * rise - (2 * startSlope + endSlope);
    double third = startSlope + endSlope - 2 * rise;
    return start + t * (startSlope + t * (second + t * third));
  }

  /** The slope, with the same parameters. */
  public static double slope(
      double start, double startSlope, double end, double endSlope, double t) {
    double rise = end - start;
    double second = 3 * rise - (2 * startSlope + endSlope);
    double third = startSlope + endSlope - 2 * rise;
    return startSlope + t * (2 * second + t * 3 * third);
  }
}
