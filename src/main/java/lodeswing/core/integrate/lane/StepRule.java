package lodeswing.core.integrate.lane;

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
 * @param proportional a
 * @param integral b
 * @param plain c
 * @param safety below 1
 */
public record StepRule(
    double absolute,
    double relative,
    double perRateSquared,
    double proportional,
    double integral,
    double plain,
    double safety) {

  /** Least factor of a step's size. */
  public static final double LEAST = 0.2;

  /** Greatest factor of a step's size. */
  public static final double GREATEST = 5;

  /** Squared errors below this count as this. */
  public static final double SMALLEST_ERROR = 1e-16;

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

  /** Binary logarithm of the safety factor. */
  public double logSafety() {
    return StrictMath.log(safety) / StrictMath.log(2);
  }
}
