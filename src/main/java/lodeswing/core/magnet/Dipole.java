package lodeswing.core.magnet;

/**
 * A point dipole. Its field and potential are not finite at the point itself.
 *
 * @param moment its magnetic moment [A m^2]
 */
public record Dipole(double moment) implements Magnet {

  /**
   * Checks the moment.
   *
   * @throws IllegalArgumentException where it is not positive and finite
   */
  public Dipole {
    Dimension.requirePositive("moment", moment);
  }

  @Override
  public double halfHeight() {
    return 0;
  }

  @Override
  public double planRadius() {
    return 0;
  }

  @Override
  public Dipole strengthened(double factor) {
    return new Dipole(moment * factor);
  }

  @Override
  public double volume() {
    return 0;
  }

  @Override
  public double potential(double x, double y, double z) {
    return PointDipole.potential(moment, x, y, z);
  }

  @Override
  public void field(double x, double y, double z, double[] b) {
    PointDipole.field(moment, x, y, z, b);
  }
}
