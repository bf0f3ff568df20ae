package lodeswing.core.integrate.simd;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;
import static lodeswing.core.integrate.simd.Shape.DOUBLES;
import static lodeswing.core.integrate.simd.Shape.WIDTH;
import static lodeswing.core.integrate.simd.Shape.all;

import jdk.incubator.vector.DoubleVector;
import lodeswing.core.integrate.lane.LaneBlock;
import lodeswing.core.integrate.lane.Plan;
import lodeswing.core.integrate.lane.RungeKuttaSlots;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.PivotedLoss;
import lodeswing.core.suspension.TwoAxisBody;

/** The accelerations and the energy of {@link BenchMotion} on vectors. */
final class VectorSwing {

  private static final int S0 = RungeKuttaSlots.ANGLES;
  private static final int C0 = S0 + LANES;
  private static final int U = RungeKuttaSlots.POTENTIAL;
  private static final int RATE0 = RungeKuttaSlots.RATES;
  private static final int RATE1 = RATE0 + LANES;

  private static final DoubleVector HALF = all(0.5);

  private final double[] s;
  private final VectorSines sines;
  private final VectorTable table;

  VectorSwing(double[] slots) {
    s = slots;
    sines = new VectorSines(slots);
    table = new VectorTable(slots);
  }

  private DoubleVector at(int slot) {
    return DoubleVector.fromArray(DOUBLES, s, slot);
  }

  void stage(Plan plan, BenchMotion motion, int to) {
    accelerations(plan, motion, RungeKuttaSlots.PLACE, to + 2 * LANES);
    plan.add(() -> scale(to));
  }

