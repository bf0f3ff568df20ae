package lodeswing.core.motion;

/**
 * The arithmetic of one square table cell: a polynomial of degree 7 in each of two variables on
 * [-1, 1]^2, 64 coefficients side by side, power of u major.
 *
 * <p>Made by interpolation at the product of two sets of eight Chebyshev points, turned into
 * powers. Evaluated by Horner in u on all eight powers of v at once and then by Horner in v, in one
 * fixed order of fused multiply-adds, so that one release a lane gives the same bits.
 *
 * <p>Source of the interpolation: N. J. Higham, The numerical stability of barycentric Lagrange
 * interpolation, IMA J. Numer. Anal. 24 (2004), its section from memory (Chebyshev points of the
 * first kind).
 */
final class ChebyshevCell {

  /** Points, and coefficients, in each variable. */
  static final int POINTS = 8;

  /** Coefficients of a cell. */
  static final int COEFFICIENTS = POINTS * POINTS;

  private static final double[] NODES = nodes();
  private static final double[][] TO_POWERS = toPowers();

  private ChebyshevCell() {}

  /** The k-th interpolation point in [-1, 1]. */
  static double node(int k) {
    return NODES[k];
  }

  /**
   * Turns values at the points into coefficients.
   *
   * @param values value at (node i, node j) in [i * 8 + j]
   * @param coefficients receives 64 coefficients from {@code offset} on
   * @param offset where to write
   */
  static void interpolate(double[] values, double[] coefficients, int offset) {
    double[] half = new double[COEFFICIENTS];
    for (int i = 0; i < POINTS; i++) {
      for (int q = 0; q < POINTS; q++) {
        double sum = 0;
        for (int j = 0; j < POINTS; j++) {
          sum += TO_POWERS[q][j] * values[i * POINTS + j];
        }
        half[i * POINTS + q] = sum;
      }
    }
    for (int p = 0; p < POINTS; p++) {
      for (int q = 0; q < POINTS; q++) {
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
          sum += TO_POWERS[p][i] * half[i * POINTS + q];
        }
        coefficients[offset + p * POINTS + q] = sum;
      }
    }
  }

  /** Value of the cell's polynomial. */
  static double value(double[] c, int o, double u, double v) {
    double sum = row(c, o, 7, u);
    for (int q = 6; q >= 0; q--) {
      sum = Math.fma(sum, v, row(c, o, q, u));
    }
    return sum;
  }

  private static double row(double[] c, int o, int q, double u) {
    double a = c[o + 56 + q];
    a = Math.fma(a, u, c[o + 48 + q]);
    a = Math.fma(a, u, c[o + 40 + q]);
    a = Math.fma(a, u, c[o + 32 + q]);
    a = Math.fma(a, u, c[o + 24 + q]);
    a = Math.fma(a, u, c[o + 16 + q]);
    a = Math.fma(a, u, c[o + 8 + q]);
    return Math.fma(a, u, c[o + q]);
  }

  /**
   * First derivatives by u and v.
   *
   * @param out receives dp/du in out[1], dp/dv in out[2]
   */
  static void slopes(double[] c, int o, double u, double v, double[] out) {
    double pu = 0;
    double pv = 0;
    for (int q = 7; q >= 0; q--) {
      double a = c[o + 56 + q];
      double d = a;
      a = Math.fma(a, u, c[o + 48 + q]);
      d = Math.fma(d, u, a);
      a = Math.fma(a, u, c[o + 40 + q]);
      d = Math.fma(d, u, a);
      a = Math.fma(a, u, c[o + 32 + q]);
      d = Math.fma(d, u, a);
      a = Math.fma(a, u, c[o + 24 + q]);
      d = Math.fma(d, u, a);
      a = Math.fma(a, u, c[o + 16 + q]);
      d = Math.fma(d, u, a);
      a = Math.fma(a, u, c[o + 8 + q]);
      d = Math.fma(d, u, a);
      if (q > 0) {
        pv = Math.fma(pv, v, q * Math.fma(a, u, c[o + q]));
      }
      pu = Math.fma(pu, v, d);
    }
    out[1] = pu;
    out[2] = pv;
  }

  /**
   * Value with first and second derivatives.
   *
   * @param out receives p, p_u, p_v, p_uu, p_uv, p_vv
   */
  static void curvature(double[] c, int o, double u, double v, double[] out) {
    double p = 0;
    double pu = 0;
    double pv = 0;
    double puu = 0;
    double puv = 0;
    double pvv = 0;
    for (int q = 7; q >= 0; q--) {
      double a = c[o + 56 + q];
      double d = 0;
      double e = 0;
      for (int i = 6; i >= 0; i--) {
        e = Math.fma(e, u, d);
        d = Math.fma(d, u, a);
        a = Math.fma(a, u, c[o + 8 * i + q]);
      }
      pvv = Math.fma(pvv, v, pv);
      pv = Math.fma(pv, v, p);
      p = Math.fma(p, v, a);
      puv = Math.fma(puv, v, pu);
      pu = Math.fma(pu, v, d);
      puu = Math.fma(puu, v, e);
    }
    out[0] = p;
    out[1] = pu;
    out[2] = pv;
    out[3] = 2 * puu;
    out[4] = puv;
    out[5] = 2 * pvv;
  }

  private static double[] nodes() {
    double[] nodes = new double[POINTS];
    for (int k = 0; k < POINTS; k++) {
      nodes[k] = StrictMath.cos(Math.PI * (2 * k + 1) / (2.0 * POINTS));
    }
    return nodes;
  }

  /**
   * Powers' coefficients of each Lagrange polynomial: column j is the polynomial that is 1 at node
   * j.
   */
  private static double[][] toPowers() {
    double[][] matrix = new double[POINTS][POINTS];
    for (int j = 0; j < POINTS; j++) {
      double[] polynomial = {1};
      for (int k = 0; k < POINTS; k++) {
        if (k != j) {
          double scale = 1 / (NODES[j] - NODES[k]);
          double[] next = new double[polynomial.length + 1];
          for (int p = 0; p < polynomial.length; p++) {
            next[p + 1] += polynomial[p] * scale;
            next[p] -= polynomial[p] * NODES[k] * scale;
          }
          polynomial = next;
        }
      }
      for (int p = 0; p < POINTS; p++) {
        matrix[p][j] = polynomial[p];
      }
    }
    return matrix;
  }
}
