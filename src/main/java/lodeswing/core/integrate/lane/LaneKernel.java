package lodeswing.core.integrate.lane;

/**
 * A scheme at work on a block of releases: each attempt tries one step in every lane.
 *
 * <p>One owner, one thread; an attempt allocates nothing.
 */
public interface LaneKernel {

  /** The block's slots, as {@link LaneBlock} lays them out. */
  double[] slots();

  /**
   * Puts a release into a lane.
   *
   * @param lane 0 to {@link LaneBlock#LANES} - 1
   * @param state q0, q1, v0, v1
   */
  void start(int lane, double[] state);

  /**
   * Tries a step in every lane. Where the error is within the tolerance, state, time and energy
   * move on; elsewhere they stay and the size shrinks.
   */
  void attempt();

  /** Evaluations of the force that an attempt costs a lane. */
  int evaluations();
}
