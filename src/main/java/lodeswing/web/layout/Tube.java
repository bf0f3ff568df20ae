package lodeswing.web.layout;

/**
 * A disc (inner radius 0) or ring.
 *
 * @param x place of its axis [m]
 * @param y place of its axis [m]
 * @param bottom height of its lower face [m]
 * @param top height of its upper face [m]
 * @param inner radius of its hole [m]
 * @param outer its radius [m]
 */
record Tube(double x, double y, double bottom, double top, double inner, double outer)
    implements Solid {

  @Override
  public double farthest() {
    return Math.hypot(x, y) + outer;
  }

  @Override
  public double widest() {
    return Math.max(Math.abs(x), Math.abs(y)) + outer;
  }

  @Override
  public double overlap(Solid other) {
    return other.overlapTube(this);
  }

  @Override
  public double overlapTube(Tube tube) {
    double distance = Math.hypot(x - tube.x, y - tube.y);
    double plan = outer + tube.outer - distance;
    if (inner > 0) {
      plan = Math.min(plan, distance + tube.outer - inner);
    }
    if (tube.inner > 0) {
      plan = Math.min(plan, distance + outer - tube.inner);
    }
    return Solid.ofPrisms(Math.min(top, tube.top) - Math.max(bottom, tube.bottom), plan);
  }

  @Override
  public double overlapBox(Box box) {
    double plan = outer - box.planDistance(x, y);
    if (inner > 0) {
      plan = Math.min(plan, box.farthestCorner(x, y) - inner);
    }
    return Solid.ofPrisms(Math.min(top, box.top()) - Math.max(bottom, box.bottom()), plan);
  }

  @Override
  public double overlapBall(Ball ball) {
    double rho = Math.hypot(ball.x() - x, ball.y() - y);
    double radial = Math.max(inner > 0 ? inner - rho : rho - outer, rho - outer);
    double axial = Math.max(bottom - ball.z(), ball.z() - top);
    double outside = Math.hypot(Math.max(radial, 0), Math.max(axial, 0));
    return ball.radius() - (outside > 0 ? outside : Math.max(radial, axial));
  }
}
