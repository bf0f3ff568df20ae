package lodeswing.core.integrate;

/**
 * Proportional-integral control of the step size.
 *
 * <p>After an accepted step of scaled error e_n the step grows by 0.9 e_n^-a e_(n-1)^b, after a
 * rejected one by 0.9 e^(-1/order), within bounds. Gustafsson, ACM Trans. Math. Softw. 17 (1991)
 * 533; Hairer and Wanner, Solving Ordinary Differential Equations II (1996), section IV.2. The
 * powers use only + - * / fma and the bits of the exponent, so that every machine and every lane
 * finds the same step.
 */
public final class StepControl {

  /** Part a of the exponents, times the order. */
  private static final double PROPORTIONAL = 0.7;

  /** Part b of the exponents, times the order. */
  private static final double INTEGRAL = 0.4;

  /** What a size is taken below the one that would just do. */
  private static final double SAFETY = 0.9;

  /** Least factor of a step's size. */
  public static final double LEAST_GROWTH = 0.2;

  /** Greatest factor of a step's size. */
  public static final double MOST_GROWTH = 5;

  /** Squared errors below this count as this. */
  public static final double SMALLEST_ERROR_SQUARED = 1e-16;

  private final double proportional;
  private final double integral;
  private final double plain;
  private double lastLog;
  private boolean rejected;

  /**
   * A control.
   *
   * @param integral part b of the exponents, times the order
   * @param order power of the step's size that its error is taken to grow with
   */
  StepControl(double integral, double order) {
    this.proportional = PROPORTIONAL / order / 2;
    this.integral = integral / order / 2;
    this.plain = 0.5 / order;
    this.lastLog = log2(1e-4);
  }

  /** A control with {@link #INTEGRAL}. */
  static StepControl of(double order) {
    return new StepControl(INTEGRAL, order);
  }

  /** Factor of the next step's size after an accepted step. */
  double accept(double errorSquared) {
    double log = log2(Math.max(errorSquared, SMALLEST_ERROR_SQUARED));
    double factor = SAFETY * exp2(integral * lastLog - proportional * log);
    lastLog = log;
    double most = rejected ? 1 : MOST_GROWTH;
    rejected = false;
    return Math.min(Math.max(factor, LEAST_GROWTH), most);
  }

  /** Factor of the step's size for another try after a rejected step. */
  double reject(double errorSquared) {
    rejected = true;
    return Math.max(SAFETY * exp2(-plain * log2(errorSquared)), LEAST_GROWTH);
  }

  /** Binary logarithm of a normal positive number, within 1e-4. */
  static double log2(double x) {
    long bits = Double.doubleToRawLongBits(x);
    double exponent = (bits >> 52) - 1023;
    double m = Double.longBitsToDouble((bits & 0x000fffffffffffffL) | 0x3ff0000000000000L);
    // ln m = 2 artanh s with s = (m - r)/(m + r) about r = sqrt 2, where |s| is below 0.172.
    double s = (m - ROOT_TWO) / (m + ROOT_TWO);
    double s2 = s * s;
    double series = Math.fma(s2, Math.fma(s2, 0.2, 1.0 / 3.0), 1.0);
    return exponent + Math.fma(2 * LOG2_E * s, series, 0.5);
  }

  /** Two to the power x, for |x| below 1000, within 1e-5 of its value. */
  static double exp2(double x) {
    double whole = Math.rint(x);
    double r = (x - whole) * LN_2;
    double series =
        Math.fma(r, Math.fma(r, Math.fma(r, Math.fma(r, 1.0 / 24, 1.0 / 6), 0.5), 1.0), 1.0);
    return series * Double.longBitsToDouble(((long) whole + 1023) << 52);
  }

  private static final double ROOT_TWO = 1.4142135623730951;
  private static final double LOG2_E = 1.4426950408889634;
  private static final double LN_2 = 0.6931471805599453;
}
