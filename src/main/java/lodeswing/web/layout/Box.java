package lodeswing.web.layout;

/**
 * A block magnet.
 *
 * @param x place of its axis [m]
 * @param y place of its axis [m]
 * @param bottom height of its lower face [m]
 * @param top height of its upper face [m]
 * @param halfLength half its length [m]
 * @param halfWidth half its width [m]
 * @param turn angle of its length from +x [rad]
 */
record Box(
    double x, double y, double bottom, double top, double halfLength, double halfWidth, double turn)
    implements Solid {

  @Override
  public double farthest() {
    return farthestCorner(0, 0);
  }

  @Override
  public double widest() {
    return Math.max(Math.abs(x) + halfExtent(1, 0), Math.abs(y) + halfExtent(0, 1));
  }

  @Override
  public double overlap(Solid other) {
    return other.overlapBox(this);
  }

  @Override
  public double overlapTube(Tube tube) {
    return tube.overlapBox(this);
  }

  /** Separating axes of two rectangles. */
  @Override
  public double overlapBox(Box box) {
    double plan = Double.POSITIVE_INFINITY;
    for (double angle : new double[] {turn, turn + Math.PI / 2, box.turn, box.turn + Math.PI / 2}) {
      double ux = Math.cos(angle);
      double uy = Math.sin(angle);
      double distance = Math.abs((box.x - x) * ux + (box.y - y) * uy);
      plan = Math.min(plan, halfExtent(ux, uy) + box.halfExtent(ux, uy) - distance);
    }
    return Solid.ofPrisms(Math.min(top, box.top) - Math.max(bottom, box.bottom), plan);
  }

  @Override
  public double overlapBall(Ball ball) {
    double plan = planDistance(ball.x(), ball.y());
    double axial = Math.max(bottom - ball.z(), ball.z() - top);
    double outside = Math.hypot(Math.max(plan, 0), Math.max(axial, 0));
    return ball.radius() - (outside > 0 ? outside : Math.max(plan, axial));
  }

  /** Signed distance of a place from the plan's edge [m], negative inside. */
  double planDistance(double px, double py) {
    double along = Math.abs(along(px, py)) - halfLength;
    double across = Math.abs(across(px, py)) - halfWidth;
    double outside = Math.hypot(Math.max(along, 0), Math.max(across, 0));
    return outside > 0 ? outside : Math.max(along, across);
  }

  /** Distance of a place from the plan's farthest corner [m]. */
  double farthestCorner(double px, double py) {
    return Math.hypot(Math.abs(along(px, py)) + halfLength, Math.abs(across(px, py)) + halfWidth);
  }

  private double along(double px, double py) {
    return (px - x) * Math.cos(turn) + (py - y) * Math.sin(turn);
  }

  private double across(double px, double py) {
    return (py - y) * Math.cos(turn) - (px - x) * Math.sin(turn);
  }

  private double halfExtent(double ux, double uy) {
    return halfLength * Math.abs(ux * Math.cos(turn) + uy * Math.sin(turn))
        + halfWidth * Math.abs(uy * Math.cos(turn) - ux * Math.sin(turn));
  }
}
