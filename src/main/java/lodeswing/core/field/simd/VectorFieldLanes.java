package lodeswing.core.field.simd;

import static lodeswing.core.field.FieldSlots.POINTS;
import static lodeswing.core.integrate.simd.Shape.DOUBLES;
import static lodeswing.core.integrate.simd.Shape.WIDTH;
import static lodeswing.core.integrate.simd.Shape.all;

import jdk.incubator.vector.DoubleVector;
import jdk.incubator.vector.VectorMask;
import jdk.incubator.vector.VectorOperators;
import lodeswing.core.field.DiscSeries;
import lodeswing.core.field.FieldLanes;
import lodeswing.core.field.FieldSlots;

/** The passes on vectors; short ones, since the compiler stops to make vector code of long ones. */
public final class VectorFieldLanes implements FieldLanes {

  private static final DoubleVector ZERO = all(0.0);
  private static final DoubleVector ONE = all(1.0);
  private static final DoubleVector MINUS_ONE = all(-1.0);

  private final double[] s = new double[FieldSlots.COUNT];

  /** Passes over a block of their own. */
  public VectorFieldLanes() {}

  @Override
  public double[] slots() {
    return s;
  }

  private DoubleVector at(int slot) {
    return DoubleVector.fromArray(DOUBLES, s, slot);
  }

  @Override
  public void locate(double x, double y, double z) {
    DoubleVector x0 = all(x);
    DoubleVector y0 = all(y);
    DoubleVector z0 = all(z);
    for (int i = 0; i < POINTS; i += WIDTH) {
      DoubleVector dx = at(FieldSlots.X + i).sub(x0);
      DoubleVector dy = at(FieldSlots.Y + i).sub(y0);
      DoubleVector dz = at(FieldSlots.Z + i).sub(z0);
      DoubleVector across = dx.fma(dx, dy.mul(dy));
      dx.intoArray(s, FieldSlots.DX + i);
      dy.intoArray(s, FieldSlots.DY + i);
      dz.intoArray(s, FieldSlots.DZ + i);
      across.sqrt().intoArray(s, FieldSlots.RHO + i);
      dz.fma(dz, across).intoArray(s, FieldSlots.R2 + i);
    }
  }

  @Override
  public void addDipole(double strength, double insideSquared, double inside) {
    DoubleVector m = all(strength);
    DoubleVector three = all(3.0);
    DoubleVector within = all(inside);
    for (int i = 0; i < POINTS; i += WIDTH) {
      DoubleVector dz = at(FieldSlots.DZ + i);
      DoubleVector r2 = at(FieldSlots.R2 + i);
      DoubleVector w = m.div(r2.mul(r2.sqrt()));
      DoubleVector along = three.mul(dz).mul(w).div(r2);
      VectorMask<Double> outside = r2.compare(VectorOperators.GE, insideSquared);
      DoubleVector across = ZERO.blend(along, outside);
      DoubleVector axial = within.blend(along.fma(dz, w.neg()), outside);
      across.fma(at(FieldSlots.DX + i), at(FieldSlots.BX + i)).intoArray(s, FieldSlots.BX + i);
      across.fma(at(FieldSlots.DY + i), at(FieldSlots.BY + i)).intoArray(s, FieldSlots.BY + i);
      at(FieldSlots.BZ + i).add(axial).intoArray(s, FieldSlots.BZ + i);
    }
  }

  @Override
  public void beginFace(int face, double radius, double shift) {
    beginModulus(face, radius, shift);
    beginCharacter(face, radius);
  }

  private void beginModulus(int face, double radius, double shift) {
    DoubleVector r = all(radius);
    DoubleVector up = all(shift);
    DoubleVector smallest = all(SMALLEST_MODULUS);
    for (int i = 0; i < POINTS; i += WIDTH) {
      DoubleVector rho = at(FieldSlots.RHO + i);
      DoubleVector zeta = at(FieldSlots.DZ + i).add(up);
      DoubleVector reach = r.add(rho);
      DoubleVector edge = r.sub(rho);
      DoubleVector square = zeta.mul(zeta);
      DoubleVector perReach = ONE.div(reach.fma(reach, square).sqrt());
      DoubleVector k = edge.fma(edge, square).sqrt().mul(perReach);
      k = smallest.blend(k, k.compare(VectorOperators.GT, smallest));
      k.intoArray(s, face + FieldSlots.PARTNER + i);
      k.intoArray(s, face + FieldSlots.PRODUCT + i);
      zeta.mul(perReach).intoArray(s, face + FieldSlots.AXIAL + i);
      perReach.intoArray(s, face + FieldSlots.RADIAL + i);
    }
  }

