package lodeswing.core.chance;

import java.util.List;

/**
 * Anywhere in a polygon, each part as likely as any other of its size.
 *
 * @param corners x and y of each corner from the aimed place, in order along the border
 */
public record PolygonSpread(List<Corner> corners) implements Spread {

  /** A polygon fills at least this part of the rectangle about it. */
  public static final double LEAST_FILLED = 1e-3;

  /**
   * A corner.
   *
   * @param x from the aimed place
   * @param y from the aimed place
   */
  public record Corner(double x, double y) {}

  public PolygonSpread {
    corners = List.copyOf(corners);
    if (corners.size() < 3) {
      throw new IllegalArgumentException("a polygon has three corners or more");
    }
  }

  /** A place of the rectangle about it, where that lies in the polygon. */
  @Override
  public boolean place(double u, double v, double[] place) {
    Box box = box();
    place[0] = box.left + u * (box.right - box.left);
    place[1] = box.bottom + v * (box.top - box.bottom);
    return holds(place[0], place[1]);
  }

  /** Whether a place lies in it: a ray from there crosses the border an odd number of times. */
  boolean holds(double x, double y) {
    boolean inside = false;
    for (int i = 0; i < corners.size(); i++) {
      Corner a = corners.get(i);
      Corner b = corners.get((i + 1) % corners.size());
      if (a.y > y != b.y > y && x < a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x)) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** Its area, by the shoelace formula (Gauss). */
  public double area() {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Corner a = corners.get(i);
      Corner b = corners.get((i + 1) % corners.size());
      twice += a.x * b.y - b.x * a.y;
    }
    return Math.abs(twice) / 2;
  }

  /** Which part of the rectangle about it it fills; 0 where that is a line or a point. */
  public double filled() {
    Box box = box();
    double rectangle = (box.right - box.left) * (box.top - box.bottom);
    return rectangle > 0 ? area() / rectangle : 0;
  }

  /** Whether two sides that are no neighbours meet, so that an inside cannot be told. */
  public boolean crossed() {
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      for (int j = i + 2; j < n; j++) {
        boolean neighbours = i == 0 && j == n - 1;
        if (!neighbours && meet(i, j)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean meet(int i, int j) {
    Corner a = corners.get(i);
    Corner b = corners.get((i + 1) % corners.size());
    Corner c = corners.get(j);
    Corner d = corners.get((j + 1) % corners.size());
    return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
  }

  /** On which side of a line a place lies: the sign of twice the triangle's area. */
  private static double side(Corner a, Corner b, Corner c) {
    return Math.signum((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  }

  /** That of a square of its area. */
  @Override
  public double size() {
    return Math.sqrt(area() / 12);
  }

  @Override
  public double reach() {
    return corners.stream().mapToDouble(c -> Math.hypot(c.x, c.y)).max().orElseThrow();
  }

  private Box box() {
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    for (Corner corner : corners) {
      left = Math.min(left, corner.x);
      right = Math.max(right, corner.x);
      bottom = Math.min(bottom, corner.y);
      top = Math.max(top, corner.y);
    }
    return new Box(left, right, bottom, top);
  }

  private record Box(double left, double right, double bottom, double top) {}
}
