package lodeswing.core.magnet;

/**
 * A ring, uniformly magnetised along its axis: a disc less a disc, exact everywhere, its hole
 * included.
 *
 * @param innerRadius radius of the hole [m], below the outer one
 * @param outerRadius its outer radius [m]
 * @param height its extent along the axis [m]
 * @param remanence Br of its material [T]
 */
public record Ring(double innerRadius, double outerRadius, double height, double remanence)
    implements Magnet {

  /**
   * Checks the dimensions.
   *
   * @throws IllegalArgumentException where one is not positive and finite, or the hole is not
   *     smaller than the ring
   */
  public Ring {
    Dimension.requirePositive("innerRadius", innerRadius);
    Dimension.requirePositive("outerRadius", outerRadius);
    Dimension.requirePositive("height", height);
    Dimension.requirePositive("remanence", remanence);
    if (innerRadius >= outerRadius) {
      throw new IllegalArgumentException(
          "innerRadius " + innerRadius + " must be below outerRadius " + outerRadius);
    }
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
    return outerRadius;
  }

  @Override
  public Ring strengthened(double factor) {
    return new Ring(innerRadius, outerRadius, height, remanence * factor);
  }

  @Override
  public double volume() {
    return Math.PI * (outerRadius - innerRadius) * (outerRadius + innerRadius) * height;
  }

  @Override
  public double potential(double x, double y, double z) {
    double half = height / 2;
    return remanence
        / MagneticConstant.MU_0
        * (AxialDisc.potential(outerRadius, half, x, y, z)
            - AxialDisc.potential(innerRadius, half, x, y, z));
  }

  @Override
  public void field(double x, double y, double z, double[] b) {
    b[0] = 0;
    b[1] = 0;
    b[2] = 0;
    AxialDisc.addField(outerRadius, height / 2, x, y, z, remanence, b);
    AxialDisc.addField(innerRadius, height / 2, x, y, z, -remanence, b);
  }
}
