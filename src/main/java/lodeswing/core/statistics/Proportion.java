package lodeswing.core.statistics;

import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

/**
 * A count of successes among trials, and intervals for the chance behind it.
 *
 * <p>Both intervals take the trials as independent. Sources: C. J. Clopper and E. S. Pearson,
 * Biometrika 26 (1934) 404; E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209; compared by R. G.
 * Newcombe, Stat. Med. 17 (1998) 857.
 *
 * @param successes 0 to {@code trials}
 * @param trials 1 or more
 */
public record Proportion(int successes, int trials) {

  /** Accuracy asked of the inverse of the beta distribution. */
  private static final double INVERSE_ACCURACY = 1e-13;

  public Proportion {
    if (trials < 1 || successes < 0 || successes > trials) {
      throw new IllegalArgumentException(successes + " successes in " + trials + " trials");
    }
  }

  /** The observed share of successes. */
  public double share() {
    return (double) successes / trials;
  }

  /**
   * The exact interval of Clopper and Pearson: it holds the chance at least as often as stated.
   *
   * <p>Ends are quantiles of beta distributions. (Commons Math's own class for it fails where no
   * trial or every trial is a success, its issue MATH-1401.)
   *
   * @param confidence between 0 and 1, such as 0.95
   */
  public Interval clopperPearson(double confidence) {
    double tail = tail(confidence);
    double low =
        successes == 0
            ? 0
            : new BetaDistribution(null, successes, trials - successes + 1.0, INVERSE_ACCURACY)
                .inverseCumulativeProbability(tail);
    double high =
        successes == trials
            ? 1
            : new BetaDistribution(null, successes + 1.0, trials - successes, INVERSE_ACCURACY)
                .inverseCumulativeProbability(1 - tail);
    return new Interval(low, high);
  }

  /**
   * The score interval of Wilson: it holds the chance as often as stated on average over chances.
   *
   * @param confidence between 0 and 1, such as 0.95
   */
  public Interval wilson(double confidence) {
    tail(confidence);
    var interval = new WilsonScoreInterval().createInterval(trials, successes, confidence);
    return new Interval(interval.getLowerBound(), interval.getUpperBound()).clamped(0, 1);
  }

  private static double tail(double confidence) {
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("confidence " + confidence);
    }
    return (1 - confidence) / 2;
  }
}
