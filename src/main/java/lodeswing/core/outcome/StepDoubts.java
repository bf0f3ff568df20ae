package lodeswing.core.outcome;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;

import lodeswing.core.geometry.HermiteCubic;
import lodeswing.core.integrate.lane.LaneBlock;
import lodeswing.core.landscape.LimitMap;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;

/**
 * Whether a limit may be met, or the bob may be held, over the step that a lane has just taken.
 *
 * <p>Places in doubtful cells are looked at on the cubic through both ends of the step with their
 * speeds; a margin that comes near zero, or a bob so slow that friction may hold it, is a doubt.
 * The doubts err towards too many. One owner, one thread.
 */
final class StepDoubts {

  /** Places looked at within a step. */
  private static final int PIECES = 8;

  /** A margin below this part of what it changes over the step counts as near zero. */
  private static final double NEAR = 0.5;

  /** Speeds below this many times the sticking speed are slow. */
  private static final double SLOW = 200;

  private final Motion motion;
  private final LimitMap map;
  private final double pivotTorque;
  private final double[] s;
  private final double[] state = new double[4];
  private final double[] margins = new double[PIECES + 1];

  StepDoubts(Motion motion, LimitMap map, double[] slots) {
    this.motion = motion;
    this.map = map;
    this.s = slots;
    this.pivotTorque =
        motion instanceof BenchMotion bench ? bench.layout().loss().pivotTorque() : 0;
  }

  /** Whether a release may not be startable, or held at once. */
  boolean atStart(double[] start) {
    return !motion.allows(start) || mayHold(start);
  }

  /** Whether anything may have happened over the last step of a lane. */
  boolean onStep(int lane) {
    if (leavesReach(lane)) {
      return true;
    }
    return (!map.empty() && mayMeetLimit(lane)) || (pivotTorque > 0 && mayBeHeld(lane));
  }

  private boolean leavesReach(int lane) {
    double reach = motion.limits().isEmpty() ? Double.POSITIVE_INFINITY : motion.reach();
    double q0 = s[LaneBlock.NEW + lane];
    double q1 = s[LaneBlock.NEW + LANES + lane];
    return Math.abs(q0) > reach || Math.abs(q1) > reach;
  }

  private boolean mayMeetLimit(int lane) {
    boolean doubtful = false;
    for (int k = 0; k <= PIECES && !doubtful; k++) {
      place(lane, (double) k / PIECES);
      doubtful = map.doubtful(state[0], state[1]);
    }
    if (!doubtful) {
      return false;
    }
    for (Limit limit : motion.limits()) {
      if (limit.kind() != Limit.Kind.ANGLE_LIMIT && comesNear(lane, limit)) {
        return true;
      }
    }
    return false;
  }

  private boolean comesNear(int lane, Limit limit) {
    double least = Double.POSITIVE_INFINITY;
    double change = 0;
    for (int k = 0; k <= PIECES; k++) {
      place(lane, (double) k / PIECES);
      margins[k] = limit.margin(state);
      least = Math.min(least, margins[k]);
      if (k > 0) {
        change = Math.max(change, Math.abs(margins[k] - margins[k - 1]));
      }
    }
    return !(least > NEAR * change) && least < Double.POSITIVE_INFINITY;
  }

  private boolean mayBeHeld(int lane) {
    for (int k = 0; k <= PIECES; k++) {
      place(lane, (double) k / PIECES);
      if (mayHold(state)) {
        return true;
      }
    }
    return false;
  }

  /** Friction holds only a slow bob where the static torque is about as small as its own. */
  private boolean mayHold(double[] at) {
    if (pivotTorque == 0) {
      return false;
    }
    double slow = SLOW * BenchMotion.STICKING_SPEED;
    if (at[2] * at[2] + at[3] * at[3] > slow * slow) {
      return false;
    }
    double[] slopes = new double[6];
    motion.potentialDerivatives(at[0], at[1], slopes);
    double limit = 2 * pivotTorque;
    return slopes[1] * slopes[1] + slopes[2] * slopes[2] < limit * limit;
  }

  /** Writes place and speed at a part of the step. */
  private void place(int lane, double t) {
    double size = s[LaneBlock.TRIED + lane];
    for (int c = 0; c < 2; c++) {
      int old = LaneBlock.Q0 + c * LANES + lane;
      int now = LaneBlock.NEW + c * LANES + lane;
      double a = s[old];
      double b = s[now];
      double va = size * s[old + 2 * LANES];
      double vb = size * s[now + 2 * LANES];
      state[c] = HermiteCubic.value(a, va, b, vb, t);
      state[c + 2] = HermiteCubic.slope(a, va, b, vb, t) / size;
    }
  }
}
