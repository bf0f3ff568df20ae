package lodeswing.analysis.twins;

import lodeswing.core.integrate.LocalRate;
import lodeswing.core.integrate.MotionTangent;
import lodeswing.core.integrate.Step;
import lodeswing.core.motion.Motion;

/**
 * Sees the steps of one of two paths: takes its plan positions and velocities on the grid, and
 * carries an infinitesimal shift of its release along.
 *
 * <p>One path, one thread.
 */
public final class TwinWatch {

  /** Turn of a small swing in one step of the variational equation [rad]. */
  private static final double PIECE_TURN = 0.2;

  private static final int MOST_PIECES = 50;
  private static final double ROUNDING = 1e-12;

  private final Motion motion;
  private final TwinGrid grid;
  private final LocalRate rate;
  private final MotionTangent tangent;
  private final double[][] plan;
  private final double[] growth;
  private final double[] begin;
  private final double[] half = new double[4];
  private final double[] end = new double[4];
  private final double[] seen = new double[4];
  private double reached;
  private int taken;
  private int flown;

  /**
   * A path that has not begun.
   *
   * @param motion what moves
   * @param grid where it is looked at
   * @param start its state at the release
   * @param shift of that state, whose direction is carried along; not 0
   */
  public TwinWatch(Motion motion, TwinGrid grid, double[] start, double[] shift) {
    this.motion = motion;
    this.grid = grid;
    this.rate = new LocalRate(motion);
    this.tangent = new MotionTangent(motion, start, shift);
    this.plan = new double[4][grid.count()];
    this.growth = new double[grid.count()];
    this.begin = start.clone();
    put(start);
    flown = 1;
  }

  /**
   * Looks at a step.
   *
   * @param step the next one
   * @param until up to when the model holds in it
   */
  public void look(Step step, double until) {
    // The last time may lie a rounding past the end.
    while (taken < grid.count() && grid.t(taken) <= until * (1 + ROUNDING)) {
      flow(step, Math.min(grid.t(taken), step.endTime()));
      growth[taken] = tangent.logGrowth(begin);
      put(begin);
      flown = taken;
    }
    if (taken < grid.count()) {
      flow(step, until);
    }
  }

  /** Carries the shift on to a time inside the step, in pieces short beside the fastest swing. */
  private void flow(Step step, double to) {
    double length = to - reached;
    if (!(length > 0)) {
      return;
    }
    int pieces =
        (int) Math.max(1, Math.min(MOST_PIECES, Math.ceil(length * rate.at(begin) / PIECE_TURN)));
    for (int i = 1; i <= pieces; i++) {
      double from = reached;
      double next = i == pieces ? to : to - length * (pieces - i) / pieces;
      step.at(from + 0.5 * (next - from), half);
      step.at(next, end);
      tangent.advance(begin, half, end, next - from);
      System.arraycopy(end, 0, begin, 0, 4);
      reached = next;
    }
  }

  private void put(double[] state) {
    motion.toPlan(state, seen);
    for (int c = 0; c < 4; c++) {
      plan[c][taken] = seen[c];
    }
    taken++;
  }

  /** Fills the rest of the grid with a bob that friction holds where it is. */
  public void stay() {
    double[] still = {begin[0], begin[1], 0, 0};
    while (taken < grid.count()) {
      put(still);
    }
  }

  /** How many times of the grid the path has reached. */
  int taken() {
    return taken;
  }

  /** How many of them it has reached in motion, so that the shift was carried that far. */
  int flown() {
    return flown;
  }

  /** Plan position or velocity c of {x, y, vx, vy} at time i. */
  double plan(int c, int i) {
    return plan[c][i];
  }

  /** Natural logarithm of the factor by which the shift has grown up to time i. */
  double logGrowth(int i) {
    return growth[i];
  }
}
