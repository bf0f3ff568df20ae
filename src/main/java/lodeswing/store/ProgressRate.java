package lodeswing.store;

import java.util.Optional;

/**
 * How long work will still take: at first from what it was expected to cost, then more and more
 * from how it got on lately, which is since a moment two and four fifths of its time so far. A
 * process that has just begun is many times slower in its first seconds, and stages do not all get
 * on as fast as was expected of them.
 */
final class ProgressRate {

  /** The next mark is set when so much of the time lies behind the last one. */
  private static final double LATTER = 0.8;

  private static final double FIRST_MARK_S = 0.25;

  /** From that part done on, what was expected does not count any more. */
  private static final double TELLS_ALL = 0.25;

  private double formerS;
  private double formerDone;
  private double latterS;
  private double latterDone;

  /**
   * Hears how far the work has come.
   *
   * @param elapsed since it began [s]
   * @param done fraction, 0 to 1
   */
  synchronized void told(double elapsed, double done) {
    if (elapsed >= Math.max(FIRST_MARK_S, latterS / LATTER)) {
      formerS = latterS;
      formerDone = latterDone;
      latterS = elapsed;
      latterDone = done;
    }
  }

  /**
   * Seconds that remain; nothing where it stands still though much was done.
   *
   * @param elapsed since it began [s]
   * @param done fraction, 0 to 1
   * @param expected for all of it, by its cost [s]
   */
  synchronized Optional<Double> remaining(double elapsed, double done, double expected) {
    double byCost = (1 - done) * expected;
    double lately = done - formerDone;
    if (!(lately > 0)) {
      return Optional.of(byCost).filter(seconds -> done < TELLS_ALL);
    }
    double byRate = (1 - done) * (elapsed - formerS) / lately;
    double weight = Math.min(1, done / TELLS_ALL);
    return Optional.of(Math.pow(byRate, weight) * Math.pow(byCost, 1 - weight));
  }
}
