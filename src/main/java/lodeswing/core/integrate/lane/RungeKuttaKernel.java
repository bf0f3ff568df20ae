package lodeswing.core.integrate.lane;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;

import lodeswing.core.integrate.Tolerance;
import lodeswing.core.motion.Motion;

/** An embedded Runge-Kutta pair on lanes. */
public final class RungeKuttaKernel implements LaneKernel {

  /** First step as an angle of the small swing [rad]. */
  private static final double FIRST_ANGLE = 0.1;

  private final Motion motion;
  private final LaneArithmetic lanes;
  private final RungeKuttaPair pair;
  private final Runnable[] plan;
  private final double firstSize;

  /**
   * A kernel.
   *
   * @param motion what is integrated
   * @param pair the scheme
   * @param provider what it computes with
   * @param tolerance error allowed for a step
   * @param watch what asks for attention
   */
  public RungeKuttaKernel(
      Motion motion, RungeKuttaPair pair, LaneProvider provider, Tolerance tolerance, Watch watch) {
    this.motion = motion;
    this.lanes = provider.arithmetic(RungeKuttaSlots.stage(pair.stages() + 1));
    this.pair = pair;
    double rate = motion.naturalRate();
    firstSize = rate > 0 ? FIRST_ANGLE / rate : FIRST_ANGLE;
    StepRule rule = StepRule.of(tolerance, rate, pair.order());
    plan = plan(rule, watch);
    double[] still = new double[4];
    for (int lane = 0; lane < LANES; lane++) {
      start(lane, still);
    }
  }

  private Runnable[] plan(StepRule rule, Watch watch) {
    Plan steps = new Plan();
    lanes.advance(steps);
    lanes.beginRungeKutta(steps);
    for (int i = 1; i < pair.stages(); i++) {
      sum(steps, RungeKuttaSlots.PLACE, LaneBlock.Q0, pair.places(i));
      lanes.swing(steps, motion, RungeKuttaSlots.stage(i));
    }
    sum(steps, LaneBlock.NEW, LaneBlock.Q0, pair.end());
    lanes.swingAtEnd(steps, motion);
    if (pair.errors().length > pair.stages()) {
      lanes.lastStageOfFour(steps, RungeKuttaSlots.stage(pair.stages()));
    }
    sum(steps, LaneBlock.ERRORS, Row.NO_BASE, pair.errors());
    if (pair.second().length > 0) {
      sum(steps, RungeKuttaSlots.SECOND, Row.NO_BASE, pair.second());
      lanes.measureTwo(steps, rule);
    } else {
      lanes.measure(steps, rule);
    }
    lanes.control(steps, rule);
    lanes.attend(steps, watch);
    return steps.passes();
  }

  /** A sum for all four numbers of the state. */
  private void sum(Plan steps, int to, int base, double[] weights) {
    Row.Terms terms = new Row.Terms();
    for (int j = 0; j < weights.length; j++) {
      terms.add(weights[j], RungeKuttaSlots.stage(j));
    }
    Row row = terms.row(4, to, base);
    lanes.sum(steps, row);
  }

  @Override
  public double[] slots() {
    return lanes.slots();
  }

  @Override
  public void start(int lane, double[] state) {
    double[] s = lanes.slots();
    double[] out = new double[3];
    motion.acceleration(state[0], state[1], state[2], state[3], out);
    s[LaneBlock.F0 + lane] = out[0];
    s[LaneBlock.F1 + lane] = out[1];
    double energy = motion.energy(state[0], state[1], state[2], state[3]);
    Starts.put(s, lane, state, energy, firstSize);
  }

  @Override
  public void attempt() {
    for (Runnable step : plan) {
      step.run();
    }
  }

  @Override
  public int evaluations() {
    return pair.stages();
  }
}
