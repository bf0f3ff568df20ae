package lodeswing.core.integrate;

/**
 * Bounds on an integration's work, so that none runs for ever.
 *
 * @param mostSteps steps tried, rejected ones included, at least 1
 * @param largestStep largest size of a step, in the motion's time unit, above 0; infinity for none
 */
public record StepLimits(long mostSteps, double largestStep) {

  /** Two million steps of any size. */
  public static final StepLimits DEFAULT = new StepLimits(2_000_000, Double.POSITIVE_INFINITY);

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException where a part lies outside its range
   */
  public StepLimits {
    if (mostSteps < 1) {
      throw new IllegalArgumentException("mostSteps below 1: " + mostSteps);
    }
    if (!(largestStep > 0)) {
      throw new IllegalArgumentException("largestStep not above 0: " + largestStep);
    }
  }
}
