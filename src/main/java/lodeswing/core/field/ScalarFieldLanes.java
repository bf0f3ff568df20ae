package lodeswing.core.field;

import static lodeswing.core.field.FieldSlots.POINTS;

/** The passes one point after the other: what runs without the vector module. */
final class ScalarFieldLanes implements FieldLanes {

  private final double[] s = new double[FieldSlots.COUNT];

  @Override
  public double[] slots() {
    return s;
  }

  @Override
  public void locate(double x, double y, double z) {
    for (int i = 0; i < POINTS; i++) {
      double dx = s[FieldSlots.X + i] - x;
      double dy = s[FieldSlots.Y + i] - y;
      double dz = s[FieldSlots.Z + i] - z;
      double across = Math.fma(dx, dx, dy * dy);
      s[FieldSlots.DX + i] = dx;
      s[FieldSlots.DY + i] = dy;
      s[FieldSlots.DZ + i] = dz;
      s[FieldSlots.RHO + i] = Math.sqrt(across);
      s[FieldSlots.R2 + i] = Math.fma(dz, dz, across);
    }
  }

  @Override
  public void addDipole(double strength, double insideSquared, double inside) {
    for (int i = 0; i < POINTS; i++) {
      double dz = s[FieldSlots.DZ + i];
      double r2 = s[FieldSlots.R2 + i];
      double w = strength / (r2 * Math.sqrt(r2));
      double along = 3 * dz * w / r2;
      boolean outside = r2 >= insideSquared;
      double across = outside ? along : 0;
      double axial = outside ? Math.fma(along, dz, -w) : inside;
      s[FieldSlots.BX + i] = Math.fma(across, s[FieldSlots.DX + i], s[FieldSlots.BX + i]);
      s[FieldSlots.BY + i] = Math.fma(across, s[FieldSlots.DY + i], s[FieldSlots.BY + i]);
      s[FieldSlots.BZ + i] += axial;
    }
  }

  @Override
  public void beginFace(int face, double radius, double shift) {
    for (int i = 0; i < POINTS; i++) {
      double rho = s[FieldSlots.RHO + i];
      double zeta = s[FieldSlots.DZ + i] + shift;
      double reach = radius + rho;
      double edge = radius - rho;
      double square = zeta * zeta;
      double perReach = 1 / Math.sqrt(Math.fma(reach, reach, square));
      double k = Math.sqrt(Math.fma(edge, edge, square)) * perReach;
      k = k > SMALLEST_MODULUS ? k : SMALLEST_MODULUS;
      double gamma = Math.abs(edge) / reach;
      s[face + FieldSlots.MEAN + i] = 1;
      s[face + FieldSlots.PARTNER + i] = k;
      s[face + FieldSlots.PRODUCT + i] = k;
      // On the wall, where the axial part jumps, the mean of both sides.
      s[face + FieldSlots.CHARACTER + i] = gamma > 0 ? gamma : 1;
      s[face + FieldSlots.AXIAL_A + i] = 1;
      s[face + FieldSlots.AXIAL_B + i] = edge < 0 ? -1 : 1;
      s[face + FieldSlots.RADIAL_A + i] = 1;
      s[face + FieldSlots.RADIAL_B + i] = -1;
      s[face + FieldSlots.AXIAL + i] = zeta * perReach;
      s[face + FieldSlots.RADIAL + i] = perReach;
    }
  }

  @Override
  public void takeMean(int face) {
    for (int i = 0; i < POINTS; i++) {
      double mean = s[face + FieldSlots.MEAN + i];
      double partner = s[face + FieldSlots.PARTNER + i];
      double product = s[face + FieldSlots.PRODUCT + i];
      double character = s[face + FieldSlots.CHARACTER + i];
      double both = 1 / (mean * character);
      double perCharacter = both * mean;
      double perMean = both * character;
      double a = s[face + FieldSlots.AXIAL_A + i];
      double b = s[face + FieldSlots.AXIAL_B + i];
      double c = s[face + FieldSlots.RADIAL_A + i];
      double d = s[face + FieldSlots.RADIAL_B + i];
      double g = product * perCharacter;
      s[face + FieldSlots.AXIAL_A + i] = Math.fma(b, perCharacter, a);
      double axial = Math.fma(a, g, b);
      s[face + FieldSlots.AXIAL_B + i] = axial + axial;
      s[face + FieldSlots.CHARACTER + i] = character + g;
      s[face + FieldSlots.RADIAL_A + i] = Math.fma(d, perMean, c);
      double radial = Math.fma(c, partner, d);
      s[face + FieldSlots.RADIAL_B + i] = radial + radial;
      double next = mean + partner;
      double root = Math.sqrt(product);
      double doubled = root + root;
      s[face + FieldSlots.MEAN + i] = next;
      s[face + FieldSlots.PARTNER + i] = doubled;
      s[face + FieldSlots.PRODUCT + i] = doubled * next;
    }
  }

