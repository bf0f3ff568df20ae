package lodeswing.core.magnet;

/** Bulirsch's generalised complete elliptic integral, from which all disc formulas are built. */
final class EllipticIntegral {

  /** Below this the complementary modulus only feeds terms that vanish with it. */
  private static final double SMALLEST_MODULUS = 1e-120;

  private static final double CLOSE_ENOUGH = 1e-8;

  private EllipticIntegral() {}

  /**
   * cel(kc, p, a, b) = integral from 0 to pi/2 of (a cos^2 t + b sin^2 t) / ((cos^2 t + p sin^2 t)
   * sqrt(cos^2 t + kc^2 sin^2 t)) dt, by descending arithmetic-geometric means to working
   * precision.
   *
   * <p>Source: R. Bulirsch, Numerical calculation of elliptic integrals and elliptic functions III,
   * Numer. Math. 13 (1969) 305, after Numer. Math. 7 (1965) 78; in the form used by N. Derby and S.
   * Olbert, Am. J. Phys. 78 (2010) 229, appendix.
   *
   * @param kc complementary modulus, at least 0 (0 is taken as 1e-120: the integral's logarithm
   *     there stays finite)
   * @param p characteristic, above 0
   */
  static double cel(double kc, double p, double a, double b) {
    double k = Math.max(kc, SMALLEST_MODULUS);
    double em = 1;
    double pp = Math.sqrt(p);
    double aa = a;
    double bb = b / pp;
    double e = k;
    double kk = k;
    while (true) {
      double f = aa;
      aa += bb / pp;
      double g = e / pp;
      bb = 2 * (bb + f * g);
      pp += g;
      double last = em;
      em += kk;
      if (Math.abs(last - kk) <= last * CLOSE_ENOUGH) {
        return 0.5 * Math.PI * (bb + aa * em) / (em * (em + pp));
      }
      kk = 2 * Math.sqrt(e);
      e = kk * em;
    }
  }
}
