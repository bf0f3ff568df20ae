package lodeswing.core.suspension;

/**
 * One part of a bar.
 *
 * @param mass [kg], above 0
 * @param centre distance of its centre of mass below the second axis [m]; negative above it
 * @param transverseInertia own moment of inertia about a horizontal axis through its centre [kg
 *     m^2]
 * @param axialInertia own moment of inertia about the bar's axis [kg m^2]
 * @param length extent along the bar [m], for air drag: of the rectangle with the part's silhouette
 * @param width extent across the bar [m], for air drag
 */
public record BarPart(
    double mass,
    double centre,
    double transverseInertia,
    double axialInertia,
    double length,
    double width) {

  public BarPart {
    if (!(mass > 0 && mass < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("mass must be above 0 kg, but is " + mass);
    }
    if (!Double.isFinite(centre)) {
      throw new IllegalArgumentException("centre must be a number, but is " + centre);
    }
    if (!(transverseInertia >= 0 && axialInertia >= 0 && length >= 0 && width >= 0)) {
      throw new IllegalArgumentException("moments of inertia and sizes must be at least 0");
    }
  }

  /** The same part, lower by a length [m]. */
  BarPart lowered(double by) {
    return new BarPart(mass, centre + by, transverseInertia, axialInertia, length, width);
  }

  /**
   * A part of a weighed mass.
   *
   * @param shape its shape, axis in line with the bar
   * @param mass [kg]
   * @param centre distance of its centre below the second axis [m]
   */
  public static BarPart weighed(BarShape shape, double mass, double centre) {
    return new BarPart(
        mass,
        centre,
        mass * shape.transversePerMass(),
        mass * shape.axialPerMass(),
        shape.extent(),
        shape.breadth());
  }

  /**
   * A part whose mass follows from its material.
   *
   * @param shape its shape, not a point
   * @param material what it is made of
   * @param centre distance of its centre below the second axis [m]
   */
  public static BarPart of(BarShape shape, Material material, double centre) {
    return weighed(shape, material.massOf(shape.volume()), centre);
  }
}