  private void beginCharacter(int face, double radius) {
    DoubleVector r = all(radius);
    for (int i = 0; i < POINTS; i += WIDTH) {
      DoubleVector rho = at(FieldSlots.RHO + i);
      DoubleVector edge = r.sub(rho);
      DoubleVector gamma = edge.abs().div(r.add(rho));
      ONE.blend(gamma, gamma.compare(VectorOperators.GT, ZERO))
          .intoArray(s, face + FieldSlots.CHARACTER + i);
      ONE.blend(MINUS_ONE, edge.compare(VectorOperators.LT, ZERO))
          .intoArray(s, face + FieldSlots.AXIAL_B + i);
      ONE.intoArray(s, face + FieldSlots.MEAN + i);
      ONE.intoArray(s, face + FieldSlots.AXIAL_A + i);
      ONE.intoArray(s, face + FieldSlots.RADIAL_A + i);
      MINUS_ONE.intoArray(s, face + FieldSlots.RADIAL_B + i);
    }
  }

  @Override
  public void takeMean(int face) {
    for (int i = 0; i < POINTS; i += WIDTH) {
      DoubleVector mean = at(face + FieldSlots.MEAN + i);
      DoubleVector partner = at(face + FieldSlots.PARTNER + i);
      DoubleVector product = at(face + FieldSlots.PRODUCT + i);
      DoubleVector character = at(face + FieldSlots.CHARACTER + i);
      DoubleVector both = ONE.div(mean.mul(character));
      DoubleVector perCharacter = both.mul(mean);
      DoubleVector a = at(face + FieldSlots.AXIAL_A + i);
      DoubleVector b = at(face + FieldSlots.AXIAL_B + i);
      DoubleVector c = at(face + FieldSlots.RADIAL_A + i);
      DoubleVector d = at(face + FieldSlots.RADIAL_B + i);
      DoubleVector g = product.mul(perCharacter);
      b.fma(perCharacter, a).intoArray(s, face + FieldSlots.AXIAL_A + i);
      DoubleVector axial = a.fma(g, b);
      axial.add(axial).intoArray(s, face + FieldSlots.AXIAL_B + i);
      character.add(g).intoArray(s, face + FieldSlots.CHARACTER + i);
      d.fma(both.mul(character), c).intoArray(s, face + FieldSlots.RADIAL_A + i);
      DoubleVector radial = c.fma(partner, d);
      radial.add(radial).intoArray(s, face + FieldSlots.RADIAL_B + i);
      DoubleVector next = mean.add(partner);
      DoubleVector root = product.sqrt();
      DoubleVector doubled = root.add(root);
      next.intoArray(s, face + FieldSlots.MEAN + i);
      doubled.intoArray(s, face + FieldSlots.PARTNER + i);
      doubled.mul(next).intoArray(s, face + FieldSlots.PRODUCT + i);
    }
  }

  @Override
  public void endFace(int face) {
    for (int i = 0; i < POINTS; i += WIDTH) {
      DoubleVector mean = at(face + FieldSlots.MEAN + i);
      DoubleVector character = at(face + FieldSlots.CHARACTER + i);
      DoubleVector axialDivisor = mean.mul(mean.add(character));
      DoubleVector radialDivisor = mean.mul(mean.add(mean));
      DoubleVector both = ONE.div(axialDivisor.mul(radialDivisor));
      DoubleVector axial =
          at(face + FieldSlots.AXIAL_A + i)
              .fma(mean, at(face + FieldSlots.AXIAL_B + i))
              .mul(both.mul(radialDivisor));
      DoubleVector radial =
          at(face + FieldSlots.RADIAL_A + i)
              .fma(mean, at(face + FieldSlots.RADIAL_B + i))
              .mul(both.mul(axialDivisor));
      at(face + FieldSlots.AXIAL + i).mul(axial).intoArray(s, face + FieldSlots.AXIAL + i);
      at(face + FieldSlots.RADIAL + i).mul(radial).intoArray(s, face + FieldSlots.RADIAL + i);
    }
  }

  @Override
  public void addNear(double radius, double factor, double border) {
    DoubleVector r = all(radius);
    DoubleVector strength = all(radius * factor);
    DoubleVector smallest = all(SMALLEST_DISTANCE);
    for (int i = 0; i < POINTS; i += WIDTH) {
      DoubleVector rho = at(FieldSlots.RHO + i);
      DoubleVector apart = smallest.blend(rho, rho.compare(VectorOperators.GT, smallest));
      DoubleVector reach = r.add(rho);
      DoubleVector both = ONE.div(reach.mul(apart));
      DoubleVector axial =
          at(FieldSlots.UPPER + FieldSlots.AXIAL + i)
              .sub(at(FieldSlots.LOWER + FieldSlots.AXIAL + i));
      DoubleVector radial =
          at(FieldSlots.UPPER + FieldSlots.RADIAL + i)
              .sub(at(FieldSlots.LOWER + FieldSlots.RADIAL + i));
      VectorMask<Double> near = at(FieldSlots.R2 + i).compare(VectorOperators.LE, border);
      DoubleVector along = ZERO.blend(strength.mul(axial).mul(both.mul(apart)), near);
      DoubleVector across = ZERO.blend(strength.mul(radial).mul(both.mul(reach)), near);
      across.fma(at(FieldSlots.DX + i), at(FieldSlots.BX + i)).intoArray(s, FieldSlots.BX + i);
      across.fma(at(FieldSlots.DY + i), at(FieldSlots.BY + i)).intoArray(s, FieldSlots.BY + i);
      at(FieldSlots.BZ + i).add(along).intoArray(s, FieldSlots.BZ + i);
    }
  }

