package lodeswing.core.window;

import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;

/**
 * The square of the plate that a map shows.
 *
 * @param x middle [plan unit]
 * @param y middle
 * @param halfWidth half of its side, positive
 */
public record BasinWindow(double x, double y, double halfWidth) {

  /**
   * Error of a step as a share of a pixel.
   *
   * <p>An error made at any time moves the release that would have led there by about as much, so
   * labels are as good at every zoom where this share is held. At 5e-4 the pixels whose label is
   * wrong are those within about that share of a boundary: a handful of 65,536.
   */
  private static final double PIXEL_SHARE = 5e-4;

  private static final double LOOSEST = 1e-5;
  private static final double TIGHTEST = 1e-14;

  private static final double LEAST_ABSOLUTE = 1e-15;

  /** A pixel holds at least this many steps of the last binary digit of its coordinates. */
  private static final double DIGITS_IN_PIXEL = 64;

  public BasinWindow {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a window's middle is finite");
    }
    if (!(halfWidth > 0 && halfWidth < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("a window's half width is positive, was " + halfWidth);
    }
  }

  /** Distance of its farthest corner from the origin: the largest swing released in it. */
  public double reach() {
    return Math.hypot(Math.abs(x) + halfWidth, Math.abs(y) + halfWidth);
  }

  /** Distance of its nearest place from the origin. */
  public double nearest() {
    return Math.hypot(Math.max(0, Math.abs(x) - halfWidth), Math.max(0, Math.abs(y) - halfWidth));
  }

  /** Whether pixels of a size can be told apart in its coordinates. */
  public boolean resolves(double pixel) {
    return pixel >= DIGITS_IN_PIXEL * Math.ulp(reach());
  }

  /**
   * The tolerance of a map: 5e-4 of a pixel over the window's reach, at most 1e-5, at least 1e-14.
   *
   * @param landscape the layout made ready
   * @param pixel side of a pixel [plan unit]
   */
  public Tolerance tolerance(Landscape landscape, double pixel) {
    double relative = Math.min(LOOSEST, Math.max(TIGHTEST, PIXEL_SHARE * pixel / reach()));
    return landscape.planScale().tolerance(relative, reach());
  }

  /** A tenfold tighter tolerance than that of a map. */
  public Tolerance tighter(Landscape landscape, double pixel) {
    Tolerance usual = tolerance(landscape, pixel);
    return new Tolerance(Math.max(LEAST_ABSOLUTE, 0.1 * usual.absolute()), 0.1 * usual.relative());
  }
}
