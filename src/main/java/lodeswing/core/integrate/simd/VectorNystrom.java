package lodeswing.core.integrate.simd;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;
import static lodeswing.core.integrate.simd.Shape.DOUBLES;
import static lodeswing.core.integrate.simd.Shape.WIDTH;
import static lodeswing.core.integrate.simd.Shape.all;

import jdk.incubator.vector.DoubleVector;
import jdk.incubator.vector.VectorOperators;
import lodeswing.core.integrate.ExponentialSeries;
import lodeswing.core.integrate.lane.LaneBlock;
import lodeswing.core.integrate.lane.NystromSlots;
import lodeswing.core.integrate.lane.Plan;

/** The beginning and end of a Nystrom step on vectors. */
final class VectorNystrom {

  private static final DoubleVector C2 = all(0.5);
  private static final DoubleVector C3 = all(ExponentialSeries.C3);
  private static final DoubleVector C4 = all(ExponentialSeries.C4);
  private static final DoubleVector C5 = all(ExponentialSeries.C5);
  private static final DoubleVector C6 = all(ExponentialSeries.C6);
  private static final DoubleVector C7 = all(ExponentialSeries.C7);
  private static final DoubleVector C8 = all(ExponentialSeries.C8);
  private static final DoubleVector C9 = all(ExponentialSeries.C9);
  private static final DoubleVector ONE = all(1.0);

  private final double[] s;

  VectorNystrom(double[] slots) {
    s = slots;
  }

  private DoubleVector at(int slot) {
    return DoubleVector.fromArray(DOUBLES, s, slot);
  }

  void begin(double halfDrag, double spring, double greatest) {
    DoubleVector most = all(greatest);
    DoubleVector k = all(halfDrag);
    DoubleVector rest = all(halfDrag * halfDrag - spring);
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector size = at(LaneBlock.SIZE + i);
      DoubleVector h = most.blend(size, size.compare(VectorOperators.LT, most));
      DoubleVector square = h.mul(h);
      h.intoArray(s, LaneBlock.TRIED + i);
      square.intoArray(s, NystromSlots.SQUARE + i);
      DoubleVector q0 = at(LaneBlock.Q0 + i);
      DoubleVector q1 = at(LaneBlock.Q1 + i);
      h.mul(k.fma(q0, at(LaneBlock.V0 + i))).intoArray(s, NystromSlots.FIRST + i);
      h.mul(k.fma(q1, at(LaneBlock.V1 + i))).intoArray(s, NystromSlots.FIRST + LANES + i);
      square.mul(rest.fma(q0, at(LaneBlock.F0 + i))).intoArray(s, NystromSlots.STAGES + i);
      square.mul(rest.fma(q1, at(LaneBlock.F1 + i))).intoArray(s, NystromSlots.STAGES + LANES + i);
    }
  }

  void exponentials(Plan plan, double halfDrag) {
    plan.add(() -> first(halfDrag));
    plan.add(() -> powers(NystromSlots.GROW));
    plan.add(() -> powers(NystromSlots.DECAY));
  }

  private void first(double halfDrag) {
    DoubleVector perSize = all(halfDrag / 20);
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector x = perSize.mul(at(LaneBlock.TRIED + i));
      DoubleVector z = x.mul(x);
      DoubleVector even = z.fma(z.fma(z.fma(z.fma(C8, C6), C4), C2), ONE);
      DoubleVector odd = x.mul(z.fma(z.fma(z.fma(z.fma(C9, C7), C5), C3), ONE));
      even.add(odd).intoArray(s, NystromSlots.GROW + i);
      even.sub(odd).intoArray(s, NystromSlots.DECAY + i);
    }
  }

  private void powers(int from) {
    for (int i = from; i < from + LANES; i += WIDTH) {
      DoubleVector e = at(i);
      DoubleVector e2 = e.mul(e);
      DoubleVector e4 = e2.mul(e2);
      DoubleVector p = e4.mul(e2);
      e2.intoArray(s, i + LANES);
      p.intoArray(s, i + 2 * LANES);
      p = p.mul(e4);
      p.intoArray(s, i + 3 * LANES);
      p = p.mul(e4);
      p.intoArray(s, i + 4 * LANES);
      p = p.mul(e4);
      p.intoArray(s, i + 5 * LANES);
      p.mul(e2).intoArray(s, i + 6 * LANES);
    }
  }

  void arrive(double halfDrag) {
    DoubleVector back = all(-halfDrag);
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector shrink = at(NystromSlots.DECAY + 6 * LANES + i);
      DoubleVector perStep = shrink.div(at(LaneBlock.TRIED + i));
      perStep.intoArray(s, NystromSlots.PER_STEP + i);
      DoubleVector q0 = shrink.mul(at(NystromSlots.PLACE + i));
      DoubleVector q1 = shrink.mul(at(NystromSlots.PLACE + LANES + i));
      q0.intoArray(s, LaneBlock.NEW + i);
      q1.intoArray(s, LaneBlock.NEW + LANES + i);
      back.fma(q0, perStep.mul(at(NystromSlots.SPEED + i)))
          .intoArray(s, LaneBlock.NEW + 2 * LANES + i);
      back.fma(q1, perStep.mul(at(NystromSlots.SPEED + LANES + i)))
          .intoArray(s, LaneBlock.NEW + 3 * LANES + i);
    }
  }

  void lastStage(double rest) {
    DoubleVector factor = all(rest);
    int to = NystromSlots.stage(8);
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector scale = at(NystromSlots.SQUARE + i).mul(at(NystromSlots.GROW + 6 * LANES + i));
      scale.mul(factor.fma(at(LaneBlock.NEW + i), at(LaneBlock.NEW_F + i))).intoArray(s, to + i);
      scale
          .mul(factor.fma(at(LaneBlock.NEW + LANES + i), at(LaneBlock.NEW_F + LANES + i)))
          .intoArray(s, to + LANES + i);
    }
  }

  void errors(double halfDrag) {
    DoubleVector back = all(-halfDrag);
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector shrink = at(NystromSlots.DECAY + 6 * LANES + i);
      DoubleVector perStep = at(NystromSlots.PER_STEP + i);
      DoubleVector e0 = shrink.mul(at(LaneBlock.ERRORS + i));
      DoubleVector e1 = shrink.mul(at(LaneBlock.ERRORS + LANES + i));
      e0.intoArray(s, LaneBlock.ERRORS + i);
      e1.intoArray(s, LaneBlock.ERRORS + LANES + i);
      int speed = LaneBlock.ERRORS + 2 * LANES + i;
      back.fma(e0, perStep.mul(at(speed))).intoArray(s, speed);
      back.fma(e1, perStep.mul(at(speed + LANES))).intoArray(s, speed + LANES);
    }
  }
}
