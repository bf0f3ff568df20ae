package lodeswing.core.magnet;

/**
 * A uniformly magnetised sphere: outside exactly a point dipole, inside 2/3 of its remanence.
 *
 * <p>Source: J. D. Jackson, Classical Electrodynamics, 3rd ed. (1999), section 5.10, eqs 5.104 to
 * 5.106.
 *
 * @param radius its radius [m]
 * @param remanence Br of its material [T]
 */
public record Sphere(double radius, double remanence) implements Magnet {

  /**
   * Checks the dimensions.
   *
   * @throws IllegalArgumentException where one is not positive and finite
   */
  public Sphere {
    Dimension.requirePositive("radius", radius);
    Dimension.requirePositive("remanence", remanence);
  }

  @Override
  public double moment() {
    return remanence * volume() / MagneticConstant.MU_0;
  }

  @Override
  public double halfHeight() {
    return radius;
  }

  @Override
  public double planRadius() {
    return radius;
  }

  @Override
  public Sphere strengthened(double factor) {
    return new Sphere(radius, remanence * factor);
  }

  @Override
  public double volume() {
    return 4 * Math.PI / 3 * radius * radius * radius;
  }

  @Override
  public double potential(double x, double y, double z) {
    if (x * x + y * y + z * z < radius * radius) {
      return remanence / MagneticConstant.MU_0 * z / 3;
    }
    return PointDipole.potential(moment(), x, y, z);
  }

  @Override
  public void field(double x, double y, double z, double[] b) {
    if (x * x + y * y + z * z < radius * radius) {
      b[0] = 0;
      b[1] = 0;
      b[2] = 2 * remanence / 3;
      return;
    }
    PointDipole.field(moment(), x, y, z, b);
  }
}
