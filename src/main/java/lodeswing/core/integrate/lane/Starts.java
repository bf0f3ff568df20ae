package lodeswing.core.integrate.lane;

/** What a lane holds before its first step, whatever the scheme. */
final class Starts {

  private Starts() {}

  static void put(double[] s, int lane, double[] state, double energy, double size) {
    s[LaneBlock.Q0 + lane] = state[0];
    s[LaneBlock.Q1 + lane] = state[1];
    s[LaneBlock.V0 + lane] = state[2];
    s[LaneBlock.V1 + lane] = state[3];
    s[LaneBlock.ENERGY + lane] = energy;
    s[LaneBlock.TIME + lane] = 0;
    // As after a rejected step: there is no new state to move to.
    s[LaneBlock.ERROR + lane] = 2;
    s[LaneBlock.SIZE + lane] = size;
    s[LaneBlock.LOG + lane] = StepRule.FIRST_LOG;
    s[LaneBlock.MOST + lane] = StepRule.GREATEST;
  }
}
