package lodeswing.analysis.glow;

/**
 * The paper as a raster of square pixels; the origin of the plane lies on a corner of pixels.
 *
 * @param pixel side of a pixel [m]
 * @param firstColumn columns from the origin to the left edge, negative to the left
 * @param firstRow rows from the origin to the lower edge, negative below
 * @param columns pixels across
 * @param rows pixels up
 */
public record GlowPaper(double pixel, int firstColumn, int firstRow, int columns, int rows) {

  /**
   * @throws IllegalArgumentException where there is no pixel, or one without a size
   */
  public GlowPaper {
    if (!(pixel > 0) || Double.isInfinite(pixel) || columns < 1 || rows < 1) {
      throw new IllegalArgumentException("A paper has pixels of a positive size.");
    }
  }

  /**
   * The smallest paper that covers a box.
   *
   * @param left edges of the box [m]
   * @param pixel side of a pixel [m]
   * @throws ArithmeticException where that are more pixels than can be counted
   */
  public static GlowPaper covering(
      double left, double bottom, double right, double top, double pixel) {
    int firstColumn = Math.toIntExact((long) Math.floor(left / pixel));
    int firstRow = Math.toIntExact((long) Math.floor(bottom / pixel));
    int columns = Math.toIntExact((long) Math.ceil(right / pixel) - firstColumn);
    int rows = Math.toIntExact((long) Math.ceil(top / pixel) - firstRow);
    return new GlowPaper(pixel, firstColumn, firstRow, columns, rows);
  }

  /** How many pixels it has. */
  public long pixels() {
    return (long) columns * rows;
  }

  /** Least x [m]. */
  public double left() {
    return firstColumn * pixel;
  }

  /** Least y [m]. */
  public double bottom() {
    return firstRow * pixel;
  }

  /** Extent in x [m]. */
  public double width() {
    return columns * pixel;
  }

  /** Extent in y [m]. */
  public double height() {
    return rows * pixel;
  }

  /** x of the middle of a column [m]. */
  public double x(int column) {
    return (firstColumn + column + 0.5) * pixel;
  }

  /** y of the middle of a row, the first one on top [m]. */
  public double y(int row) {
    return (firstRow + rows - row - 0.5) * pixel;
  }
}
