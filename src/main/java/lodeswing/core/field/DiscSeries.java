package lodeswing.core.field;

/**
 * The multipole series of a disc magnetised along its axis, far from it.
 *
 * <p>With a^2 = R^2 + h^2 (R radius, h half the height), c = h/a, q = (a/r)^2, u = z/r:
 *
 * <p>Bz = Br (a/r) sum over j of 2j t_j q^j P_2j(u), B_rho = Br (a/r) (rho z / r^2) sum over j of
 * t_j q^j P'_2j(u)/u, t_j = (P_l(c) - P_(l+2)(c))/(2l+3), l = 2j - 1. Both E_j = q^j P_2j and G_j =
 * q^j P'_2j/u follow a recurrence of two steps in u^2, X_(j+1) = (alpha u^2 + beta) q X_j - gamma
 * q^2 X_(j-1), made here of the three-term one of Gegenbauer's polynomials (DLMF 18.9.1, 18.9.19).
 *
 * <p>Beyond 2.5 circumscribed radii 22 terms leave out less than 1e-17; farther off fewer do.
 * Source of the moments: the potential on the axis, DLMF 18.12.4, as for the scalar form.
 */
public final class DiscSeries {

  /** Circumscribed radii beyond which the series is taken, as in the scalar form. */
  static final double FAR = 2.5;

  private static final int MOST = 22;

  /** Greatest (a/r)^2 for which so many terms do. */
  private static final double[] ENOUGH = enough();

  private final double[] evenMoments = new double[MOST + 1];
  private final double[] slopeMoments = new double[MOST + 1];
  private final double[][] even = new double[3][MOST + 2];
  private final double[][] slope = new double[3][MOST + 2];

  private static double[] enough() {
    double[] enough = new double[MOST];
    for (int terms = 2; terms < MOST; terms++) {
      enough[terms] = StrictMath.pow(1e-17, 1.0 / terms);
    }
    return enough;
  }

  /**
   * The series of a shape.
   *
   * @param cosine half height over circumscribed radius
   */
  DiscSeries(double cosine) {
    double[] p = new double[2 * MOST + 3];
    p[0] = 1;
    p[1] = cosine;
    for (int l = 1; l < p.length - 1; l++) {
      p[l + 1] = ((2 * l + 1) * cosine * p[l] - l * p[l - 1]) / (l + 1);
    }
    for (int j = 1; j <= MOST; j++) {
      int l = 2 * j - 1;
      slopeMoments[j] = (p[l] - p[l + 2]) / (2 * l + 3);
      evenMoments[j] = 2 * j * slopeMoments[j];
    }
    for (int j = 1; j < MOST + 2; j++) {
      twoSteps(2 * j, 0.5, even, j);
      twoSteps(2 * j - 1, 1.5, slope, j);
    }
  }

  /** From degrees m - 2 and m of C^lambda to m + 2. */
  private static void twoSteps(int m, double lambda, double[][] into, int j) {
    double next = a(m + 1, lambda);
    double back = next * b(m, lambda) / a(m - 1, lambda);
    into[0][j] = next * a(m, lambda);
    into[1][j] = -back - b(m + 1, lambda);
    into[2][j] = -back * b(m - 1, lambda);
  }

  private static double a(int m, double lambda) {
    return 2 * (m + lambda) / (m + 1);
  }

  private static double b(int m, double lambda) {
    return (m + 2 * lambda - 1) / (m + 1);
  }

  /**
   * How many terms leave out less than 1e-17 of the first.
   *
   * @param q greatest (a/r)^2, below 1/6
   */
  static int terms(double q) {
    int terms = 2;
    while (terms < MOST && q > ENOUGH[terms]) {
      terms++;
    }
    return terms;
  }

  /**
   * Adds the field at a single point, seen from the disc's centre.
   *
   * @param r2 square of its distance [m^2]
   * @param squared square of the circumscribed radius [m^2]
   * @param factor the remanence, signed [T]
   */
  void addAt(double x, double y, double z, double r2, double squared, double factor, double[] b) {
    double q = squared / r2;
    double qu = q * z * z / r2;
    double qq = q * q;
    double evenLast = 0;
    double evenBefore = 0;
    double slopeLast = 0;
    double slopeBefore = 0;
    for (int term = terms(q); term > 0; term--) {
      double nextEven =
          (even[0][term] * qu + even[1][term] * q) * evenLast
              + evenMoments[term]
              + even[2][term + 1] * qq * evenBefore;
      evenBefore = evenLast;
      evenLast = nextEven;
      double nextSlope =
          (slope[0][term] * qu + slope[1][term] * q) * slopeLast
              + slopeMoments[term]
              + slope[2][term + 1] * qq * slopeBefore;
      slopeBefore = slopeLast;
      slopeLast = nextSlope;
    }
    double strength = factor * Math.sqrt(q);
    double across = strength * 3 * q * slopeLast * z / r2;
    b[0] += across * x;
    b[1] += across * y;
    b[2] += strength * ((1.5 * qu - 0.5 * q) * evenLast + firstGamma() * qq * evenBefore);
  }

  /** Moment of a term of Bz. */
  public double evenMoment(int term) {
    return evenMoments[term];
  }

  /** Factor of q u^2 in the step from a term to the next. */
  public double evenAlpha(int term) {
    return even[0][term];
  }

  /** Factor of q. */
  public double evenBeta(int term) {
    return even[1][term];
  }

  /** Minus the factor of q^2, in the step to the term after the next. */
  public double evenGamma(int term) {
    return even[2][term + 1];
  }

  /** Moment of a term of B_rho. */
  public double slopeMoment(int term) {
    return slopeMoments[term];
  }

  /** Factor of q u^2 in the step from a term to the next. */
  public double slopeAlpha(int term) {
    return slope[0][term];
  }

  /** Factor of q. */
  public double slopeBeta(int term) {
    return slope[1][term];
  }

  /** Minus the factor of q^2, in the step to the term after the next. */
  public double slopeGamma(int term) {
    return slope[2][term + 1];
  }

  /** Minus the factor of q^2 E_0 in E_2. */
  public static double firstGamma() {
    return -b(1, 0.5) * b(2, 0.5) * a(3, 0.5) / a(1, 0.5);
  }
}
