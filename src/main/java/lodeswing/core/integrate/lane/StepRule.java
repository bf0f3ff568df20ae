package lodeswing.core.integrate.lane;

import lodeswing.core.integrate.StepControl;
import lodeswing.core.integrate.Tolerance;

/**
 * How a step's error is measured and how it sets the size of the next step.
 *
 * <p>The squared error (e0^2 + e1^2 + (e2^2 + e3^2) / w^2) / (absolute^2 + relative^2 R^2), with
 * R^2 the same sum of the state at the start, w the motion's natural rate. After an accepted step
 * the size grows by safety e_n^-a e_(n-1)^b, after a rejected one by safety e^-c, within bounds
 * (Gustafsson, ACM Trans. Math. Softw. 17 (1991) 533). Powers come from the bits of the number, a
 * logarithm that is linear between powers of two: within 6 per cent, which is enough for a size.
 *
 * @param absolute absolute tolerance
 * @param relative relative tolerance
 * @param perRateSquared 1/w^2
 * @param order power of the step's size that the error is taken to grow with
 */
public record StepRule(double absolute, double relative, double perRateSquared, double order) {

  /** Exponent a, times the order. */
  private static final double PROPORTIONAL = 0.8;

  /** Exponent b, times the order. */
  private static final double INTEGRAL = 0.2;

  /** Half the labels wrong of 0.9 after as many tries, which all cost the same on lanes. */
  private static final double SAFETY = 0.8;

  /** Least factor of a step's size. */
  public static final double LEAST = StepControl.LEAST_GROWTH;

  /** Greatest factor of a step's size. */
  public static final double GREATEST = StepControl.MOST_GROWTH;

  /** Squared errors below this count as this. */
  public static final double SMALLEST_ERROR = StepControl.SMALLEST_ERROR_SQUARED;

  /** Squared errors above this, and what is no number, count as this. */
  public static final double GREATEST_ERROR = 1e12;

  /** Logarithm of the error that a first step is thought to come from. */
  public static final double FIRST_LOG = -13;

  /** Two to this power turns bits shifted right by 20 into a double, and back. */
  public static final double MAGIC = 0x1p52;

  /** Bits of {@link #MAGIC}. */
  public static final long MAGIC_BITS = 0x4330000000000000L;

  /** A double's exponent as it lies in those shifted bits. */
  public static final double PER_OCTAVE = 0x1p32;

  /** Bias of a double's exponent. */
  public static final double BIAS = 1023;

  /**
   * The rule that a tolerance and a motion ask for.
   *
   * @param tolerance error allowed for a step
   * @param rate the motion's natural rate, 0 or above; without one, speeds count as they are
   * @param order power of the step's size that the error is taken to grow with
   */
  static StepRule of(Tolerance tolerance, double rate, int order) {
    double perRateSquared = rate > 0 ? 1 / (rate * rate) : 1;
    return new StepRule(tolerance.absolute(), tolerance.relative(), perRateSquared, order);
  }

  /** Exponent a. */
  public double proportional() {
    return PROPORTIONAL / order;
  }

  /** Exponent b. */
  public double integral() {
    return INTEGRAL / order;
  }

  /** Exponent c. */
  public double plain() {
    return 1 / order;
  }

  /** Binary logarithm of the safety factor. */
  public double logSafety() {
    return StrictMath.log(SAFETY) / StrictMath.log(2);
  }
}
