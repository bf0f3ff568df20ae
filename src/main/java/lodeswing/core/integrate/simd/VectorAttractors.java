package lodeswing.core.integrate.simd;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;
import static lodeswing.core.integrate.simd.Shape.DOUBLES;
import static lodeswing.core.integrate.simd.Shape.WIDTH;
import static lodeswing.core.integrate.simd.Shape.all;

import jdk.incubator.vector.DoubleVector;
import lodeswing.core.integrate.lane.LaneBlock;
import lodeswing.core.integrate.lane.NystromSlots;
import lodeswing.core.integrate.lane.Plan;
import lodeswing.core.integrate.lane.RungeKuttaSlots;
import lodeswing.core.motion.TextbookMotion;

/**
 * The forces of {@link TextbookMotion#attraction} on vectors, three attractors under one division.
 */
final class VectorAttractors {

  private static final DoubleVector ONE = all(1.0);
  private static final DoubleVector ZERO = all(0.0);
  private static final DoubleVector HALF = all(0.5);

  /** Place, force and sum of k/r, two, two and one slots, behind the block's own. */
  private final int place;

  private final int force;
  private final int energy;
  private final double[] s;

  VectorAttractors(double[] slots, int scratch) {
    s = slots;
    place = scratch;
    force = scratch + 2 * LANES;
    energy = scratch + 4 * LANES;
  }

  /** Scratch that it needs behind the block's slots. */
  static int scratch() {
    return 5 * LANES;
  }

  private DoubleVector at(int slot) {
    return DoubleVector.fromArray(DOUBLES, s, slot);
  }

  void stage(Plan plan, TextbookMotion motion, int time, double rest, int to) {
    int decay = NystromSlots.DECAY + time * LANES;
    int grow = NystromSlots.GROW + time * LANES;
    if (motion.attractors() == 3) {
      plan.add(() -> threeAlone(motion, decay));
    } else {
      plan.add(() -> toPlace(decay));
      attractAll(plan, motion);
    }
    plan.add(() -> toStage(grow, rest, to));
  }

  private void attractAll(Plan plan, TextbookMotion motion) {
    int count = motion.attractors();
    plan.add(this::clearForce);
    int m = 0;
    for (; m + 3 <= count; m += 3) {
      int first = m;
      plan.add(() -> three(motion, first));
    }
    for (; m < count; m++) {
      int one = m;
      plan.add(() -> one(motion, one));
    }
  }

