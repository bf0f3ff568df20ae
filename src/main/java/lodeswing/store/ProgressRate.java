package lodeswing.store;

import java.util.Optional;

/**
 * How long work will still take, from how it got on lately: since a moment between a quarter and a
 * half of its time so far. A process that has just begun is many times slower in its first seconds,
 * and stages do not all get on as fast as was expected of them.
 */
final class ProgressRate {

  /** Less than that done tells nothing. */
  private static final double LEAST_TOLD = 0.02;

  private static final double FIRST_MARK_S = 0.25;

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
    if (elapsed >= Math.max(FIRST_MARK_S, 2 * latterS)) {
      formerS = latterS;
      formerDone = latterDone;
      latterS = elapsed;
      latterDone = done;
    }
  }

  /**
   * Seconds that remain; nothing where too little is done to tell, or nothing lately.
   *
   * @param elapsed since it began [s]
   * @param done fraction, 0 to 1
   */
  synchronized Optional<Double> remaining(double elapsed, double done) {
    double lately = done - formerDone;
    return done < LEAST_TOLD || !(lately > 0)
        ? Optional.empty()
        : Optional.of((1 - done) * (elapsed - formerS) / lately);
  }
}
