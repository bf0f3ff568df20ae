package lodeswing.core.magnet;

/** Skeleton. */
public record Dipole(double moment) implements Magnet {

  @Override
  public double halfHeight() {
    return 0;
  }

  @Override
  public double planRadius() {
    return 0;
  }

  @Override
  public double volume() {
    return 0;
  }

  @Override
  public double potential(double x, double y, double z) {
    return 0;
  }

  @Override
  public void field(double x, double y, double z, double[] b) {}
}
