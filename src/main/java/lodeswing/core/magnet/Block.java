package lodeswing.core.magnet;

/**
 * A rectangular block, uniformly magnetised along its height: two charged rectangles, exact
 * everywhere.
 *
 * <p>Sources: Z. J. Yang, T. H. Johansen, H. Bratsberg, G. Helgesen and A. T. Skjeltorp, Supercond.
 * Sci. Technol. 3 (1990) 591; E. P. Furlani, Permanent Magnet and Electromechanical Devices (2001),
 * section 4.2. The closed form is kept up to 12 half diagonals; beyond, where it cancels, the
 * volume is integrated by Gauss's rule.
 *
 * @param length its extent along x [m]
 * @param width its extent along y [m]
 * @param height its extent along z, the axis of its magnetisation [m]
 * @param remanence Br of its material [T]
 */
public record Block(double length, double width, double height, double remanence)
    implements Magnet {

  /**
   * Checks the dimensions.
   *
   * @throws IllegalArgumentException where one is not positive and finite
   */
  public Block {
    Dimension.requirePositive("length", length);
    Dimension.requirePositive("width", width);
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
    return Math.hypot(length, width) / 2;
  }

  @Override
  public Block strengthened(double factor) {
    return new Block(length, width, height, remanence * factor);
  }

  @Override
  public double volume() {
    return length * width * height;
  }

  @Override
  public double potential(double x, double y, double z) {
    double strength = remanence / (4 * Math.PI * MagneticConstant.MU_0);
    return strength * ChargedRectangles.potential(length / 2, width / 2, height / 2, x, y, z);
  }

  @Override
  public void field(double x, double y, double z, double[] b) {
    ChargedRectangles.field(length / 2, width / 2, height / 2, x, y, z, b);
    double strength = remanence / (4 * Math.PI);
    b[0] *= strength;
    b[1] *= strength;
    b[2] *= strength;
    boolean within =
        Math.abs(x) < length / 2 && Math.abs(y) < width / 2 && Math.abs(z) < height / 2;
    if (within) {
      b[2] += remanence;
    }
  }
}
