package lodeswing.core.magnet;

/**
 * A disc or rod, uniformly magnetised along its axis.
 *
 * <p>Field and potential are exact everywhere ({@code AxialDisc} names the sources); neither
 * demagnetisation nor saturation is in them.
 *
 * @param radius its radius [m]
 * @param height its extent along the axis [m]
 * @param remanence Br of its material [T]
 */
public record Disc(double radius, double height, double remanence) implements Magnet {

  /**
   * Checks the dimensions.
   *
   * @throws IllegalArgumentException where one is not positive and finite
   */
  public Disc {
    Dimension.requirePositive("radius", radius);
    Dimension.requirePositive("height", height);
    Dimension.requirePositive("remanence", remanence);
  }

  @Override
  public double moment() {
    return remanence * volume() / MagneticConstant.MU_0;
  }

  @Override
  public double halfHeight() {
    return height / 2;
  }

  @Override
  public double planRadius() {
    return radius;
  }

  @Override
  public Disc strengthened(double factor) {
    return new Disc(radius, height, remanence * factor);
  }

  @Override
  public double volume() {
    return Math.PI * radius * radius * height;
  }

  @Override
  public double potential(double x, double y, double z) {
    return remanence / MagneticConstant.MU_0 * AxialDisc.potential(radius, height / 2, x, y, z);
  }

  @Override
  public void field(double x, double y, double z, double[] b) {
    b[0] = 0;
    b[1] = 0;
    b[2] = 0;
    AxialDisc.addField(radius, height / 2, x, y, z, remanence, b);
  }
}
