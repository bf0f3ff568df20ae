package lodeswing.core.chance;

/**
 * Anywhere between two circles, each part as likely as any other of its size; on the circle where
 * both are one.
 *
 * @param inner radius of the inner circle, 0 or above
 * @param outer radius of the outer one, no less
 */
public record RingSpread(double inner, double outer) implements Spread {

  /** The area up to a radius grows with its square. */
  @Override
  public boolean place(double u, double v, double[] place) {
    double radius = Math.sqrt(inner * inner + u * (outer * outer - inner * inner));
    double angle = 2 * Math.PI * v;
    // Strict, so that every machine gets the same bits.
    place[0] = radius * StrictMath.cos(angle);
    place[1] = radius * StrictMath.sin(angle);
    return true;
  }

  @Override
  public double size() {
    return Math.sqrt((inner * inner + outer * outer) / 4);
  }

  @Override
  public double reach() {
    return outer;
  }
}
