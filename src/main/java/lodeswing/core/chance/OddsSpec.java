package lodeswing.core.chance;

import lodeswing.core.statistics.IntervalRule;

/**
 * What is asked of the odds.
 *
 * @param hand how the hand wanders
 * @param width how long the interval of any chance may be at most, above 0
 * @param rule how intervals are found
 * @param seed of the tries
 * @param longest how long a release is followed at most, positive [s on the bench]
 */
public record OddsSpec(
    HandSpread hand, double width, IntervalRule rule, long seed, double longest) {

  /** Widths that take as many releases, or more, are out of reach. */
  private static final int MOST = 1 << 20;

  /** Releases come in whole lots of this many. */
  static final int LOT = 64;

  /** How many releases it can take at most. */
  public int mostReleases() {
    return mostReleases(width, rule);
  }

  /** How many releases a width can take at most; {@link Integer#MAX_VALUE} is out of reach. */
  public static int mostReleases(double width, IntervalRule rule) {
    int needed = rule.trials(0.5, width, MOST);
    return needed >= MOST ? Integer.MAX_VALUE : rounded(needed);
  }

  static int rounded(int releases) {
    return (releases + LOT - 1) / LOT * LOT;
  }
}
