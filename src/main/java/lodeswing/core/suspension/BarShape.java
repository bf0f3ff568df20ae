package lodeswing.core.suspension;

/**
 * Shape of a part of a bar, its axis in line with the bar.
 *
 * <p>Volumes, and moments of inertia per mass about the shape's own centre. The rectangle {@link
 * #extent} by {@link #breadth} has the area of the silhouette that the part shows from the side, as
 * air drag needs it.
 *
 * <p>Source of the moments: W. C. Young, R. G. Budynas, Roark's Formulas for Stress and Strain, 7th
 * ed. (2002), Table A.1 for the plane sections, and the usual table of solids, e.g. Meriam &
 * Kraige, Engineering Mechanics: Dynamics, Table D/4 (place in the table from memory).
 */
public sealed interface BarShape {

  /** Volume of material [m^3]; 0 for a point mass, whose mass must be given. */
  double volume();

  /** Moment about the axis in line with the bar, per mass [m^2]. */
  double axialPerMass();

  /** Moment about an axis across the bar through the centre, per mass [m^2]. */
  double transversePerMass();

  /** Length along the bar of the silhouette's rectangle [m]. */
  double extent();

  /** Breadth across the bar of the silhouette's rectangle [m]. */
  double breadth();

  /**
   * Solid round rod or disc: axial r^2/2, transverse (3 r^2 + h^2)/12.
   *
   * @param diameter [m]
   * @param length along the bar [m]
   */
  record Cylinder(double diameter, double length) implements BarShape {

    public Cylinder {
      requirePositive(diameter, "diameter");
      requirePositive(length, "length");
    }

    @Override
    public double volume() {
      return Math.PI / 4 * diameter * diameter * length;
    }

    @Override
    public double axialPerMass() {
      return diameter * diameter / 8;
    }

    @Override
    public double transversePerMass() {
      return diameter * diameter / 16 + length * length / 12;
    }

    @Override
    public double extent() {
      return length;
    }

    @Override
    public double breadth() {
      return diameter;
    }
  }

  /**
   * Washer, tube or ring magnet: axial (R^2 + r^2)/2, transverse (3 (R^2 + r^2) + h^2)/12.
   *
   * @param outerDiameter [m]
   * @param innerDiameter [m], less than the outer one
   * @param length along the bar [m]
   */
  record HollowCylinder(double outerDiameter, double innerDiameter, double length)
      implements BarShape {

    public HollowCylinder {
      requirePositive(innerDiameter, "innerDiameter");
      requirePositive(outerDiameter - innerDiameter, "outerDiameter - innerDiameter");
      requirePositive(length, "length");
    }

    @Override
    public double volume() {
      return Math.PI
          / 4
          * (outerDiameter - innerDiameter)
          * (outerDiameter + innerDiameter)
          * length;
    }

    @Override
    public double axialPerMass() {
      return (outerDiameter * outerDiameter + innerDiameter * innerDiameter) / 8;
    }

    @Override
    public double transversePerMass() {
      return axialPerMass() / 2 + length * length / 12;
    }

    @Override
    public double extent() {
      return length;
    }

    @Override
    public double breadth() {
      return outerDiameter;
    }
  }

  /**
   * Hexagonal prism with a round bore. A full hexagon has the polar radius of gyration squared 5
   * s^2/36, s across flats (I = 5 sqrt(3)/144 s^4 = 0.06 s^4 about any diameter; Machinery's
   * Handbook, properties of sections); the bore is taken away by its share of the area. Chamfers
   * and threads are left out.
   *
   * @param acrossFlats width over two opposite flats [m]
   * @param bore diameter of the hole [m], 0 for a bolt head, less than acrossFlats
   * @param thickness along the bar [m]
   */
  record HexNut(double acrossFlats, double bore, double thickness) implements BarShape {

    public HexNut {
      requirePositive(acrossFlats, "acrossFlats");
      requireNotNegative(bore, "bore");
      requirePositive(acrossFlats - bore, "acrossFlats - bore");
      requirePositive(thickness, "thickness");
    }

    private double hexagonArea() {
      return Math.sqrt(3) / 2 * acrossFlats * acrossFlats;
    }

    private double boreArea() {
      return Math.PI / 4 * bore * bore;
    }

    @Override
    public double volume() {
      return (hexagonArea() - boreArea()) * thickness;
    }

    @Override
    public double axialPerMass() {
      double hexagon = hexagonArea() * 5 * acrossFlats * acrossFlats / 36;
      double hole = boreArea() * bore * bore / 8;
      return (hexagon - hole) / (hexagonArea() - boreArea());
    }

    @Override
    public double transversePerMass() {
      return axialPerMass() / 2 + thickness * thickness / 12;
    }

    @Override
    public double extent() {
      return thickness;
    }

    /** Mean over all directions: perimeter/pi of a convex outline (Cauchy 1832). */
    @Override
    public double breadth() {
      return 2 * Math.sqrt(3) * acrossFlats / Math.PI;
    }
  }

  /**
   * Rectangular block: axial (l^2 + w^2)/12; its two transverse moments (w^2 + h^2)/12 and (l^2 +
   * h^2)/12 enter by their mean, since the model's bar is the same in every direction.
   *
   * @param length across the bar [m]
   * @param width across the bar [m]
   * @param height along the bar [m]
   */
  record Cuboid(double length, double width, double height) implements BarShape {

    public Cuboid {
      requirePositive(length, "length");
      requirePositive(width, "width");
      requirePositive(height, "height");
    }

    @Override
    public double volume() {
      return length * width * height;
    }

    @Override
    public double axialPerMass() {
      return (length * length + width * width) / 12;
    }

    @Override
    public double transversePerMass() {
      return axialPerMass() / 2 + height * height / 12;
    }

    @Override
    public double extent() {
      return height;
    }

    /** Mean over all directions: perimeter/pi of a convex outline (Cauchy 1832). */
    @Override
    public double breadth() {
      return 2 * (length + width) / Math.PI;
    }
  }

  /**
   * Solid sphere: 2 r^2/5 about every diameter.
   *
   * @param diameter [m]
   */
  record Ball(double diameter) implements BarShape {

    public Ball {
      requirePositive(diameter, "diameter");
    }

    @Override
    public double volume() {
      return Math.PI / 6 * diameter * diameter * diameter;
    }

    @Override
    public double axialPerMass() {
      return diameter * diameter / 10;
    }

    @Override
    public double transversePerMass() {
      return axialPerMass();
    }

    /** Less than the diameter, so that the rectangle has the disc's area. */
    @Override
    public double extent() {
      return Math.PI / 4 * diameter;
    }

    @Override
    public double breadth() {
      return diameter;
    }
  }

  /** A mass without size. */
  record Point() implements BarShape {

    @Override
    public double volume() {
      return 0;
    }

    @Override
    public double axialPerMass() {
      return 0;
    }

    @Override
    public double transversePerMass() {
      return 0;
    }

    @Override
    public double extent() {
      return 0;
    }

    @Override
    public double breadth() {
      return 0;
    }
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
}
