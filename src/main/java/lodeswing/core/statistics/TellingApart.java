package lodeswing.core.statistics;

import java.util.OptionalLong;

/**
 * How many trials show which of two classes is the likelier one.
 *
 * <p>With p and q the chances of the two, s = p + q and d = p - q, a two-sided test at 5 % finds
 * the difference in 80 % of all series of (1.960 sqrt(s) + 0.842 sqrt(s - d^2))^2 / d^2 trials.
 * Source: R. J. Connor, Biometrics 43 (1987) 207, for pairs that disagree one way or the other,
 * which is the same: trials that fall into neither class say nothing.
 */
public final class TellingApart {

  private static final double TWO_SIDED_5_PERCENT = 1.959963984540054;
  private static final double POWER_80_PERCENT = 0.8416212335729143;

  private TellingApart() {}

  /**
   * The trials needed.
   *
   * @param one chance of the one class, 0 to 1
   * @param other chance of the other
   * @return empty where both are alike
   */
  public static OptionalLong trials(double one, double other) {
    double sum = one + other;
    double difference = Math.abs(one - other);
    if (difference == 0) {
      return OptionalLong.empty();
    }
    double root =
        TWO_SIDED_5_PERCENT * Math.sqrt(sum)
            + POWER_80_PERCENT * Math.sqrt(Math.max(0, sum - difference * difference));
    double trials = Math.ceil(root * root / (difference * difference));
    return trials < Long.MAX_VALUE ? OptionalLong.of((long) trials) : OptionalLong.empty();
  }

  /**
   * Whether the observed difference of two classes could be chance.
   *
   * @param one trials in the one class
   * @param other trials in the other
   * @param all trials in all
   */
  public static boolean doubtful(int one, int other, int all) {
    double p = (double) one / all;
    double q = (double) other / all;
    double variance = (p + q - (p - q) * (p - q)) / all;
    return Math.abs(p - q) <= TWO_SIDED_5_PERCENT * Math.sqrt(variance);
  }
}
