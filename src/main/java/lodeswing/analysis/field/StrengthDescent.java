package lodeswing.analysis.field;

import java.util.Optional;
import lodeswing.core.field.Frame;
import lodeswing.core.field.SurfaceField;

/**
 * Goes down to where the square of a strength is least, by Newton's method with central differences
 * of its exact slopes; no step is longer than a cell, none leads up.
 */
final class StrengthDescent {

  private static final int MOST_STEPS = 40;
  private static final double ZERO = 1e-8;

  private final SurfaceField field;
  private final boolean inPlane;
  private final double cell;
  private final double[] b = new double[3];
  private final double[] slopes = new double[6];

  StrengthDescent(SurfaceField field, boolean inPlane, Frame frame) {
    this.field = field;
    this.inPlane = inPlane;
    this.cell = Math.max(frame.stepX(), frame.stepY());
  }

  /**
   * The least place near one; nothing where it lies farther than two cells.
   *
   * @param scale greatest strength anywhere [T]
   */
  Optional<WeakSpot> from(double startX, double startY, double scale) {
    double x = startX;
    double y = startY;
    double value = square(x, y);
    double probe = 1e-3 * cell;
    for (int n = 0; n < MOST_STEPS; n++) {
      double[] slope = slope(x, y);
      double[] east = slope(x + probe, y);
      double[] west = slope(x - probe, y);
      double[] north = slope(x, y + probe);
      double[] south = slope(x, y - probe);
      double xx = (east[0] - west[0]) / (2 * probe);
      double yy = (north[1] - south[1]) / (2 * probe);
      double xy = (east[1] - west[1] + north[0] - south[0]) / (4 * probe);
      double det = xx * yy - xy * xy;
      boolean bowl = det > 0 && xx > 0;
      double dx = bowl ? (-yy * slope[0] + xy * slope[1]) / det : -slope[0];
      double dy = bowl ? (xy * slope[0] - xx * slope[1]) / det : -slope[1];
      double length = Math.hypot(dx, dy);
      if (!(length > 0)) {
        break;
      }
      double share = (bowl ? Math.min(1, cell / length) : cell / length);
      double next = square(x + share * dx, y + share * dy);
      while (!(next < value) && share * length > 1e-12 * cell) {
        share /= 2;
        next = square(x + share * dx, y + share * dy);
      }
      if (!(next < value)) {
        break;
      }
      x += share * dx;
      y += share * dy;
      value = next;
    }
    if (!(Math.hypot(x - startX, y - startY) < 2 * cell)) {
      return Optional.empty();
    }
    field.at(x, y, b);
    double strength = Math.sqrt(value);
    // Down from a square, a zero is met to the root of the rounding only.
    double shown = strength < ZERO * scale ? 0 : strength;
    return Optional.of(
        new WeakSpot(SpotKind.MINIMUM, x, y, field.height(x, y), shown, b[2], Optional.empty()));
  }

  private double square(double x, double y) {
    field.at(x, y, b);
    double upright = inPlane ? 0 : b[2];
    return b[0] * b[0] + b[1] * b[1] + upright * upright;
  }

  private double[] slope(double x, double y) {
    field.at(x, y, b);
    field.slopes(x, y, slopes);
    double upright = inPlane ? 0 : b[2];
    return new double[] {
      2 * (b[0] * slopes[0] + b[1] * slopes[1] + upright * slopes[2]),
      2 * (b[0] * slopes[3] + b[1] * slopes[4] + upright * slopes[5])
    };
  }
}
