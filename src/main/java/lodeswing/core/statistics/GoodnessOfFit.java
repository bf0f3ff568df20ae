package lodeswing.core.statistics;

import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * Counts held against the chances that they should have come from.
 *
 * <p>Source: K. Pearson, Philos. Mag. 50 (1900) 157; that no expected count be below 5: W. G.
 * Cochran, Biometrics 10 (1954) 417, from memory.
 *
 * @param statistic chi-square, the sum of (counted - expected)^2 / expected
 * @param degreesOfFreedom one less than there are classes, 1 or more
 * @param pValue how often so great a chi-square, or a greater one, comes by chance alone
 */
public record GoodnessOfFit(double statistic, int degreesOfFreedom, double pValue) {

  /** An expected count below this makes the p-value doubtful. */
  public static final double LEAST_EXPECTED = 5;

  /**
   * The test.
   *
   * @param expected counts, all above 0, two classes or more
   * @param counted counts of the same classes
   */
  public static GoodnessOfFit of(double[] expected, long[] counted) {
    if (expected.length < 2 || expected.length != counted.length) {
      throw new IllegalArgumentException("chi-square needs two classes or more, and their counts");
    }
    double statistic = 0;
    for (int k = 0; k < expected.length; k++) {
      if (!(expected[k] > 0)) {
        throw new IllegalArgumentException("expected count " + expected[k]);
      }
      double apart = counted[k] - expected[k];
      statistic += apart * apart / expected[k];
    }
    return of(statistic, expected.length - 1);
  }

  /** A statistic with its chance. */
  static GoodnessOfFit of(double statistic, int degreesOfFreedom) {
    double below =
        new ChiSquaredDistribution(null, degreesOfFreedom).cumulativeProbability(statistic);
    return new GoodnessOfFit(statistic, degreesOfFreedom, 1 - below);
  }
}
