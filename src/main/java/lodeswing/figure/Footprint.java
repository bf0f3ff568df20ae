package lodeswing.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** What a thing covers on the page, in pixels from the upper left corner; convex. */
sealed interface Footprint {

  /** Centre, from the left. */
  double x();

  /** Centre, from above. */
  double y();

  /** Radius of the smallest circle about the centre that holds it. */
  double reach();

  /** The place on it that is nearest to a place, which is that place where it lies within. */
  double[] nearest(double px, double py);

  /** Whether a place lies on it. */
  default boolean holds(double px, double py) {
    double[] at = nearest(px, py);
    return Math.hypot(at[0] - px, at[1] - py) < 1e-9;
  }

  /** Whether a box shares an area with it. */
  boolean overlaps(LabelPlacing.Box box);

  /** The shortest line from it to a box that it does not overlap. */
  LabelPlacing.Line lineTo(LabelPlacing.Box box);

  /** Least distance to a box; 0 where they touch or share an area. */
  default double distance(LabelPlacing.Box box) {
    return overlaps(box) ? 0 : lineTo(box).length();
  }

  /**
   * How far from the centre, along a direction of length 1, the centre of a box must lie at least
   * to keep a gap: where a ray leaves the sum of the two shapes.
   */
  double away(double ux, double uy, double width, double height, double gap);

  /** The footprint of a magnet; {@code spot} is the radius of one without extent. */
  static Footprint of(Sheet sheet, PlateMagnet magnet, double spot) {
    double x = sheet.pixelX(magnet.x());
    double y = sheet.pixelY(magnet.y());
    if (magnet.outline() instanceof Outline.Oblong block) {
      // y points down on the page, which turns every angle round.
      return new Turned(
          x,
          y,
          block.width() / 2 * sheet.scale(),
          block.height() / 2 * sheet.scale(),
          Math.cos(block.turn()),
          -Math.sin(block.turn()));
    }
    return new Round(x, y, Math.max(spot, magnet.outline().reach() * sheet.scale()));
  }

  /** A disc. */
  record Round(double x, double y, double reach) implements Footprint {

    @Override
    public double[] nearest(double px, double py) {
      double length = Math.hypot(px - x, py - y);
      double share = length > reach ? reach / length : 1;
      return new double[] {x + share * (px - x), y + share * (py - y)};
    }

    @Override
    public boolean overlaps(LabelPlacing.Box box) {
      return box.distance(x, y) < reach;
    }

    @Override
    public LabelPlacing.Line lineTo(LabelPlacing.Box box) {
      double[] to = box.nearest(x, y);
      double[] from = nearest(to[0], to[1]);
      return new LabelPlacing.Line(from[0], from[1], to[0], to[1]);
    }

    @Override
    public double away(double ux, double uy, double width, double height, double gap) {
      double radius = reach + gap;
      double across = Math.abs(ux);
      double down = Math.abs(uy);
      // The sum is a rectangle with round corners: its right side, its lower side, or a corner.
      double side = (width / 2 + radius) / across;
      if (side * down <= height / 2) {
        return side;
      }
      double foot = (height / 2 + radius) / down;
      if (foot * across <= width / 2) {
        return foot;
      }
      double along = across * width / 2 + down * height / 2;
      double aside = across * height / 2 - down * width / 2;
      return along + Math.sqrt(Math.max(0, radius * radius - aside * aside));
    }
  }

  /**
   * A rectangle.
   *
   * @param halfWidth half of its first side
   * @param halfHeight half of its second side
   * @param cos first axis along x
   * @param sin first axis along y
   */
  record Turned(double x, double y, double halfWidth, double halfHeight, double cos, double sin)
      implements Footprint {

    @Override
    public double reach() {
      return Math.hypot(halfWidth, halfHeight);
    }

    @Override
    public double[] nearest(double px, double py) {
      double along = within((px - x) * cos + (py - y) * sin, halfWidth);
      double aside = within((py - y) * cos - (px - x) * sin, halfHeight);
      return new double[] {x + along * cos - aside * sin, y + along * sin + aside * cos};
    }

    private static double within(double value, double half) {
      return Math.max(-half, Math.min(half, value));
    }

    @Override
    public LabelPlacing.Line lineTo(LabelPlacing.Box box) {
      // Two convex polygons apart are nearest at a corner of one of them.
      List<LabelPlacing.Line> lines = new ArrayList<>();
      for (int corner = 0; corner < 4; corner++) {
        double right = (corner & 1) == 0 ? -1 : 1;
        double low = (corner & 2) == 0 ? -1 : 1;
        double px = box.middleX() + right * box.width() / 2;
        double py = box.middleY() + low * box.height() / 2;
        double[] at = nearest(px, py);
        lines.add(new LabelPlacing.Line(at[0], at[1], px, py));
        double along = right * halfWidth;
        double aside = low * halfHeight;
        double cx = x + along * cos - aside * sin;
        double cy = y + along * sin + aside * cos;
        double[] to = box.nearest(cx, cy);
        lines.add(new LabelPlacing.Line(cx, cy, to[0], to[1]));
      }
      return Collections.min(lines, Comparator.comparingDouble(LabelPlacing.Line::length));
    }

    /** By the four directions in which the two may be parted. */
    @Override
    public boolean overlaps(LabelPlacing.Box box) {
      double dx = box.middleX() - x;
      double dy = box.middleY() - y;
      return Math.abs(dx) < span(1, 0) + box.width() / 2
          && Math.abs(dy) < span(0, 1) + box.height() / 2
          && Math.abs(dx * cos + dy * sin) < halfWidth + box.span(cos, sin)
          && Math.abs(dy * cos - dx * sin) < halfHeight + box.span(-sin, cos);
    }

    /** Half of the extent along a direction. */
    private double span(double nx, double ny) {
      return halfWidth * Math.abs(nx * cos + ny * sin) + halfHeight * Math.abs(ny * cos - nx * sin);
    }

    @Override
    public double away(double ux, double uy, double width, double height, double gap) {
      double[][] normals = {{1, 0}, {0, 1}, {cos, sin}, {-sin, cos}};
      double least = Double.POSITIVE_INFINITY;
      for (double[] n : normals) {
        double along = Math.abs(n[0] * ux + n[1] * uy);
        double half = width / 2 * Math.abs(n[0]) + height / 2 * Math.abs(n[1]);
        least = Math.min(least, (span(n[0], n[1]) + half + gap) / along);
      }
      return least;
    }
  }
}
