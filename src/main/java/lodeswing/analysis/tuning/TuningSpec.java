package lodeswing.analysis.tuning;

import lodeswing.core.statistics.IntervalRule;

/**
 * What is asked of a tuning.
 *
 * @param wish the chances that are wanted
 * @param candidates how many settings are tried at most
 * @param finalists how many of the nearest are counted in full, 1 or more
 * @param width how long the interval of any chance may be at most, above 0
 * @param rule how intervals are found
 * @param seed of the tries, and of the search
 * @param confirmSeed of the tries that confirm, another one
 * @param longest how long a release is followed at most, positive [s on the bench]
 */
public record TuningSpec(
    Wish wish,
    int candidates,
    int finalists,
    double width,
    IntervalRule rule,
    long seed,
    long confirmSeed,
    double longest) {

  /** Tries on each candidate: the standard error of a chance of a third is 0.015 at most. */
  public static final int GLANCE = 1_024;

  /** Tries on a candidate that looks near: of a third 0.007. */
  public static final int LOOK = 4_096;

  /** How many candidates at most are looked at closer. */
  public int looks() {
    return Math.max(2 * finalists, candidates / 4);
  }
}
