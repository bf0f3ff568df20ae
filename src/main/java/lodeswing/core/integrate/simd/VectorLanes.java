package lodeswing.core.integrate.simd;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;
import static lodeswing.core.integrate.simd.Shape.DOUBLES;
import static lodeswing.core.integrate.simd.Shape.WIDTH;

import jdk.incubator.vector.DoubleVector;
import lodeswing.core.integrate.lane.LaneArithmetic;
import lodeswing.core.integrate.lane.LaneBlock;
import lodeswing.core.integrate.lane.Plan;
import lodeswing.core.integrate.lane.Row;
import lodeswing.core.integrate.lane.RungeKuttaSlots;
import lodeswing.core.integrate.lane.StepRule;
import lodeswing.core.integrate.lane.Watch;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.Motion;
import lodeswing.core.motion.TextbookMotion;

/** Lane arithmetic on the vector unit. */
public final class VectorLanes implements LaneArithmetic {

  private final double[] s;
  private final VectorSums sums;
  private final VectorNystrom nystrom;
  private final VectorAttractors attractors;
  private final VectorSteps steps;
  private final VectorSwing swing;

  /**
   * Arithmetic on a new block.
   *
   * @param slots numbers in the block
   */
  public VectorLanes(int slots) {
    s = new double[slots + VectorAttractors.scratch()];
    sums = new VectorSums(s);
    nystrom = new VectorNystrom(s);
    attractors = new VectorAttractors(s, slots);
    steps = new VectorSteps(s);
    swing = new VectorSwing(s);
  }

  /** Width of the vectors [bit]. */
  public static int bits() {
    return DOUBLES.vectorBitSize();
  }

  private DoubleVector at(int slot) {
    return DoubleVector.fromArray(DOUBLES, s, slot);
  }

  @Override
  public double[] slots() {
    return s;
  }

  @Override
  public void sum(Plan plan, Row row) {
    sums.sum(plan, row);
  }

  @Override
  public void beginNystrom(Plan plan, double halfDrag, double spring, double greatest) {
    plan.add(() -> nystrom.begin(halfDrag, spring, greatest));
  }

  @Override
  public void exponentials(Plan plan, double halfDrag) {
    nystrom.exponentials(plan, halfDrag);
  }

  @Override
  public void attract(Plan plan, TextbookMotion motion, int time, double rest, int to) {
    attractors.stage(plan, motion, time, rest, to);
  }

  @Override
  public void arrive(Plan plan, double halfDrag) {
    plan.add(() -> nystrom.arrive(halfDrag));
  }

  @Override
  public void attractAtEnd(Plan plan, TextbookMotion motion) {
    attractors.atEnd(plan, motion);
  }

  @Override
  public void lastStage(Plan plan, double rest) {
    plan.add(() -> nystrom.lastStage(rest));
  }

  @Override
  public void errors(Plan plan, double halfDrag) {
    plan.add(() -> nystrom.errors(halfDrag));
  }

  @Override
  public void beginRungeKutta(Plan plan) {
    plan.add(this::begin);
  }

  private void begin() {
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector h = at(LaneBlock.SIZE + i);
      h.intoArray(s, LaneBlock.TRIED + i);
      h.mul(at(LaneBlock.V0 + i)).intoArray(s, RungeKuttaSlots.STAGES + i);
      h.mul(at(LaneBlock.V1 + i)).intoArray(s, RungeKuttaSlots.STAGES + LANES + i);
      h.mul(at(LaneBlock.F0 + i)).intoArray(s, RungeKuttaSlots.STAGES + 2 * LANES + i);
      h.mul(at(LaneBlock.F1 + i)).intoArray(s, RungeKuttaSlots.STAGES + 3 * LANES + i);
    }
  }

  @Override
  public void swing(Plan plan, Motion motion, int to) {
    if (motion instanceof TextbookMotion plane) {
      attractors.swing(plan, plane, to);
    } else {
      swing.stage(plan, (BenchMotion) motion, to);
    }
  }

  @Override
  public void swingAtEnd(Plan plan, Motion motion) {
    if (motion instanceof TextbookMotion plane) {
      attractors.swingAtEnd(plan, plane);
    } else {
      swing.atEnd(plan, (BenchMotion) motion);
    }
  }

  @Override
  public void lastStageOfFour(Plan plan, int to) {
    plan.add(() -> lastStageOfFour(to));
  }

  private void lastStageOfFour(int to) {
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector h = at(LaneBlock.TRIED + i);
      h.mul(at(LaneBlock.NEW + 2 * LANES + i)).intoArray(s, to + i);
      h.mul(at(LaneBlock.NEW + 3 * LANES + i)).intoArray(s, to + LANES + i);
      h.mul(at(LaneBlock.NEW_F + i)).intoArray(s, to + 2 * LANES + i);
      h.mul(at(LaneBlock.NEW_F + LANES + i)).intoArray(s, to + 3 * LANES + i);
    }
  }

  @Override
  public void measure(Plan plan, StepRule rule) {
    plan.add(() -> steps.measure(rule));
  }

  @Override
  public void measureTwo(Plan plan, StepRule rule) {
    plan.add(() -> steps.measureTwo(rule));
  }

  @Override
  public void control(Plan plan, StepRule rule) {
    plan.add(() -> steps.control(rule));
  }

  @Override
  public void attend(Plan plan, Watch watch) {
    steps.attend(plan, watch);
  }

  @Override
  public void advance(Plan plan) {
    plan.add(steps::advance);
  }
}
