package lodeswing.figure;

/** Outline of a symbol, within a circle of diameter 1 about the origin, y upwards. */
public enum Mark {
  DISC,
  SQUARE(-0.42, -0.42, 0.42, -0.42, 0.42, 0.42, -0.42, 0.42),
  TRIANGLE(0, 0.5, -0.433, -0.25, 0.433, -0.25),
  DIAMOND(0, 0.5, -0.4, 0, 0, -0.5, 0.4, 0),
  PLUS(
      -0.14, 0.48, -0.14, 0.14, -0.48, 0.14, -0.48, -0.14, -0.14, -0.14, -0.14, -0.48, 0.14, -0.48,
      0.14, -0.14, 0.48, -0.14, 0.48, 0.14, 0.14, 0.14, 0.14, 0.48),
  HEXAGON(0.5, 0, 0.25, 0.433, -0.25, 0.433, -0.5, 0, -0.25, -0.433, 0.25, -0.433),
  INVERTED_TRIANGLE(0, -0.5, 0.433, 0.25, -0.433, 0.25),
  CROSS(
      -0.24, 0.438, 0, 0.198, 0.24, 0.438, 0.438, 0.24, 0.198, 0, 0.438, -0.24, 0.24, -0.438, 0,
      -0.198, -0.24, -0.438, -0.438, -0.24, -0.198, 0, -0.438, 0.24),
  STAR(
      0, 0.5, -0.118, 0.162, -0.476, 0.155, -0.19, -0.062, -0.294, -0.405, 0, -0.2, 0.294, -0.405,
      0.19, -0.062, 0.476, 0.155, 0.118, 0.162),
  UPRIGHT_BAR(-0.2, -0.46, 0.2, -0.46, 0.2, 0.46, -0.2, 0.46),
  LEVEL_BAR(-0.46, -0.2, 0.46, -0.2, 0.46, 0.2, -0.46, 0.2),
  PENNANT(0.45, 0, -0.4, 0.3, -0.2, 0, -0.4, -0.3);

  // Never handed out or written to.
  @SuppressWarnings("ImmutableEnumChecker")
  private final double[] corners;

  Mark(double... corners) {
    this.corners = corners;
  }

  /** Whether it is a circle of diameter 1 and not a polygon. */
  public boolean isDisc() {
    return corners.length == 0;
  }

  /** Its corners as x, y pairs, a fresh array; empty for a disc. */
  public double[] corners() {
    return corners.clone();
  }
}
