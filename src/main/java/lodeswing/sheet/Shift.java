package lodeswing.sheet;

import java.util.List;
import lodeswing.figure.Points;
import lodeswing.figure.Shape;

/**
 * From the plate's places to a page's.
 *
 * @param x added to x [m]
 * @param y added to y [m]
 */
record Shift(double x, double y) {

  List<Shape> all(List<Shape> shapes) {
    return shapes.stream().map(this::of).toList();
  }

  /**
   * @throws IllegalArgumentException where a shape is of a kind that plates have none of
   */
  private Shape of(Shape shape) {
    if (shape instanceof Shape.Polyline line) {
      return new Shape.Polyline(of(line.points()), line.stroke(), line.dashOffset());
    }
    if (shape instanceof Shape.Polygon area) {
      return new Shape.Polygon(of(area.border()), area.style());
    }
    if (shape instanceof Shape.Circle own) {
      return new Shape.Circle(own.x() + x, own.y() + y, own.radius(), own.style());
    }
    if (shape instanceof Shape.Ring own) {
      return new Shape.Ring(own.x() + x, own.y() + y, own.inner(), own.outer(), own.style());
    }
    if (shape instanceof Shape.Rectangle own) {
      return new Shape.Rectangle(
          own.x() + x, own.y() + y, own.width(), own.height(), own.turn(), own.style());
    }
    if (shape instanceof Shape.Text own) {
      return new Shape.Text(
          own.text(), own.x() + x, own.y() + y, own.size(), own.anchor(), own.tint(), own.halo());
    }
    throw new IllegalArgumentException("a plate is not drawn by " + shape.getClass());
  }

  private Points of(Points points) {
    double[] xs = new double[points.count()];
    double[] ys = new double[points.count()];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = points.x(i) + x;
      ys[i] = points.y(i) + y;
    }
    return new Points(xs, ys);
  }
}
