package lodeswing.core.integrate.lane;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;

import lodeswing.core.integrate.ExponentialSeries;
import lodeswing.core.integrate.NystromCoefficients;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.motion.TextbookMotion;

/**
 * The Nystrom pair 8(6) on lanes, for textbook layouts: eight evaluations of the force an attempt.
 *
 * <p>Dormand, El-Mikkawy and Prince, IMA J. Numer. Anal. 7 (1987) 423, under the same
 * transformation as the scalar pair: the linear loss is taken out within each step.
 */
public final class NystromKernel implements LaneKernel {

  /** First step as an angle of the small swing [rad]. */
  private static final double FIRST_ANGLE = 0.15;

  private final TextbookMotion motion;
  private final LaneArithmetic lanes;
  private final Runnable[] plan;
  private final double firstSize;

  /**
   * A kernel.
   *
   * @param motion what is integrated
   * @param provider what it computes with
   * @param tolerance error allowed for a step
   * @param watch what asks for attention
   */
  public NystromKernel(
      TextbookMotion motion, LaneProvider provider, Tolerance tolerance, Watch watch) {
    this.motion = motion;
    this.lanes = provider.arithmetic(NystromSlots.END);
    double rate = motion.naturalRate();
    StepRule rule = StepRule.of(tolerance, rate, NystromCoefficients.CONTROL_ORDER);
    double k = motion.drag() / 2;
    double greatest = k > 0 ? ExponentialSeries.MOST_LOSS_A_STEP / k : Double.MAX_VALUE;
    // Steps of this size keep about the tolerance; the first tries set the rest right.
    firstSize = rate > 0 ? FIRST_ANGLE / rate : FIRST_ANGLE;
    plan = plan(k, greatest, rule, watch);
    double[] still = new double[4];
    for (int lane = 0; lane < LANES; lane++) {
      start(lane, still);
    }
  }

  private Runnable[] plan(double k, double greatest, StepRule rule, Watch watch) {
    double rest = k * k - motion.stiffness();
    Plan steps = new Plan();
    lanes.advance(steps);
    lanes.beginNystrom(steps, k, motion.stiffness(), greatest);
    lanes.exponentials(steps, k);
    for (int i = 1; i < 8; i++) {
      double[] weights = NystromCoefficients.places(i);
      sum(steps, NystromSlots.PLACE, LaneBlock.Q0, NystromCoefficients.time(i), weights);
      lanes.attract(steps, motion, i - 1, rest, NystromSlots.stage(i));
    }
    sum(steps, NystromSlots.PLACE, LaneBlock.Q0, 1, NystromCoefficients.end());
    sum(steps, NystromSlots.SPEED, NystromSlots.FIRST, 0, NystromCoefficients.speed());
    lanes.arrive(steps, k);
    lanes.attractAtEnd(steps, motion);
    lanes.lastStage(steps, rest);
    sum(steps, LaneBlock.ERRORS, Row.NO_BASE, 0, NystromCoefficients.placeErrors());
    sum(steps, LaneBlock.ERRORS + 2 * LANES, Row.NO_BASE, 0, NystromCoefficients.speedErrors());
    lanes.errors(steps, k);
    lanes.measure(steps, rule);
    lanes.control(steps, rule);
    lanes.attend(steps, watch);
    return steps.passes();
  }

  /** A sum for both coordinates: base, time times the first-order part, weighted stages. */
  private void sum(Plan steps, int to, int base, double time, double[] weights) {
    Row.Terms terms = new Row.Terms();
    terms.add(time, NystromSlots.FIRST);
    for (int j = 0; j < weights.length; j++) {
      terms.add(weights[j], NystromSlots.stage(j));
    }
    Row row = terms.row(2, to, base);
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
    motion.attraction(state[0], state[1], out);
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
    return 8;
  }
}
