package lodeswing.core.statistics;

import java.util.Arrays;

/**
 * The chance that two trials fall into the same class.
 *
 * <p>Source: E. H. Simpson, Nature 163 (1949) 688: sum of n(n - 1) over N(N - 1) has the sum of the
 * squared chances as its mean; its variance, from memory, is checked by draws in the tests.
 */
public final class Agreement {

  private static final double NORMAL_QUANTILE = 1.959963984540054;

  private Agreement() {}

  /**
   * The chance with its 95 % interval, by the normal distribution.
   *
   * @param counts trials in each class, two trials or more in all
   */
  public static Estimate of(int[] counts) {
    double all = Arrays.stream(counts).asLongStream().sum();
    double value = value(counts);
    double squares = 0;
    double cubes = 0;
    for (int count : counts) {
      double share = count / all;
      squares += share * share;
      cubes += share * share * share;
    }
    double pairs = all * (all - 1);
    double variance =
        (4 * (all - 2) * cubes + 2 * squares - 2 * (2 * all - 3) * squares * squares) / pairs;
    double error = Math.sqrt(Math.max(0, variance));
    double reach = NORMAL_QUANTILE * error;
    return new Estimate(value, error, new Interval(value - reach, value + reach)).within(0, 1);
  }

  /** The chance alone. */
  static double value(int[] counts) {
    double all = Arrays.stream(counts).asLongStream().sum();
    if (all < 2) {
      throw new IllegalArgumentException("two trials can agree, " + all + " cannot");
    }
    double pairs = 0;
    for (int count : counts) {
      pairs += count * (count - 1.0);
    }
    return pairs / (all * (all - 1));
  }
}
