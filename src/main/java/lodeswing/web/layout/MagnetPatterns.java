package lodeswing.web.layout;

import java.util.ArrayList;
import java.util.List;
import lodeswing.web.body.Body;

/**
 * Where the magnets of a pattern stand, in millimetres, rounded to a millionth of a millimetre so
 * that the last bit of a cosine is no part of any layout.
 */
final class MagnetPatterns {
  private static final double GRAINS_PER_MM = 1e6;

  private MagnetPatterns() {}

  /** A place in the plate [mm]. */
  record Place(double x, double y) {}

  /** How many magnets a pattern makes. */
  static int count(Body pattern) {
    return switch (pattern.text("kind")) {
      case "grid" -> whole(pattern, "columns") * whole(pattern, "rows");
      case "hex" -> 1 + 3 * whole(pattern, "rings") * (whole(pattern, "rings") + 1);
      default -> whole(pattern, "count");
    };
  }

  /** The places in the order of labels and poles. */
  static List<Place> places(Body pattern) {
    return switch (pattern.text("kind")) {
      case "ring" -> ring(pattern);
      case "grid" -> grid(pattern);
      case "hex" -> hex(pattern);
      default -> line(pattern);
    };
  }

  private static int whole(Body pattern, String member) {
    return (int) pattern.number(member);
  }

  private static List<Place> ring(Body pattern) {
    var places = new ArrayList<Place>();
    int count = whole(pattern, "count");
    double radius = pattern.number("radiusMm");
    for (int i = 0; i < count; i++) {
      double angle = Math.toRadians(pattern.number("startDeg") + 360.0 * i / count);
      places.add(place(pattern, radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
    }
    return places;
  }

  private static List<Place> grid(Body pattern) {
    var places = new ArrayList<Place>();
    int columns = whole(pattern, "columns");
    int rows = whole(pattern, "rows");
    double spacing = pattern.number("spacingMm");
    double rowSpacing = pattern.findNumber("rowSpacingMm").orElse(spacing);
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        places.add(
            turned(
                pattern,
                (column - (columns - 1) / 2.0) * spacing,
                (row - (rows - 1) / 2.0) * rowSpacing));
      }
    }
    return places;
  }

  /** A centre, then ring by ring anticlockwise from +x: six sides of as many steps as the ring. */
  private static List<Place> hex(Body pattern) {
    var places = new ArrayList<Place>();
    double spacing = pattern.number("spacingMm");
    double rise = spacing * Math.sqrt(3) / 2;
    places.add(turned(pattern, 0, 0));
    double[][] steps = {{-0.5, 1}, {-1, 0}, {-0.5, -1}, {0.5, -1}, {1, 0}, {0.5, 1}};
    for (int ring = 1; ring <= whole(pattern, "rings"); ring++) {
      double x = ring;
      double y = 0;
      for (double[] step : steps) {
        for (int i = 0; i < ring; i++) {
          places.add(turned(pattern, x * spacing, y * rise));
          x += step[0];
          y += step[1];
        }
      }
    }
    return places;
  }

  private static List<Place> line(Body pattern) {
    var places = new ArrayList<Place>();
    int count = whole(pattern, "count");
    double spanX = pattern.number("toX") - pattern.number("x");
    double spanY = pattern.number("toY") - pattern.number("y");
    for (int i = 0; i < count; i++) {
      places.add(place(pattern, spanX * i / (count - 1), spanY * i / (count - 1)));
    }
    return places;
  }

  private static Place turned(Body pattern, double x, double y) {
    double angle = Math.toRadians(pattern.number("turnDeg"));
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    return place(pattern, cos * x - sin * y, sin * x + cos * y);
  }

  private static Place place(Body pattern, double dx, double dy) {
    return new Place(rounded(pattern.number("x") + dx), rounded(pattern.number("y") + dy));
  }

  private static double rounded(double millimetres) {
    return Math.rint(millimetres * GRAINS_PER_MM) / GRAINS_PER_MM + 0.0;
  }
}
