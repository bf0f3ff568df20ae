package lodeswing.job;

import java.util.Arrays;

/**
 * Work in stages, each told as the share of the whole that it is expected to cost, so that the
 * progress moves as evenly as the costs are right.
 */
public final class Stages {

  private final Computation.Progress whole;
  private final long[] costs;
  private final double all;
  private double before;
  private int begun;

  /**
   * Work that has not begun.
   *
   * @param whole hears of all of it
   * @param costs of the stages in their order, in any unit; 0 for what is done already
   */
  public Stages(Computation.Progress whole, long... costs) {
    this.whole = whole;
    this.costs = costs.clone();
    this.all = Math.max(1, Arrays.stream(costs).sum());
  }

  /** Hears of the next stage: fractions of that stage, from any thread. */
  public Computation.Progress next() {
    double from = before / all;
    double share = costs[begun] / all;
    before += costs[begun];
    begun++;
    return fraction -> whole.report(from + share * fraction);
  }
}
