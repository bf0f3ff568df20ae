package lodeswing.figure;

/** Steps of an axis: 1, 2 or 5 times a power of ten. */
public final class RoundStep {

  private RoundStep() {}

  /**
   * The next such step that is no smaller.
   *
   * @param least above 0
   */
  public static double atLeast(double least) {
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double factor : new double[] {1, 2, 5}) {
      if (factor * power >= least) {
        return factor * power;
      }
    }
    return 10 * power;
  }
}
