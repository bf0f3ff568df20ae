package lodeswing.core.statistics;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * A figure found from data, with its standard error and its 95 % interval.
 *
 * @param value the figure
 * @param standardError its standard error, 0 or above
 * @param interval its 95 % interval, cut where the figure cannot lie
 */
public record Estimate(double value, double standardError, Interval interval) {

  /** Confidence of every interval in this package that does not ask for one. */
  public static final double CONFIDENCE = 0.95;

  /**
   * An estimate whose interval is symmetric, by Student's t.
   *
   * @param degreesOfFreedom those of the standard error, above 0
   */
  static Estimate ofStudent(double value, double standardError, double degreesOfFreedom) {
    double quantile =
        new TDistribution(null, degreesOfFreedom)
            .inverseCumulativeProbability((1 + CONFIDENCE) / 2);
    double reach = quantile * standardError;
    return new Estimate(value, standardError, new Interval(value - reach, value + reach));
  }

  /** The same with another error, independent of its own, joined to it. */
  Estimate widened(double otherError) {
    if (standardError == 0) {
      return ofStudent(value, Math.abs(otherError), 1);
    }
    double factor = Math.hypot(standardError, otherError) / standardError;
    double reach = interval.width() / 2 * factor;
    return new Estimate(value, standardError * factor, new Interval(value - reach, value + reach));
  }

  /** The same with its interval cut to the range where the figure can lie. */
  public Estimate within(double least, double most) {
    return new Estimate(value, standardError, interval.clamped(least, most));
  }

  /** The estimate of a number less this one. */
  Estimate subtractedFrom(double number) {
    return new Estimate(
        number - value,
        standardError,
        new Interval(number - interval.high(), number - interval.low()));
  }
}