  /** Step times speeds and accelerations. */
  private void scale(int to) {
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector h = at(LaneBlock.TRIED + i);
      h.mul(at(RungeKuttaSlots.PLACE + 2 * LANES + i)).intoArray(s, to + i);
      h.mul(at(RungeKuttaSlots.PLACE + 3 * LANES + i)).intoArray(s, to + LANES + i);
      h.mul(at(to + 2 * LANES + i)).intoArray(s, to + 2 * LANES + i);
      h.mul(at(to + 3 * LANES + i)).intoArray(s, to + 3 * LANES + i);
    }
  }

  void atEnd(Plan plan, BenchMotion motion) {
    accelerations(plan, motion, LaneBlock.NEW, LaneBlock.NEW_F);
    table.value(plan, motion.potentialEnergy(), LaneBlock.NEW, U);
    TwoAxisBody body = motion.layout().suspension().body();
    plan.add(() -> upperInertia(body, RATE0));
    plan.add(() -> energy(body, LaneBlock.NEW));
  }

  private void accelerations(Plan plan, BenchMotion motion, int state, int to) {
    TwoAxisBody body = motion.layout().suspension().body();
    int speeds = state + 2 * LANES;
    table.slopes(plan, motion.potentialEnergy(), state, U + LANES);
    sines.sineAndCosine(plan, state, S0, C0);
    losses(plan, motion.losses(), body, speeds);
    plan.add(() -> first(body, speeds, to));
    plan.add(() -> upperInertia(body, to + LANES));
    plan.add(() -> second(body, speeds, to + LANES));
  }

  private void losses(Plan plan, PivotedLoss loss, TwoAxisBody body, int speeds) {
    plan.add(() -> rates(body, loss));
    for (int k = 0; k < loss.elements(); k++) {
      double arm = loss.arm(k);
      double coefficient = loss.coefficient(k);
      plan.add(() -> drag(body.axisOffset(), arm, coefficient, speeds));
    }
    if (loss.pivotTorque() > 0) {
      plan.add(() -> friction(loss.pivotTorque(), speeds));
    }
  }

  private void rates(TwoAxisBody body, PivotedLoss loss) {
    DoubleVector rate0 = all(loss.linear() * body.bobArm() * body.bobArm());
    DoubleVector arm = all(body.bobArm());
    DoubleVector offset = all(body.axisOffset());
    DoubleVector linear = all(loss.linear());
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector radius = arm.fma(at(C0 + i), offset);
      rate0.intoArray(s, RATE0 + i);
      linear.mul(radius).mul(radius).intoArray(s, RATE1 + i);
    }
  }

  private void drag(double axisOffset, double elementArm, double coefficient, int speeds) {
    DoubleVector arm = all(elementArm);
    DoubleVector offset = all(axisOffset);
    DoubleVector k = all(coefficient);
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector r = arm.fma(at(C0 + i), offset);
      DoubleVector w0 = arm.mul(at(speeds + i));
      DoubleVector w1 = r.mul(at(speeds + LANES + i));
      DoubleVector push = k.mul(w0.fma(w0, w1.mul(w1)).sqrt());
      push.mul(arm).fma(arm, at(RATE0 + i)).intoArray(s, RATE0 + i);
      push.mul(r).fma(r, at(RATE1 + i)).intoArray(s, RATE1 + i);
    }
  }

  private void friction(double pivotTorque, int speeds) {
    DoubleVector torque = all(pivotTorque);
    DoubleVector smooth = all(PivotedLoss.SMOOTHING * PivotedLoss.SMOOTHING);
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector v0 = at(speeds + i);
      DoubleVector v1 = at(speeds + LANES + i);
      DoubleVector pivot = torque.div(v0.fma(v0, v1.fma(v1, smooth)).sqrt());
      at(RATE0 + i).add(pivot).intoArray(s, RATE0 + i);
      at(RATE1 + i).add(pivot).intoArray(s, RATE1 + i);
    }
  }

  private void first(TwoAxisBody body, int speeds, int to) {
    DoubleVector swing = all(body.swingInertia());
    DoubleVector spread = all(body.swingInertia() - body.axialInertia());
    DoubleVector coupling = all(body.axisOffset() * body.firstMoment());
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector s0 = at(S0 + i);
      DoubleVector v0 = at(speeds + i);
      DoubleVector v1 = at(speeds + LANES + i);
      DoubleVector turn = s0.neg().mul(spread.fma(at(C0 + i), coupling)).mul(v1);
      DoubleVector torque = at(RATE0 + i).neg().mul(v0);
      turn.fma(v1, torque).sub(at(U + LANES + i)).div(swing).intoArray(s, to + i);
    }
  }

  private void second(TwoAxisBody body, int speeds, int to) {
    DoubleVector spread = all(body.swingInertia() - body.axialInertia());
    DoubleVector coupling = all(body.axisOffset() * body.firstMoment());
    DoubleVector minusTwo = all(-2.0);
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector c0 = at(C0 + i);
      DoubleVector v0 = at(speeds + i);
      DoubleVector v1 = at(speeds + LANES + i);
      DoubleVector pull = at(U + 2 * LANES + i);
      DoubleVector turn = at(S0 + i).neg().mul(spread.fma(c0, coupling)).mul(v1);
      DoubleVector torque = at(RATE1 + i).neg().mul(v1);
      minusTwo.mul(turn).fma(v0, torque).sub(pull).div(at(to + i)).intoArray(s, to + i);
    }
  }

  private void upperInertia(TwoAxisBody body, int to) {
    DoubleVector swing = all(body.swingInertia());
    DoubleVector axial = all(body.axialInertia());
    DoubleVector offset = all(body.axisOffset());
    DoubleVector mass = all(body.mass());
    DoubleVector twice = all(2 * body.firstMoment());
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector s0 = at(S0 + i);
      DoubleVector c0 = at(C0 + i);
      DoubleVector own = swing.mul(c0).fma(c0, axial.mul(s0).mul(s0));
      offset.fma(mass.fma(offset, twice.mul(c0)), own).intoArray(s, to + i);
    }
  }

  private void energy(TwoAxisBody body, int state) {
    DoubleVector swing = all(body.swingInertia());
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector v0 = at(state + 2 * LANES + i);
      DoubleVector v1 = at(state + 3 * LANES + i);
      DoubleVector upper = at(RATE0 + i).mul(v1).mul(v1);
      DoubleVector kinetic = swing.mul(v0).fma(v0, upper).mul(HALF);
      kinetic.add(at(U + i)).intoArray(s, LaneBlock.NEW_ENERGY + i);
    }
  }
}
