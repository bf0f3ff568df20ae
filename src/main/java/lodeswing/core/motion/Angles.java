package lodeswing.core.motion;

/**
 * Sine and cosine of our own, for |x| up to 1.6 rad.
 *
 * <p>The Taylor polynomial of degree 21 in Horner form; its remainder at 1.6 is below 2e-18, so
 * only rounding counts: within 1 ulp for the sine up to 60 degrees and within 1.8 ulp for both up
 * to 1.6 (tested). Branch-free and made of +, -, *, fma and absolute value in one fixed order, so
 * SIMD lanes that do the same operations agree to the bit. Beyond 1.6 the error grows smoothly; no
 * argument is refused.
 *
 * <p>Source of the series: NIST Digital Library of Mathematical Functions, 4.19.1.
 */
public final class Angles {

  /** Coefficient of x^3. */
  public static final double C3 = -1.0 / 6;

  /** Coefficient of x^5. */
  public static final double C5 = 1.0 / 120;

  /** Coefficient of x^7. */
  public static final double C7 = -1.0 / 5040;

  /** Coefficient of x^9. */
  public static final double C9 = 1.0 / 362880;

  /** Coefficient of x^11. */
  public static final double C11 = -1.0 / 39916800;

  /** Coefficient of x^13. */
  public static final double C13 = 1.0 / 6227020800.0;

  /** Coefficient of x^15. */
  public static final double C15 = -1.0 / 1307674368000.0;

  /** Coefficient of x^17. */
  public static final double C17 = 1.0 / 355687428096000.0;

  /** Coefficient of x^19. */
  public static final double C19 = -1.0 / 121645100408832000.0;

  /** Coefficient of x^21. */
  public static final double C21 = 1.0 / 51090942171709440000.0;

  /** pi/2 as a double. */
  public static final double QUARTER = 0x1.921fb54442d18p0;

  /** What is left of pi/2. */
  public static final double QUARTER_REST = 0x1.1a62633145c07p-54;

  private Angles() {}

  /**
   * Sine.
   *
   * @param x [rad], |x| up to 1.6
   */
  public static double sine(double x) {
    double z = x * x;
    double p = Math.fma(C21, z, C19);
    p = Math.fma(p, z, C17);
    p = Math.fma(p, z, C15);
    p = Math.fma(p, z, C13);
    p = Math.fma(p, z, C11);
    p = Math.fma(p, z, C9);
    p = Math.fma(p, z, C7);
    p = Math.fma(p, z, C5);
    p = Math.fma(p, z, C3);
    return Math.fma(x * z, p, x);
  }

  /**
   * Cosine, as the sine of pi/2 - |x|; what that difference loses to rounding comes back through
   * the derivative, for which the sine of x is asked.
   *
   * @param x [rad], |x| up to 1.6
   * @param sine the value of {@link #sine} at x
   */
  public static double cosine(double x, double sine) {
    double a = Math.abs(x);
    double high = QUARTER - a;
    double low = ((QUARTER - high) - a) + QUARTER_REST;
    return Math.fma(low, Math.abs(sine), sine(high));
  }
}
