package lodeswing.core.integrate.simd;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;
import static lodeswing.core.integrate.simd.Shape.DOUBLES;
import static lodeswing.core.integrate.simd.Shape.WIDTH;
import static lodeswing.core.integrate.simd.Shape.all;

import jdk.incubator.vector.DoubleVector;
import lodeswing.core.integrate.lane.Plan;
import lodeswing.core.motion.Angles;

/** Sine and cosine of {@link Angles} on vectors. */
final class VectorSines {

  private static final DoubleVector C3 = all(Angles.C3);
  private static final DoubleVector C5 = all(Angles.C5);
  private static final DoubleVector C7 = all(Angles.C7);
  private static final DoubleVector C9 = all(Angles.C9);
  private static final DoubleVector C11 = all(Angles.C11);
  private static final DoubleVector C13 = all(Angles.C13);
  private static final DoubleVector C15 = all(Angles.C15);
  private static final DoubleVector C17 = all(Angles.C17);
  private static final DoubleVector C19 = all(Angles.C19);
  private static final DoubleVector C21 = all(Angles.C21);
  private static final DoubleVector QUARTER = all(Angles.QUARTER);
  private static final DoubleVector QUARTER_REST = all(Angles.QUARTER_REST);

  private final double[] s;

  VectorSines(double[] slots) {
    s = slots;
  }

  private DoubleVector at(int slot) {
    return DoubleVector.fromArray(DOUBLES, s, slot);
  }

  void sineAndCosine(Plan plan, int angle, int sine, int cosine) {
    plan.add(() -> sine(angle, sine));
    plan.add(() -> cosine(angle, sine, cosine));
  }

  private void sine(int angle, int to) {
    for (int i = 0; i < LANES; i += WIDTH) {
      sine(at(angle + i)).intoArray(s, to + i);
    }
  }

  private void cosine(int angle, int sine, int to) {
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector a = at(angle + i).abs();
      DoubleVector high = QUARTER.sub(a);
      DoubleVector low = QUARTER.sub(high).sub(a).add(QUARTER_REST);
      low.fma(at(sine + i).abs(), sine(high)).intoArray(s, to + i);
    }
  }

  private static DoubleVector sine(DoubleVector x) {
    DoubleVector z = x.mul(x);
    DoubleVector p = C21.fma(z, C19);
    p = p.fma(z, C17);
    p = p.fma(z, C15);
    p = p.fma(z, C13);
    p = p.fma(z, C11);
    p = p.fma(z, C9);
    p = p.fma(z, C7);
    p = p.fma(z, C5);
    p = p.fma(z, C3);
    return x.mul(z).fma(p, x);
  }
}
