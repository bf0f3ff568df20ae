package lodeswing.core.integrate.lane;

/**
 * Where the numbers of a block of releases in flight lie: one array of slots, each slot one number
 * of every lane.
 *
 * <p>Slot s of lane i lies at {@code s + i}, slots being multiples of {@link #LANES}. The slots of
 * this class are common to every kernel; each kernel has more of its own behind them.
 */
public final class LaneBlock {

  /**
   * Releases in flight in a block: enough to hide the latency of square roots and the cost of a
   * call, few enough for the first two levels of cache.
   */
  public static final int LANES = 64;

  /** Coordinate q0 at the start of the step; an accepted step moves it on at the next attempt. */
  public static final int Q0 = 0;

  /** Coordinate q1. */
  public static final int Q1 = LANES;

  /** Speed of q0. */
  public static final int V0 = 2 * LANES;

  /** Speed of q1. */
  public static final int V1 = 3 * LANES;

  /** What the force gives for q0 at the state, shared by the last stage of the step before. */
  public static final int F0 = 4 * LANES;

  /** The same for q1. */
  public static final int F1 = 5 * LANES;

  /** Mechanical energy at the state. */
  public static final int ENERGY = 6 * LANES;

  /** Time at the state. */
  public static final int TIME = 7 * LANES;

  /** Size of the next step to try. */
  public static final int SIZE = 8 * LANES;

  /** Binary logarithm of the last accepted step's squared error. */
  public static final int LOG = 9 * LANES;

  /** Greatest growth of the next step: 1 right after a rejected one. */
  public static final int MOST = 10 * LANES;

  /** Square of the scaled error of the step just tried; accepted where it is at most 1. */
  public static final int ERROR = 11 * LANES;

  /** Size of the step just tried. */
  public static final int TRIED = 12 * LANES;

  /** Not zero where the caller has to look at a lane after a step. */
  public static final int ATTENTION = 13 * LANES;

  /** State at the end of the step just tried: q0, q1, v0, v1 in four slots. */
  public static final int NEW = 14 * LANES;

  /** What the force gives there, two slots. */
  public static final int NEW_F = 18 * LANES;

  /** Energy there. */
  public static final int NEW_ENERGY = 20 * LANES;

  /** Errors of q0, q1, v0, v1 over the step, four slots. */
  public static final int ERRORS = 21 * LANES;

  /** First slot that a kernel may use as it likes. */
  public static final int OWN = 25 * LANES;

  private LaneBlock() {}
}
