package lodeswing.core.magnet;

/** Skeleton. */
public record Disc(double radius, double height, double remanence) implements Magnet {
  @Override
  public double moment() {
    throw new IllegalStateException();
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