  @Override
  public void beginFar(double squared) {
    DoubleVector a2 = all(squared);
    for (int i = 0; i < POINTS; i += WIDTH) {
      DoubleVector dz = at(FieldSlots.DZ + i);
      DoubleVector perSquare = ONE.div(at(FieldSlots.R2 + i));
      DoubleVector q = a2.mul(perSquare);
      q.intoArray(s, FieldSlots.Q + i);
      q.mul(dz.mul(dz).mul(perSquare)).intoArray(s, FieldSlots.QU + i);
      q.mul(q).intoArray(s, FieldSlots.QQ + i);
      ZERO.intoArray(s, FieldSlots.EVEN + i);
      ZERO.intoArray(s, FieldSlots.EVEN_BEFORE + i);
      ZERO.intoArray(s, FieldSlots.SLOPE + i);
      ZERO.intoArray(s, FieldSlots.SLOPE_BEFORE + i);
    }
  }

  @Override
  public void takeTerm(DiscSeries series, int term) {
    int turn = (term & 1) * POINTS;
    int back = POINTS - turn;
    DoubleVector evenMoment = all(series.evenMoment(term));
    DoubleVector slopeMoment = all(series.slopeMoment(term));
    DoubleVector evenAlpha = all(series.evenAlpha(term));
    DoubleVector evenBeta = all(series.evenBeta(term));
    DoubleVector evenGamma = all(series.evenGamma(term));
    DoubleVector slopeAlpha = all(series.slopeAlpha(term));
    DoubleVector slopeBeta = all(series.slopeBeta(term));
    DoubleVector slopeGamma = all(series.slopeGamma(term));
    for (int i = 0; i < POINTS; i += WIDTH) {
      DoubleVector q = at(FieldSlots.Q + i);
      DoubleVector qu = at(FieldSlots.QU + i);
      DoubleVector qq = at(FieldSlots.QQ + i);
      DoubleVector even = evenAlpha.fma(qu, evenBeta.mul(q));
      DoubleVector evenLast = even.fma(at(FieldSlots.EVEN + back + i), evenMoment);
      evenGamma
          .mul(qq)
          .fma(at(FieldSlots.EVEN + turn + i), evenLast)
          .intoArray(s, FieldSlots.EVEN + turn + i);
      DoubleVector slope = slopeAlpha.fma(qu, slopeBeta.mul(q));
      DoubleVector slopeLast = slope.fma(at(FieldSlots.SLOPE + back + i), slopeMoment);
      slopeGamma
          .mul(qq)
          .fma(at(FieldSlots.SLOPE + turn + i), slopeLast)
          .intoArray(s, FieldSlots.SLOPE + turn + i);
    }
  }

  @Override
  public void addFar(double factor, double border) {
    DoubleVector remanence = all(factor);
    DoubleVector gamma = all(DiscSeries.firstGamma());
    DoubleVector three = all(3.0);
    DoubleVector half = all(-0.5);
    DoubleVector more = all(1.5);
    for (int i = 0; i < POINTS; i += WIDTH) {
      DoubleVector q = at(FieldSlots.Q + i);
      DoubleVector r2 = at(FieldSlots.R2 + i);
      DoubleVector strength = remanence.mul(q.sqrt());
      DoubleVector first = more.fma(at(FieldSlots.QU + i), half.mul(q));
      DoubleVector zeroth = gamma.mul(at(FieldSlots.QQ + i)).mul(at(FieldSlots.EVEN + i));
      DoubleVector axial = strength.mul(first.fma(at(FieldSlots.EVEN_BEFORE + i), zeroth));
      DoubleVector radial =
          strength
              .mul(three.mul(q).mul(at(FieldSlots.SLOPE_BEFORE + i)))
              .mul(at(FieldSlots.DZ + i).div(r2));
      VectorMask<Double> far = r2.compare(VectorOperators.GT, border);
      DoubleVector along = ZERO.blend(axial, far);
      DoubleVector across = ZERO.blend(radial, far);
      across.fma(at(FieldSlots.DX + i), at(FieldSlots.BX + i)).intoArray(s, FieldSlots.BX + i);
      across.fma(at(FieldSlots.DY + i), at(FieldSlots.BY + i)).intoArray(s, FieldSlots.BY + i);
      at(FieldSlots.BZ + i).add(along).intoArray(s, FieldSlots.BZ + i);
    }
  }
}