  private void toPlace(int decay) {
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector d = at(decay + i);
      d.mul(at(NystromSlots.PLACE + i)).intoArray(s, place + i);
      d.mul(at(NystromSlots.PLACE + LANES + i)).intoArray(s, place + LANES + i);
    }
  }

  private void toStage(int grow, double rest, int to) {
    DoubleVector factor = all(rest);
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector g = at(grow + i);
      DoubleVector square = at(NystromSlots.SQUARE + i);
      DoubleVector y0 = at(NystromSlots.PLACE + i);
      DoubleVector y1 = at(NystromSlots.PLACE + LANES + i);
      square.mul(g.fma(at(force + i), factor.mul(y0))).intoArray(s, to + i);
      square.mul(g.fma(at(force + LANES + i), factor.mul(y1))).intoArray(s, to + LANES + i);
    }
  }

  private void clearForce() {
    for (int i = 0; i < LANES; i += WIDTH) {
      ZERO.intoArray(s, force + i);
      ZERO.intoArray(s, force + LANES + i);
      ZERO.intoArray(s, energy + i);
    }
  }

  /** Place and force in one pass, for the commonest layout. */
  private void threeAlone(TextbookMotion motion, int decay) {
    DoubleVector h = all(motion.heightSquared());
    DoubleVector xa = all(motion.attractorX(0));
    DoubleVector ya = all(motion.attractorY(0));
    DoubleVector ka = all(motion.strength(0));
    DoubleVector xb = all(motion.attractorX(1));
    DoubleVector yb = all(motion.attractorY(1));
    DoubleVector kb = all(motion.strength(1));
    DoubleVector xc = all(motion.attractorX(2));
    DoubleVector yc = all(motion.attractorY(2));
    DoubleVector kc = all(motion.strength(2));
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector d = at(decay + i);
      DoubleVector q0 = d.mul(at(NystromSlots.PLACE + i));
      DoubleVector q1 = d.mul(at(NystromSlots.PLACE + LANES + i));
      DoubleVector ax = xa.sub(q0);
      DoubleVector ay = ya.sub(q1);
      DoubleVector bx = xb.sub(q0);
      DoubleVector by = yb.sub(q1);
      DoubleVector cx = xc.sub(q0);
      DoubleVector cy = yc.sub(q1);
      DoubleVector a = ax.fma(ax, ay.fma(ay, h));
      DoubleVector b = bx.fma(bx, by.fma(by, h));
      DoubleVector c = cx.fma(cx, cy.fma(cy, h));
      DoubleVector pa = a.mul(a.sqrt());
      DoubleVector pb = b.mul(b.sqrt());
      DoubleVector pc = c.mul(c.sqrt());
      DoubleVector ab = pa.mul(pb);
      DoubleVector inverse = ONE.div(ab.mul(pc));
      DoubleVector wc = kc.mul(inverse.mul(ab));
      DoubleVector notC = inverse.mul(pc);
      DoubleVector wa = ka.mul(notC.mul(pb));
      DoubleVector wb = kb.mul(notC.mul(pa));
      wc.fma(cx, wb.fma(bx, wa.fma(ax, ZERO))).intoArray(s, force + i);
      wc.fma(cy, wb.fma(by, wa.fma(ay, ZERO))).intoArray(s, force + LANES + i);
    }
  }

  private void three(TextbookMotion motion, int m) {
    DoubleVector h = all(motion.heightSquared());
    DoubleVector xa = all(motion.attractorX(m));
    DoubleVector ya = all(motion.attractorY(m));
    DoubleVector ka = all(motion.strength(m));
    DoubleVector xb = all(motion.attractorX(m + 1));
    DoubleVector yb = all(motion.attractorY(m + 1));
    DoubleVector kb = all(motion.strength(m + 1));
    DoubleVector xc = all(motion.attractorX(m + 2));
    DoubleVector yc = all(motion.attractorY(m + 2));
    DoubleVector kc = all(motion.strength(m + 2));
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector q0 = at(place + i);
      DoubleVector q1 = at(place + LANES + i);
      DoubleVector ax = xa.sub(q0);
      DoubleVector ay = ya.sub(q1);
      DoubleVector bx = xb.sub(q0);
      DoubleVector by = yb.sub(q1);
      DoubleVector cx = xc.sub(q0);
      DoubleVector cy = yc.sub(q1);
      DoubleVector a = ax.fma(ax, ay.fma(ay, h));
      DoubleVector b = bx.fma(bx, by.fma(by, h));
      DoubleVector c = cx.fma(cx, cy.fma(cy, h));
      DoubleVector pa = a.mul(a.sqrt());
      DoubleVector pb = b.mul(b.sqrt());
      DoubleVector pc = c.mul(c.sqrt());
      DoubleVector ab = pa.mul(pb);
      DoubleVector inverse = ONE.div(ab.mul(pc));
      DoubleVector wc = kc.mul(inverse.mul(ab));
      DoubleVector notC = inverse.mul(pc);
      DoubleVector wa = ka.mul(notC.mul(pb));
      DoubleVector wb = kb.mul(notC.mul(pa));
      wc.fma(cx, wb.fma(bx, wa.fma(ax, at(force + i)))).intoArray(s, force + i);
      wc.fma(cy, wb.fma(by, wa.fma(ay, at(force + LANES + i)))).intoArray(s, force + LANES + i);
      wc.fma(c, wb.fma(b, wa.fma(a, at(energy + i)))).intoArray(s, energy + i);
    }
  }

  private void one(TextbookMotion motion, int m) {
    DoubleVector h = all(motion.heightSquared());
    DoubleVector x = all(motion.attractorX(m));
    DoubleVector y = all(motion.attractorY(m));
    DoubleVector k = all(motion.strength(m));
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector dx = x.sub(at(place + i));
      DoubleVector dy = y.sub(at(place + LANES + i));
      DoubleVector d2 = dx.fma(dx, dy.fma(dy, h));
      DoubleVector w = k.div(d2.mul(d2.sqrt()));
      w.fma(dx, at(force + i)).intoArray(s, force + i);
      w.fma(dy, at(force + LANES + i)).intoArray(s, force + LANES + i);
      w.fma(d2, at(energy + i)).intoArray(s, energy + i);
    }
  }

  void atEnd(Plan plan, TextbookMotion motion) {
    plan.add(() -> take(LaneBlock.NEW));
    attractAll(plan, motion);
    plan.add(() -> energy(motion.stiffness()));
  }

  private void take(int from) {
    for (int i = 0; i < LANES; i += WIDTH) {
      at(from + i).intoArray(s, place + i);
      at(from + LANES + i).intoArray(s, place + LANES + i);
    }
  }

  /** A stage of a Runge-Kutta step. */
  void swing(Plan plan, TextbookMotion motion, int to) {
    plan.add(() -> take(RungeKuttaSlots.PLACE));
    attractAll(plan, motion);
    plan.add(() -> toDerivatives(motion.stiffness(), motion.drag(), to));
  }

  private void toDerivatives(double stiffness, double drag, int to) {
    DoubleVector spring = all(-stiffness);
    DoubleVector brake = all(-drag);
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector h = at(LaneBlock.TRIED + i);
      DoubleVector v0 = at(RungeKuttaSlots.PLACE + 2 * LANES + i);
      DoubleVector v1 = at(RungeKuttaSlots.PLACE + 3 * LANES + i);
      DoubleVector f0 = spring.fma(at(place + i), at(force + i));
      DoubleVector f1 = spring.fma(at(place + LANES + i), at(force + LANES + i));
      h.mul(v0).intoArray(s, to + i);
      h.mul(v1).intoArray(s, to + LANES + i);
      h.mul(brake.fma(v0, f0)).intoArray(s, to + 2 * LANES + i);
      h.mul(brake.fma(v1, f1)).intoArray(s, to + 3 * LANES + i);
    }
  }

  /** Accelerations and energy at the end of a Runge-Kutta step. */
  void swingAtEnd(Plan plan, TextbookMotion motion) {
    atEnd(plan, motion);
    plan.add(() -> accelerateAtEnd(motion.stiffness(), motion.drag()));
  }

  private void accelerateAtEnd(double stiffness, double drag) {
    DoubleVector spring = all(-stiffness);
    DoubleVector brake = all(-drag);
    for (int i = 0; i < 2 * LANES; i += WIDTH) {
      DoubleVector f = spring.fma(at(LaneBlock.NEW + i), at(LaneBlock.NEW_F + i));
      brake.fma(at(LaneBlock.NEW + 2 * LANES + i), f).intoArray(s, LaneBlock.NEW_F + i);
    }
  }

  private void energy(double stiffness) {
    DoubleVector spring = all(stiffness);
    for (int i = 0; i < LANES; i += WIDTH) {
      at(force + i).intoArray(s, LaneBlock.NEW_F + i);
      at(force + LANES + i).intoArray(s, LaneBlock.NEW_F + LANES + i);
      DoubleVector q0 = at(LaneBlock.NEW + i);
      DoubleVector q1 = at(LaneBlock.NEW + LANES + i);
      DoubleVector v0 = at(LaneBlock.NEW + 2 * LANES + i);
      DoubleVector v1 = at(LaneBlock.NEW + 3 * LANES + i);
      DoubleVector both = spring.fma(q0.fma(q0, q1.mul(q1)), v0.fma(v0, v1.mul(v1)));
      HALF.fma(both, at(energy + i).neg()).intoArray(s, LaneBlock.NEW_ENERGY + i);
    }
  }
}
