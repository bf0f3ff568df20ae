package lodeswing.core.field;

/**
 * A grid of places in the plan, its outermost ones on the window's edges.
 *
 * @param left least x [m]
 * @param bottom least y [m]
 * @param width extent in x [m]
 * @param height extent in y [m]
 * @param columns places in a row, two at least
 * @param rows rows, two at least
 */
public record Frame(
    double left, double bottom, double width, double height, int columns, int rows) {

  /**
   * Checks the extents.
   *
   * @throws IllegalArgumentException where one is not positive, or a side has fewer than two places
   */
  public Frame {
    if (!(width > 0 && height > 0) || columns < 2 || rows < 2) {
      throw new IllegalArgumentException("A frame has an extent and two places a side at least.");
    }
  }

  /** A square of so many places a side about a middle. */
  public static Frame square(double x, double y, double halfWidth, int side) {
    return new Frame(x - halfWidth, y - halfWidth, 2 * halfWidth, 2 * halfWidth, side, side);
  }

  /** x of a column, from the left. */
  public double x(int column) {
    return left + width * column / (columns - 1);
  }

  /** y of a row, from below. */
  public double y(int row) {
    return bottom + height * row / (rows - 1);
  }

  /** From a column to the next [m]. */
  public double stepX() {
    return width / (columns - 1);
  }

  /** From a row to the next [m]. */
  public double stepY() {
    return height / (rows - 1);
  }

  /** Number of places. */
  public int count() {
    return columns * rows;
  }

  /** Whether a place lies in the window, its edges included. */
  public boolean holds(double x, double y) {
    return x >= left && x <= left + width && y >= bottom && y <= bottom + height;
  }

  /** The same window with another number of places a side. */
  public Frame with(int newColumns, int newRows) {
    return new Frame(left, bottom, width, height, newColumns, newRows);
  }

  /** Index of the place that is nearest to one in the window. */
  public int nearest(double x, double y) {
    int column = (int) Math.rint((x - left) / stepX());
    int row = (int) Math.rint((y - bottom) / stepY());
    return Math.max(0, Math.min(rows - 1, row)) * columns
        + Math.max(0, Math.min(columns - 1, column));
  }
}
