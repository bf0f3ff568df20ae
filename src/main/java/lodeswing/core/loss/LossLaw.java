package lodeswing.core.loss;

import java.util.List;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * What takes energy out of the swing; every part only ever lowers the energy.
 *
 * <p>The linear part is a force -c v at the bob magnet's centre, the same in every direction. For
 * small swings in x the body then obeys beta'' = -omega^2 beta - gamma beta' with gamma = c s_b^2 /
 * (S2 + It), whose amplitude falls as exp(-gamma t/2). Hence gamma = 2 ln 2 / (n T0) for n swings
 * to half and gamma = omega/Q for a quality factor, T0 = 2 pi/omega the small-swing period without
 * magnets and loss (L. D. Landau, E. M. Lifshitz, Mechanics, section 25).
 *
 * @param linear force per speed at the bob magnet's centre [N s/m], at least 0
 * @param drag quadratic air drag of bob and bar, empty for none
 * @param pivotTorque size of the friction torque at the pivot [N m], at least 0
 */
public record LossLaw(double linear, List<DragElement> drag, double pivotTorque) {

  public LossLaw {
    drag = List.copyOf(drag);
    requireNotNegative(linear, "linear");
    requireNotNegative(pivotTorque, "pivotTorque");
  }

  /** No loss at all. */
  public static LossLaw none() {
    return new LossLaw(0, List.of(), 0);
  }

  /**
   * The linear loss that halves a small swing in x in a counted number of swings.
   *
   * @param swings full swings (there and back) to half the amplitude, above 0
   * @param body what swings
   * @param gravity [m/s^2]
   */
  public static LossLaw fromSwingsToHalf(double swings, TwoAxisBody body, double gravity) {
    requirePositive(swings, "swings");
    double period = 2 * Math.PI / body.rateX(gravity);
    return ofRate(2 * Math.log(2) / (swings * period), body);
  }

  /**
   * The linear loss of a quality factor Q = omega/gamma of the small swing in x.
   *
   * @param quality Q, above 0
   * @param body what swings
   * @param gravity [m/s^2]
   */
  public static LossLaw fromQualityFactor(double quality, TwoAxisBody body, double gravity) {
    requirePositive(quality, "quality");
    return ofRate(body.rateX(gravity) / quality, body);
  }

  private static LossLaw ofRate(double gamma, TwoAxisBody body) {
    double arm = body.bobArm();
    return new LossLaw(gamma * body.swingInertia() / (arm * arm), List.of(), 0);
  }

  /**
   * Rate gamma of the small swing in x that the linear part gives [1/s]; energy falls as exp(-gamma
   * t).
   *
   * @param body what swings
   */
  public double linearRate(TwoAxisBody body) {
    return linear * body.bobArm() * body.bobArm() / body.swingInertia();
  }

  private static void requirePositive(double value, String name) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " must be above 0, but is " + value);
    }
  }

  private static void requireNotNegative(double value, String name) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " must be at least 0, but is " + value);
    }
  }

  /**
   * A point of the bar that feels -k |v| v.
   *
   * @param arm distance below the second axis [m]; negative above it
   * @param coefficient k = 1/2 rho C_d A [kg/m], at least 0
   */
  public record DragElement(double arm, double coefficient) {

    public DragElement {
      requireNotNegative(coefficient, "coefficient");
      if (!Double.isFinite(arm)) {
        throw new IllegalArgumentException("arm must be a number, but is " + arm);
      }
    }
  }
}