  @Override
  public void endFace(int face) {
    for (int i = 0; i < POINTS; i++) {
      double mean = s[face + FieldSlots.MEAN + i];
      double a = s[face + FieldSlots.AXIAL_A + i];
      double b = s[face + FieldSlots.AXIAL_B + i];
      double c = s[face + FieldSlots.RADIAL_A + i];
      double d = s[face + FieldSlots.RADIAL_B + i];
      double axialDivisor = mean * (mean + s[face + FieldSlots.CHARACTER + i]);
      double radialDivisor = mean * (mean + mean);
      double both = 1 / (axialDivisor * radialDivisor);
      s[face + FieldSlots.AXIAL + i] *= Math.fma(a, mean, b) * (both * radialDivisor);
      s[face + FieldSlots.RADIAL + i] *= Math.fma(c, mean, d) * (both * axialDivisor);
    }
  }

  @Override
  public void addNear(double radius, double factor, double border) {
    double strength = radius * factor;
    for (int i = 0; i < POINTS; i++) {
      double rho = s[FieldSlots.RHO + i];
      double apart = rho > SMALLEST_DISTANCE ? rho : SMALLEST_DISTANCE;
      double reach = radius + rho;
      double both = 1 / (reach * apart);
      double axial =
          s[FieldSlots.UPPER + FieldSlots.AXIAL + i] - s[FieldSlots.LOWER + FieldSlots.AXIAL + i];
      double radial =
          s[FieldSlots.UPPER + FieldSlots.RADIAL + i] - s[FieldSlots.LOWER + FieldSlots.RADIAL + i];
      boolean near = s[FieldSlots.R2 + i] <= border;
      double along = near ? strength * axial * (both * apart) : 0;
      double across = near ? strength * radial * (both * reach) : 0;
      s[FieldSlots.BX + i] = Math.fma(across, s[FieldSlots.DX + i], s[FieldSlots.BX + i]);
      s[FieldSlots.BY + i] = Math.fma(across, s[FieldSlots.DY + i], s[FieldSlots.BY + i]);
      s[FieldSlots.BZ + i] += along;
    }
  }

  @Override
  public void beginFar(double squared) {
    for (int i = 0; i < POINTS; i++) {
      double dz = s[FieldSlots.DZ + i];
      double perSquare = 1 / s[FieldSlots.R2 + i];
      double q = squared * perSquare;
      s[FieldSlots.Q + i] = q;
      s[FieldSlots.QU + i] = q * (dz * dz * perSquare);
      s[FieldSlots.QQ + i] = q * q;
      s[FieldSlots.EVEN + i] = 0;
      s[FieldSlots.EVEN_BEFORE + i] = 0;
      s[FieldSlots.SLOPE + i] = 0;
      s[FieldSlots.SLOPE_BEFORE + i] = 0;
    }
  }

  @Override
  public void takeTerm(DiscSeries series, int term) {
    // The last two change places with every term.
    int turn = (term & 1) * POINTS;
    int back = POINTS - turn;
    double evenMoment = series.evenMoment(term);
    double slopeMoment = series.slopeMoment(term);
    double evenAlpha = series.evenAlpha(term);
    double evenBeta = series.evenBeta(term);
    double evenGamma = series.evenGamma(term);
    double slopeAlpha = series.slopeAlpha(term);
    double slopeBeta = series.slopeBeta(term);
    double slopeGamma = series.slopeGamma(term);
    for (int i = 0; i < POINTS; i++) {
      double q = s[FieldSlots.Q + i];
      double qu = s[FieldSlots.QU + i];
      double qq = s[FieldSlots.QQ + i];
      double even = Math.fma(evenAlpha, qu, evenBeta * q);
      double evenLast = Math.fma(even, s[FieldSlots.EVEN + back + i], evenMoment);
      s[FieldSlots.EVEN + turn + i] =
          Math.fma(evenGamma * qq, s[FieldSlots.EVEN + turn + i], evenLast);
      double slope = Math.fma(slopeAlpha, qu, slopeBeta * q);
      double slopeLast = Math.fma(slope, s[FieldSlots.SLOPE + back + i], slopeMoment);
      s[FieldSlots.SLOPE + turn + i] =
          Math.fma(slopeGamma * qq, s[FieldSlots.SLOPE + turn + i], slopeLast);
    }
  }

  @Override
  public void addFar(double factor, double border) {
    double gamma = DiscSeries.firstGamma();
    for (int i = 0; i < POINTS; i++) {
      double q = s[FieldSlots.Q + i];
      double r2 = s[FieldSlots.R2 + i];
      double strength = factor * Math.sqrt(q);
      double first = Math.fma(1.5, s[FieldSlots.QU + i], -0.5 * q);
      double zeroth = gamma * s[FieldSlots.QQ + i] * s[FieldSlots.EVEN + i];
      double axial = strength * Math.fma(first, s[FieldSlots.EVEN_BEFORE + i], zeroth);
      double radial =
          strength * (3 * q * s[FieldSlots.SLOPE_BEFORE + i]) * (s[FieldSlots.DZ + i] / r2);
      boolean far = r2 > border;
      double along = far ? axial : 0;
      double across = far ? radial : 0;
      s[FieldSlots.BX + i] = Math.fma(across, s[FieldSlots.DX + i], s[FieldSlots.BX + i]);
      s[FieldSlots.BY + i] = Math.fma(across, s[FieldSlots.DY + i], s[FieldSlots.BY + i]);
      s[FieldSlots.BZ + i] += along;
    }
  }
}
