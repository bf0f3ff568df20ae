package lodeswing.core.motion;

/**
 * A polynomial of high degree on a square, through {@link ChebyshevGrid} points.
 *
 * <p>Its error is told from its own coefficients: those of a smooth function fall like r^k, so the
 * last two of each direction bound what is left out and folded back (L. N. Trefethen, Approximation
 * Theory and Approximation Practice, 2013, theorems 8.2 and 4.2, their numbers from memory); a
 * slope's error is at most degree^2 times that over the half side (Markov's inequality).
 */
final class ChebyshevPatch {

  /** What is left out and folded back, in units of the sum of the last two coefficients. */
  private static final double TAIL = 2;

  /** Coefficients up to this many roundings may be rounding where they fall no more. */
  private static final double FLAT = 10;

  /** Coefficients that keep this much over four degrees fall no more. */
  private static final double FALLING = 0.6;

  /** Degree of the first fit. */
  static final int FIRST = 8;

  final double u0;
  final double v0;
  final double half;
  private int degree;
  private double[] values = {};
  private double[] c = {};
  private double[] sizes = {};

  ChebyshevPatch(double u0, double v0, double half) {
    this.u0 = u0;
    this.v0 = v0;
    this.half = half;
  }

  /** Its degree in each variable, 0 before the first fit. */
  int degree() {
    return degree;
  }

  /** How many points a fit of a degree asks for that are not yet known. */
  int newPoints(int to) {
    int common = degree == 0 ? 0 : commonDivisor(to, degree) + 1;
    return (to + 1) * (to + 1) - common * common;
  }

  private static int commonDivisor(int a, int b) {
    return b == 0 ? a : commonDivisor(b, a % b);
  }

  /** Fits anew with a degree, asking only at points that are new. */
  void raise(CellTable.Source source, int to) {
    ChebyshevGrid grid = ChebyshevGrid.of(to);
    int n = to + 1;
    double[] raised = new double[n * n];
    for (int k = 0; k < n; k++) {
      for (int l = 0; l < n; l++) {
        boolean known = degree > 0 && (k * degree) % to == 0 && (l * degree) % to == 0;
        raised[k * n + l] =
            known
                ? values[(k * degree / to) * (degree + 1) + l * degree / to]
                : source.value(u0 + half * grid.node(k), v0 + half * grid.node(l));
      }
    }
    degree = to;
    values = raised;
    c = grid.coefficients(raised);
    sizes = sizes(c, n);
  }

  /** Root of the sum of squares of all coefficients of each degree, both directions. */
  private static double[] sizes(double[] c, int n) {
    double[] sizes = new double[n];
    for (int p = 0; p < n; p++) {
      for (int q = 0; q < n; q++) {
        sizes[Math.max(p, q)] += c[p * n + q] * c[p * n + q];
      }
    }
    for (int k = 0; k < n; k++) {
      sizes[k] = Math.sqrt(sizes[k]);
    }
    return sizes;
  }

  /** Estimated greatest error of the value; NaN where the function has no value. */
  double valueError() {
    return TAIL * (sizes[degree] + sizes[degree - 1]);
  }

  /** Estimated greatest error of a slope. */
  double slopeError() {
    return degree * degree / half * valueError();
  }

  /** Degree at which the error, in tolerances, will have fallen to 1; more than any where never. */
  double degreeFor(double valueTolerance, double slopeTolerance) {
    double error = error(valueTolerance, slopeTolerance);
    if (error <= 1) {
      return degree;
    }
    double late = sizes[degree] + sizes[degree - 1];
    double early = sizes[degree / 2] + sizes[degree / 2 - 1];
    double rate = 2 * Math.log(early / late) / degree;
    // the negated comparison also catches NaN
    return !(rate > 0) ? Double.POSITIVE_INFINITY : degree + Math.log(error) / rate;
  }

  /** Greatest size of the value, about. */
  double size() {
    return sizes.length == 0 ? 0 : sizes[0] + sizes[1];
  }

  /**
   * Whether its last coefficients are as small as the function's own rounding, so that no higher
   * degree and no cut gains; or a little larger, but fall no more.
   *
   * @param rounding size of that rounding
   */
  boolean rounded(double rounding) {
    double late = sizes[degree] + sizes[degree - 1];
    double before = sizes[degree - 4] + sizes[degree - 5];
    return degree > FIRST
        && (late <= rounding || (late <= FLAT * rounding && late > FALLING * before));
  }

  /** Estimated error in tolerances. */
  double error(double valueTolerance, double slopeTolerance) {
    double slopes = slopeTolerance < Double.POSITIVE_INFINITY ? slopeError() / slopeTolerance : 0;
    return Math.max(valueError() / valueTolerance, slopes);
  }

  /** Whether a square lies in it. */
  boolean holds(double uFrom, double uTo, double vFrom, double vTo) {
    double edge = half * (1 + 1e-12);
    return Math.max(Math.abs(uFrom - u0), Math.abs(uTo - u0)) <= edge
        && Math.max(Math.abs(vFrom - v0), Math.abs(vTo - v0)) <= edge;
  }

  /** The points are needed no more. */
  void close() {
    values = new double[0];
  }

  /**
   * Value, or value and slopes, at a product of places.
   *
   * @param us places in u [rad]
   * @param vs places in v [rad]
   * @param slopes whether slopes are wanted
   * @param out receives f, f_u, f_v in 3 (i vs.length + j)
   */
  void grid(double[] us, double[] vs, boolean slopes, double[] out) {
    int n = degree + 1;
    double[] tu = new double[us.length * n];
    double[] du = new double[us.length * n];
    double[] tv = new double[vs.length * n];
    double[] dv = new double[vs.length * n];
    polynomials(us, u0, tu, du);
    polynomials(vs, v0, tv, dv);
    double[] row = new double[n];
    double[] rowSlope = new double[n];
    for (int i = 0; i < us.length; i++) {
      along(tu, i * n, row);
      if (slopes) {
        along(du, i * n, rowSlope);
      }
      for (int j = 0; j < vs.length; j++) {
        int at = 3 * (i * vs.length + j);
        out[at] = sum(row, tv, j * n);
        if (slopes) {
          out[at + 1] = sum(rowSlope, tv, j * n);
          out[at + 2] = sum(row, dv, j * n);
        }
      }
    }
  }

  private void along(double[] t, int from, double[] row) {
    int n = degree + 1;
    java.util.Arrays.fill(row, 0);
    for (int p = 0; p < n; p++) {
      double factor = t[from + p];
      for (int q = 0; q < n; q++) {
        row[q] += factor * c[p * n + q];
      }
    }
  }

  private static double sum(double[] row, double[] t, int from) {
    double sum = 0;
    for (int q = 0; q < row.length; q++) {
      sum += row[q] * t[from + q];
    }
    return sum;
  }

  /** Chebyshev polynomials and their slopes at places, by their recurrences. */
  private void polynomials(double[] at, double middle, double[] t, double[] d) {
    int n = degree + 1;
    for (int i = 0; i < at.length; i++) {
      double a = (at[i] - middle) / half;
      int o = i * n;
      t[o] = 1;
      t[o + 1] = a;
      d[o + 1] = 1 / half;
      for (int p = 2; p < n; p++) {
        t[o + p] = 2 * a * t[o + p - 1] - t[o + p - 2];
        d[o + p] = 2 * (t[o + p - 1] / half + a * d[o + p - 1]) - d[o + p - 2];
      }
    }
  }
}
