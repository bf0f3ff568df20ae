package lodeswing.core.magnet;

/**
 * Two parallel rectangles with uniform surface charge, +1 above and -1 below: integral of charge
 * over distance [m], and its negative gradient.
 *
 * <p>The closed form takes the logarithms and angles of opposite corners together, so that it holds
 * on the prolonged edges and needs half the calls; points are folded into the first octant by
 * symmetry, so that the only face a point can lie in is the upper one, seen from above. Far away,
 * where the eight corners cancel, a dipole lattice of Gauss points over the volume takes its place.
 *
 * <p>Sources: E. P. Furlani, Permanent Magnet and Electromechanical Devices (2001), section 4.2;
 * the rectangle's potential after E. Durand, Electrostatique I (1964).
 */
final class ChargedRectangles {

  private static final double FAR = 12;

  /** Keeps the logarithm finite on an edge, where the field itself is not. */
  private static final double SMALLEST = 1e-200;

  /** Gauss-Legendre abscissae and weights for 5 points on (-1, 1), DLMF table 3.5.2. */
  private static final double[] GAUSS = {
    -0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831, 0.9061798459386640
  };

  private static final double[] WEIGHT = {
    0.23692688505618908,
    0.47862867049936647,
    0.5688888888888889,
    0.47862867049936647,
    0.23692688505618908
  };

  private ChargedRectangles() {}

  /** Integral of charge over distance [m]; a, b, c are the half extents along x, y, z. */
  static double potential(double a, double b, double c, double x, double y, double z) {
    if (x * x + y * y + z * z > FAR * FAR * (a * a + b * b + c * c)) {
      return farPotential(a, b, c, x, y, z);
    }
    double xl = Math.abs(x) - a;
    double xh = Math.abs(x) + a;
    double yl = Math.abs(y) - b;
    double yh = Math.abs(y) + b;
    double up = Math.abs(Math.abs(z) - c);
    double down = Math.abs(z) + c;
    double sum =
        xh * Math.log(edge(xh, up, yl, yh) / edge(xh, down, yl, yh))
            - xl * Math.log(edge(xl, up, yl, yh) / edge(xl, down, yl, yh))
            + yh * Math.log(edge(yh, up, xl, xh) / edge(yh, down, xl, xh))
            - yl * Math.log(edge(yl, up, xl, xh) / edge(yl, down, xl, xh))
            - up * solidAngle(xl, xh, yl, yh, up)
            + down * solidAngle(xl, xh, yl, yh, down);
    return z < 0 ? -sum : sum;
  }

  /** (h + |h|)/(l + |l|) for an edge from l to h, at the distances d and z from its line. */
  private static double edge(double d, double z, double l, double h) {
    double q = Math.max(d * d + z * z, SMALLEST);
    double rl = Math.sqrt(l * l + q);
    double rh = Math.sqrt(h * h + q);
    // h is never negative here, since points are folded into the first octant.
    return l >= 0 ? (h + rh) / (l + rl) : (h + rh) * (rl - l) / q;
  }

  /** Solid angle of the rectangle seen from a point at height z of at least 0. */
  private static double solidAngle(double xl, double xh, double yl, double yh, double z) {
    double far = strip(xl, xh, yh, z);
    return yl == 0 ? far : far - strip(xl, xh, yl, z);
  }

  /**
   * Solid angle of a rectangle from xl to xh and from 0 to y, negative with y: the angles of its
   * two corners, with tangents |xy|/(zr), added as arguments of a product of complex numbers.
   */
  private static double strip(double xl, double xh, double y, double z) {
    double across = y * y + z * z;
    double zl = z * Math.sqrt(xl * xl + across);
    double zh = z * Math.sqrt(xh * xh + across);
    double width = Math.abs(y);
    // The near corner's angle is taken away where xl > 0 and added where xl < 0.
    double angle =
        xl == 0
            ? Math.atan2(width * xh, zh)
            : Math.atan2(width * (xh * zl - xl * zh), zh * zl + width * width * xh * xl);
    return y < 0 ? -angle : angle;
  }

  /** Negative gradient of the potential, dimensionless: 4 pi H / M outside and inside. */
  static void field(double a, double b, double c, double x, double y, double z, double[] h) {
    if (x * x + y * y + z * z > FAR * FAR * (a * a + b * b + c * c)) {
      farField(a, b, c, x, y, z, h);
      return;
    }
    double xl = Math.abs(x) - a;
    double xh = Math.abs(x) + a;
    double yl = Math.abs(y) - b;
    double yh = Math.abs(y) + b;
    double up = Math.abs(z) - c;
    double down = Math.abs(z) + c;
    double hx =
        Math.log(
            edge(xl, up, yl, yh)
                / edge(xh, up, yl, yh)
                * (edge(xh, down, yl, yh) / edge(xl, down, yl, yh)));
    double hy =
        Math.log(
            edge(yl, up, xl, xh)
                / edge(yh, up, xl, xh)
                * (edge(yh, down, xl, xh) / edge(yl, down, xl, xh)));
    double above = solidAngle(xl, xh, yl, yh, Math.abs(up));
    double hz = (up < 0 ? -above : above) - solidAngle(xl, xh, yl, yh, down);
    h[0] = (x < 0) == (z < 0) ? hx : -hx;
    h[1] = (y < 0) == (z < 0) ? hy : -hy;
    h[2] = hz;
  }

  private static double farPotential(double a, double b, double c, double x, double y, double z) {
    double sum = 0;
    for (int i = 0; i < 5; i++) {
      double dx = x - a * GAUSS[i];
      for (int j = 0; j < 5; j++) {
        double dy = y - b * GAUSS[j];
        double across = dx * dx + dy * dy;
        double line = 0;
        for (int k = 0; k < 5; k++) {
          double dz = z - c * GAUSS[k];
          double r2 = across + dz * dz;
          line += WEIGHT[k] * dz / (r2 * Math.sqrt(r2));
        }
        sum += WEIGHT[i] * WEIGHT[j] * line;
      }
    }
    return sum * a * b * c;
  }

  private static void farField(
      double a, double b, double c, double x, double y, double z, double[] h) {
    double hx = 0;
    double hy = 0;
    double hz = 0;
    for (int i = 0; i < 5; i++) {
      double dx = x - a * GAUSS[i];
      for (int j = 0; j < 5; j++) {
        double dy = y - b * GAUSS[j];
        double across = dx * dx + dy * dy;
        for (int k = 0; k < 5; k++) {
          double dz = z - c * GAUSS[k];
          double r2 = across + dz * dz;
          double strength = WEIGHT[i] * WEIGHT[j] * WEIGHT[k] / (r2 * Math.sqrt(r2));
          double along = 3 * dz / r2 * strength;
          hx += along * dx;
          hy += along * dy;
          hz += along * dz - strength;
        }
      }
    }
    double volume = a * b * c;
    h[0] = hx * volume;
    h[1] = hy * volume;
    h[2] = hz * volume;
  }
}
