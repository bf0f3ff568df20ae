package lodeswing.core.suspension;

/**
 * One part of a bar.
 *
 * @param mass [kg]
 * @param centre distance of its centre of mass below the second axis [m]
 * @param transverseInertia own moment of inertia about a horizontal axis through its centre [kg
 *     m^2]
 * @param axialInertia own moment of inertia about the bar's axis [kg m^2]
 * @param length extent along the bar [m], for air drag
 * @param width extent across the bar [m], for air drag
 */
public record BarPart(
    double mass,
    double centre,
    double transverseInertia,
    double axialInertia,
    double length,
    double width) {}
