package lodeswing.benchmark;

import lodeswing.core.outcome.Ends;

/**
 * How a run ended that did not ask the seal rule.
 *
 * @param end a rest point's index or a code of {@link Ends}; of a held bob the well it is held in
 * @param held whether friction held the bob
 * @param time when it ended
 */
record RunOn(int end, boolean held, double time) {

  /** A run that did not come to an end. */
  static final RunOn OPEN = new RunOn(Ends.UNSETTLED, false, Double.POSITIVE_INFINITY);

  /** A bob held by friction at a place, in the well that it cannot leave from there. */
  static RunOn held(WellOfPlace wells, double[] state, double potential, double time) {
    int well = wells.holding(state[0], state[1], potential);
    return new RunOn(well == WellOfPlace.NONE ? Ends.HELD : well, true, time);
  }

  /** Whether it did not come to an end. */
  boolean open() {
    return end == Ends.UNSETTLED;
  }

  /** Whether a named end bears out. */
  boolean bearsOut(int named) {
    return named == end || (named == Ends.HELD && held);
  }

  @Override
  public String toString() {
    return end + (held ? " (held)" : "") + " at " + time;
  }
}
