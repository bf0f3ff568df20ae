package lodeswing.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lodeswing.figure.ViewBox;

/**
 * How a part of the plane is cut into windows of one size that fit on pages in true scale.
 * Neighbours show a strip of the same.
 *
 * @param format the paper as it lies
 * @param columns windows side by side
 * @param rows windows one above the other
 * @param left left edge of the first column
 * @param top upper edge of the first row
 * @param width of each window
 * @param height of each window
 */
record Tiling(
    Paper.Format format,
    int columns,
    int rows,
    double left,
    double top,
    double width,
    double height) {

  /** Width of the strip that neighbours share. */
  static final double OVERLAP = 10 * Ink.MM;

  /** What is left free at the paper's edges, where printers cannot print. */
  static final double MARGIN = 10 * Ink.MM;

  static final double HEAD = 15 * Ink.MM;
  static final double FOOT = 16 * Ink.MM;

  /** Strip at the left for the upright check line. */
  static final double SIDE = 8 * Ink.MM;

  /** The tiling of fewest pages; upright paper where both ways take as many. */
  static Tiling of(ViewBox bounds, Paper paper, Optional<Boolean> landscape) {
    List<Tiling> ways = new ArrayList<>();
    if (!landscape.orElse(false)) {
      ways.add(lying(bounds, paper.lying(false)));
    }
    if (landscape.orElse(true)) {
      ways.add(lying(bounds, paper.lying(true)));
    }
    return ways.stream().min(Comparator.comparingLong(Tiling::count)).orElseThrow();
  }

  private static Tiling lying(ViewBox bounds, Paper.Format format) {
    double width = format.width() - 2 * MARGIN - SIDE;
    double height = format.height() - 2 * MARGIN - HEAD - FOOT;
    int columns = windows(bounds.width(), width);
    int rows = windows(bounds.height(), height);
    double across = columns * (width - OVERLAP) + OVERLAP;
    double down = rows * (height - OVERLAP) + OVERLAP;
    return new Tiling(
        format,
        columns,
        rows,
        bounds.left() + (bounds.width() - across) / 2,
        bounds.top() - (bounds.height() - down) / 2,
        width,
        height);
  }

  private static int windows(double extent, double window) {
    double more = (extent - OVERLAP) / (window - OVERLAP);
    return Math.max(1, (int) Math.ceil(more - 1e-9));
  }

  /** How many windows there are. */
  long count() {
    return (long) columns * rows;
  }

  /**
   * The part that a window shows.
   *
   * @param column from the left
   * @param row from the top
   */
  ViewBox window(int column, int row) {
    return new ViewBox(
        left + column * (width - OVERLAP), top - row * (height - OVERLAP) - height, width, height);
  }

  /** Middle of the strip to the left of a column. */
  double seamX(int column) {
    return left + column * (width - OVERLAP) + OVERLAP / 2;
  }

  /** Middle of the strip above a row. */
  double seamY(int row) {
    return top - row * (height - OVERLAP) - OVERLAP / 2;
  }

  /** Place of a window's left edge on its page. */
  static double pageLeft() {
    return MARGIN + SIDE;
  }

  /** Place of a window's lower edge on its page. */
  static double pageBottom() {
    return MARGIN + FOOT;
  }
}
