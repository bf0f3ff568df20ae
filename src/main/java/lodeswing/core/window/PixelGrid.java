package lodeswing.core.window;

import lodeswing.core.outcome.ReleaseSource;

/**
 * A rectangle of pixels on the plate; each stands for a release at rest from its centre.
 *
 * <p>Column i of row j has its centre at x = middleX + (firstColumn + i + 1/2 - half) pixel and y =
 * middleY + (half - firstRow - j - 1/2) pixel: rows run downwards from the top. {@code middleX} and
 * {@code middleY} are those of the window, whatever part of it is shown, so that two grids of one
 * pixel size have bit-equal centres where they overlap, and a grid about the origin holds with each
 * centre the exact mirror images of it.
 *
 * @param middleX middle of the window [plan unit]
 * @param middleY middle of the window
 * @param pixel side of a pixel, positive
 * @param half pixels between the window's middle and its edges
 * @param firstColumn columns between the window's left edge and this grid; halves where it is wider
 *     than the window
 * @param firstRow rows between the window's upper edge and this grid
 * @param width columns
 * @param height rows
 */
public record PixelGrid(
    double middleX,
    double middleY,
    double pixel,
    double half,
    double firstColumn,
    double firstRow,
    int width,
    int height)
    implements ReleaseSource {

  public PixelGrid {
    if (width < 1 || height < 1 || !(pixel > 0)) {
      throw new IllegalArgumentException("a grid has pixels");
    }
  }

  /**
   * A tile: at zoom 0 one holds the window, each further zoom cuts every tile into four.
   *
   * @param window what zoom 0 shows
   * @param zoom from 0
   * @param x tiles to the left of it
   * @param y tiles above it
   * @param size pixels along a side
   */
  public static PixelGrid tile(BasinWindow window, int zoom, long x, long y, int size) {
    double pixel = Math.scalb(2 * window.halfWidth() / size, -zoom);
    return new PixelGrid(
        window.x(),
        window.y(),
        pixel,
        Math.scalb(0.5 * size, zoom),
        (double) x * size,
        (double) y * size,
        size,
        size);
  }

  /** The whole window in a picture; along its longer side it shows more than the window. */
  public static PixelGrid whole(BasinWindow window, int width, int height) {
    int side = Math.min(width, height);
    return new PixelGrid(
        window.x(),
        window.y(),
        2 * window.halfWidth() / side,
        0.5 * side,
        0.5 * (side - width),
        0.5 * (side - height),
        width,
        height);
  }

  /** x of the window's left edge. */
  public double left() {
    return middleX - half * pixel;
  }

  /** y of the window's upper edge. */
  public double top() {
    return middleY + half * pixel;
  }

  /** x of a column's centres. */
  public double x(int column) {
    return middleX + (firstColumn + column + 0.5 - half) * pixel;
  }

  /** y of a row's centres. */
  public double y(int row) {
    return middleY + (half - firstRow - row - 0.5) * pixel;
  }

  /** How many pixels there are. */
  public int count() {
    return Math.multiplyExact(width, height);
  }

  @Override
  public void write(int from, int to, double[] out) {
    int k = 0;
    for (int i = from; i < to; i++) {
      out[k++] = x(i % width);
      out[k++] = y(i / width);
      out[k++] = 0;
      out[k++] = 0;
    }
  }
}
