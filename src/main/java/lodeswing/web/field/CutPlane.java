package lodeswing.web.field;

/**
 * An upright plane through a place of the plan.
 *
 * @param x0 the place [m]
 * @param y0 the place [m]
 * @param cos of the angle from the x axis
 * @param sin of it
 */
record CutPlane(double x0, double y0, double cos, double sin) {

  private static final double MILLI = 1e-3;

  static CutPlane of(FieldView view, double turnDeg) {
    double angle = StrictMath.toRadians(turnDeg);
    return new CutPlane(
        MILLI * view.x(), MILLI * view.y(), StrictMath.cos(angle), StrictMath.sin(angle));
  }

  double x(double s) {
    return x0 + cos * s;
  }

  double y(double s) {
    return y0 + sin * s;
  }

  /** Where a place lies along it [m]. */
  double along(double x, double y) {
    return cos * (x - x0) + sin * (y - y0);
  }

  /** How far a place lies beside it [m]. */
  double beside(double x, double y) {
    return cos * (y - y0) - sin * (x - x0);
  }

  /** The level component within it. */
  double part(double[] b) {
    return cos * b[0] + sin * b[1];
  }

  /** The component out of it. */
  double across(double[] b) {
    return cos * b[1] - sin * b[0];
  }
}
