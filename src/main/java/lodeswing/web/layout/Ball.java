package lodeswing.web.layout;

/**
 * A sphere, or a dipole as a grain of a twentieth of a millimetre.
 *
 * @param x place of its centre [m]
 * @param y place of its centre [m]
 * @param z height of its centre [m]
 * @param radius its radius [m]
 */
record Ball(double x, double y, double z, double radius) implements Solid {

  /** What stands for a point. */
  static final double GRAIN = 0.05e-3;

  @Override
  public double bottom() {
    return z - radius;
  }

  @Override
  public double farthest() {
    return Math.hypot(x, y) + radius;
  }

  @Override
  public double widest() {
    return Math.max(Math.abs(x), Math.abs(y)) + radius;
  }

  @Override
  public double overlap(Solid other) {
    return other.overlapBall(this);
  }

  @Override
  public double overlapTube(Tube tube) {
    return tube.overlapBall(this);
  }

  @Override
  public double overlapBox(Box box) {
    return box.overlapBall(this);
  }

  @Override
  public double overlapBall(Ball ball) {
    double distance = Math.hypot(Math.hypot(ball.x - x, ball.y - y), ball.z - z);
    return radius + ball.radius - distance;
  }
}
