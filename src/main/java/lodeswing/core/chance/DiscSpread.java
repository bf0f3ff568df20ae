package lodeswing.core.chance;

/**
 * Anywhere in a disc, each part of it as likely as any other of its size.
 *
 * @param radius its radius, 0 or above
 */
public record DiscSpread(double radius) implements Spread {

  @Override
  public boolean place(double u, double v, double[] place) {
    return new RingSpread(0, radius).place(u, v, place);
  }

  /** Half the radius: the standard deviation along an axis. */
  @Override
  public double size() {
    return radius / 2;
  }

  @Override
  public double reach() {
    return radius;
  }
}
