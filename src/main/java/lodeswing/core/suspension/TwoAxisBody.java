package lodeswing.core.suspension;

/**
 * A rigid body on two crossed horizontal axes: the upper one along x (angle alpha, swing in y), the
 * second one a distance below it (angle beta, swing in x).
 *
 * <p>An element at s below the second axis lies, from the upper axis, at x = s sin(beta), y = (d +
 * s cos(beta)) sin(alpha), z = -(d + s cos(beta)) cos(alpha).
 *
 * @param axisOffset distance d from the upper to the second axis [m], 0 for a cord
 * @param mass M, all parts [kg]
 * @param firstMoment S1 = sum m s about the second axis, s along the bar [kg m], above 0: the body
 *     hangs
 * @param swingInertia S2 + It = sum m s^2 and the parts' own transverse moments [kg m^2]
 * @param axialInertia Ia, the parts' own moments about the bar's axis [kg m^2]
 * @param bobArm s_b, distance of the bob magnet's centre below the second axis [m]
 */
public record TwoAxisBody(
    double axisOffset,
    double mass,
    double firstMoment,
    double swingInertia,
    double axialInertia,
    double bobArm) {

  public TwoAxisBody {
    if (!(axisOffset >= 0 && axialInertia >= 0)) {
      throw new IllegalArgumentException("axisOffset and axialInertia must be at least 0");
    }
    requirePositive(mass, "mass");
    requirePositive(firstMoment, "firstMoment");
    requirePositive(swingInertia, "swingInertia");
    requirePositive(bobArm, "bobArm");
  }

  /** Distance of the centre of mass below the second axis [m]. */
  public double centreArm() {
    return firstMoment / mass;
  }

  /**
   * Small-swing angular rate about the second axis, the swing in x, without magnets [rad/s].
   *
   * @param gravity [m/s^2]
   */
  public double rateX(double gravity) {
    return Math.sqrt(gravity * firstMoment / swingInertia);
  }

  /**
   * Small-swing angular rate about the upper axis, the swing in y, without magnets [rad/s].
   *
   * @param gravity [m/s^2]
   */
  public double rateY(double gravity) {
    return Math.sqrt(gravity * (mass * axisOffset + firstMoment) / upperInertia(0, 1));
  }

  /**
   * Moment of inertia A(beta) about the upper axis [kg m^2]: M d^2 + 2 d S1 cos + (S2 + It) cos^2 +
   * Ia sin^2.
   *
   * @param sinBeta sine of the angle about the second axis
   * @param cosBeta its cosine
   */
  public double upperInertia(double sinBeta, double cosBeta) {
    double ownPart = Math.fma(swingInertia * cosBeta, cosBeta, axialInertia * sinBeta * sinBeta);
    return Math.fma(axisOffset, Math.fma(mass, axisOffset, 2 * firstMoment * cosBeta), ownPart);
  }

  static void requirePositive(double value, String name) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " must be above 0, but is " + value);
    }
  }
}
