package lodeswing.analysis.field;

import java.util.OptionalInt;
import lodeswing.core.field.FieldGrid;
import lodeswing.core.field.Frame;
import lodeswing.core.field.SurfaceField;

/**
 * How often the field's part in the plane turns round along a closed way: the sum of the indices of
 * the zeros within (H. Poincare, J. Math. Pures Appl. 1 (1885) 167; H. Hopf, Math. Ann. 96 (1926)
 * 225).
 */
final class Turning {

  private static final int DEEPEST = 18;
  private static final double LARGEST_TURN = Math.PI / 3;

  private final SurfaceField field;
  private final double weakest;

  /**
   * Turning of a field.
   *
   * @param weakest field that still has a direction [T]
   */
  Turning(SurfaceField field, double weakest) {
    this.field = field;
    this.weakest = weakest;
  }

  /** Angle from the field at a place of the grid to that at another [rad]. */
  static double angle(FieldGrid grid, int from, int to) {
    return angle(
        grid.component(from, 0),
        grid.component(from, 1),
        grid.component(to, 0),
        grid.component(to, 1));
  }

  private static double angle(double ax, double ay, double bx, double by) {
    return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }

  /**
   * Turns along a window's edge, anticlockwise; nothing where the field vanishes on it.
   *
   * @param frame the window; the edge is begun from its places
   */
  OptionalInt alongEdge(Frame frame) {
    double right = frame.left() + frame.width();
    double top = frame.bottom() + frame.height();
    double[] x = {frame.left(), right, right, frame.left()};
    double[] y = {frame.bottom(), frame.bottom(), top, top};
    return along(x, y, Math.max(frame.columns(), frame.rows()));
  }

  /** Turns along a circle, anticlockwise. */
  OptionalInt about(double x, double y, double radius) {
    int corners = 24;
    double[] xs = new double[corners];
    double[] ys = new double[corners];
    for (int i = 0; i < corners; i++) {
      xs[i] = x + radius * StrictMath.cos(2 * Math.PI * i / corners);
      ys[i] = y + radius * StrictMath.sin(2 * Math.PI * i / corners);
    }
    return along(xs, ys, 2);
  }

  private OptionalInt along(double[] x, double[] y, int pieces) {
    double sum = 0;
    double[] from = new double[3];
    double[] to = new double[3];
    for (int side = 0; side < x.length; side++) {
      int next = (side + 1) % x.length;
      for (int i = 0; i < pieces; i++) {
        double a = (double) i / pieces;
        double b = (i + 1.0) / pieces;
        double ax = x[side] + a * (x[next] - x[side]);
        double ay = y[side] + a * (y[next] - y[side]);
        double bx = x[side] + b * (x[next] - x[side]);
        double by = y[side] + b * (y[next] - y[side]);
        field.at(ax, ay, from);
        field.at(bx, by, to);
        sum += turn(new double[] {ax, ay, bx, by}, from, to, 0);
      }
    }
    return Double.isNaN(sum)
        ? OptionalInt.empty()
        : OptionalInt.of((int) Math.round(sum / (2 * Math.PI)));
  }

  /** Turn along a straight piece, halved until it is small; NaN where the field vanishes on it. */
  private double turn(double[] ends, double[] from, double[] to, int depth) {
    if (!(Math.hypot(from[0], from[1]) > weakest && Math.hypot(to[0], to[1]) > weakest)) {
      return Double.NaN;
    }
    double middleX = (ends[0] + ends[2]) / 2;
    double middleY = (ends[1] + ends[3]) / 2;
    double[] middle = new double[3];
    field.at(middleX, middleY, middle);
    double first = angle(from[0], from[1], middle[0], middle[1]);
    double second = angle(middle[0], middle[1], to[0], to[1]);
    if (Math.abs(first) < LARGEST_TURN && Math.abs(second) < LARGEST_TURN) {
      return first + second;
    }
    if (depth == DEEPEST) {
      return Double.NaN;
    }
    return turn(new double[] {ends[0], ends[1], middleX, middleY}, from, middle, depth + 1)
        + turn(new double[] {middleX, middleY, ends[2], ends[3]}, middle, to, depth + 1);
  }
}
