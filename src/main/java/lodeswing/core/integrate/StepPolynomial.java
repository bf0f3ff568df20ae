package lodeswing.core.integrate;

/**
 * Polynomial of one coordinate over one step, in theta = 0..1.
 *
 * <p>Hermite's quintic through place, speed and acceleration at both ends, plus theta^3 (1 -
 * theta)^3 (c0 + c1 u + c2 u^2) with u = 2 theta - 1, whose coefficients follow from accelerations
 * at inner points: Hermite-Birkhoff interpolation. The added part changes nothing at the ends, so
 * that the dense output has a continuous second derivative.
 */
final class StepPolynomial {

  private final double[] c = new double[9];

  /**
   * Sets the quintic; times are scaled so that the step lasts 1.
   *
   * @param start {q, h v, h^2 a} at the start
   * @param end {q, h v, h^2 a} at the end
   */
  void quintic(double[] start, double[] end) {
    double d = end[0] - start[0] - start[1] - 0.5 * start[2];
    double e = end[1] - start[1] - start[2];
    double f = end[2] - start[2];
    c[0] = start[0];
    c[1] = start[1];
    c[2] = 0.5 * start[2];
    c[3] = 10 * d - 4 * e + 0.5 * f;
    c[4] = -15 * d + 7 * e - f;
    c[5] = 6 * d - 3 * e + 0.5 * f;
    c[6] = 0;
    c[7] = 0;
    c[8] = 0;
  }

  /**
   * Bends the inner part so that the accelerations at u = -s and u = s become the ones given.
   *
   * @param before h^2 a at u = -s
   * @param after h^2 a at u = s
   */
  void bendPair(double s, double before, double after) {
    double low = before - acceleration(0.5 - 0.5 * s);
    double high = after - acceleration(0.5 + 0.5 * s);
    add(0.5 * (low + high) / evenCurvature(s), 0.5 * (high - low) / oddCurvature(s), 0);
  }

  /** Bends the inner part so that the acceleration in the middle becomes the one given. */
  void bendMiddle(double middle) {
    add((middle - acceleration(0.5)) / evenCurvature(0), 0, 0);
  }

  /** Like {@link #bendPair}, leaving the acceleration in the middle as it is. */
  void bendPairAroundMiddle(double s, double before, double after) {
    double low = before - acceleration(0.5 - 0.5 * s);
    double high = after - acceleration(0.5 + 0.5 * s);
    // c0 W''(0) + c2 (u^2 W)''(0) = 0 with W''(0) = -6 and (u^2 W)''(0) = 2 (times 1/16).
    double c2 = 0.5 * (low + high) / (evenCurvature(s) / 3 + squareCurvature(s));
    add(c2 / 3, 0.5 * (high - low) / oddCurvature(s), c2);
  }

  private void add(double c0, double c1, double c2) {
    c[3] += c0 - c1 + c2;
    c[4] += -3 * c0 + 5 * c1 - 7 * c2;
    c[5] += 3 * c0 - 9 * c1 + 19 * c2;
    c[6] += -c0 + 7 * c1 - 25 * c2;
    c[7] += -2 * c1 + 16 * c2;
    c[8] += -4 * c2;
  }

  /** Place. */
  double place(double theta) {
    double sum = c[8];
    for (int i = 7; i >= 0; i--) {
      sum = Math.fma(sum, theta, c[i]);
    }
    return sum;
  }

  /** h v. */
  double speed(double theta) {
    double sum = 8 * c[8];
    for (int i = 7; i >= 1; i--) {
      sum = Math.fma(sum, theta, i * c[i]);
    }
    return sum;
  }

  /** h^2 a. */
  private double acceleration(double theta) {
    double sum = 56 * c[8];
    for (int i = 7; i >= 2; i--) {
      sum = Math.fma(sum, theta, i * (i - 1) * c[i]);
    }
    return sum;
  }

  // Second derivatives by theta of w, u w and u^2 w, with w = (1 - u^2)^3/64.

  private static double evenCurvature(double u) {
    return (1 - u * u) * (30 * u * u - 6) / 16;
  }

  private static double oddCurvature(double u) {
    return u * (1 - u * u) * (42 * u * u - 18) / 16;
  }

  private static double squareCurvature(double u) {
    double u2 = u * u;
    return (1 - u2) * (2 - 34 * u2 + 56 * u2 * u2) / 16;
  }
}
