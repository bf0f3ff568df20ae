package lodeswing.core.suspension;

/**
 * A rigid body on two crossed horizontal axes: the upper one along x (angle alpha, swing in y), the
 * second one a distance below it (angle beta, swing in x).
 *
 * @param axisOffset distance d from the upper to the second axis [m], 0 for a cord
 * @param mass M, all parts [kg]
 * @param firstMoment S1 = sum m s about the second axis, s along the bar [kg m]
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
    double bobArm) {}
