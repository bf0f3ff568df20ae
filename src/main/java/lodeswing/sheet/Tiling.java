package lodeswing.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleToLongFunction;
import java.util.stream.IntStream;
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

  private static final double STEP = Ink.MM;

  /** What is left free at the paper's edges, where printers cannot print. */
  static final double MARGIN = 10 * Ink.MM;

  static final double HEAD = 15 * Ink.MM;
  static final double FOOT = 16 * Ink.MM;

  /** Strip at the left for the upright check line. */
  static final double SIDE = 8 * Ink.MM;

  /** The tiling of fewest pages; upright paper where both ways take as many. */
  static Tiling of(PlacingPlan plan, Paper paper, Optional<Boolean> landscape) {
    ViewBox bounds = PlateDrawing.bounds(plan);
    List<Tiling> ways = new ArrayList<>();
    if (!landscape.orElse(false)) {
      ways.add(lying(bounds, paper.lying(false)));
    }
    if (landscape.orElse(true)) {
      ways.add(lying(bounds, paper.lying(true)));
    }
    Tiling fewest = ways.stream().min(Comparator.comparingLong(Tiling::count)).orElseThrow();
    return fewest.sparing(plan.magnets(), bounds);
  }

  /** Moved within the room there is, so that the fewest magnets are cut by a page's edge. */
  private Tiling sparing(List<SheetMagnet> magnets, ViewBox bounds) {
    double across = columns * (width - OVERLAP) + OVERLAP - bounds.width();
    double down = rows * (height - OVERLAP) + OVERLAP - bounds.height();
    double x = best(across / 2, shift -> cut(magnets, true, shift));
    double y = best(down / 2, shift -> cut(magnets, false, shift));
    return new Tiling(format, columns, rows, left + x, top + y, width, height);
  }

  /** The least shift of either way that cuts the fewest. */
  private static double best(double most, DoubleToLongFunction cut) {
    double best = 0;
    long fewest = cut.applyAsLong(0);
    for (double shift = STEP; shift <= most && fewest > 0; shift += STEP) {
      for (double tried : new double[] {shift, -shift}) {
        long found = cut.applyAsLong(tried);
        if (found < fewest) {
          fewest = found;
          best = tried;
        }
      }
    }
    return best;
  }

  /** How many magnets lie over the middle of a shared strip, the whole moved by a shift. */
  private long cut(List<SheetMagnet> magnets, boolean across, double shift) {
    return magnets.stream()
        .filter(
            one -> {
              double at = across ? one.magnet().x() : one.magnet().y();
              double reach = one.magnet().outline().reach() + STEP;
              return IntStream.range(1, across ? columns : rows)
                  .mapToDouble(seam -> shift + (across ? seamX(seam) : seamY(seam)))
                  .anyMatch(seam -> Math.abs(at - seam) < reach);
            })
        .count();
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

  /** The part of a window up to the middles of the strips that it shares. */
  ViewBox own(int column, int row) {
    ViewBox window = window(column, row);
    double from = column == 0 ? window.left() : seamX(column);
    double right = column == columns - 1 ? window.right() : seamX(column + 1);
    double upper = row == 0 ? window.top() : seamY(row);
    double bottom = row == rows - 1 ? window.bottom() : seamY(row + 1);
    return new ViewBox(from, bottom, right - from, upper - bottom);
  }

  /** Middle of the strip to the left of a column. */
  double seamX(int column) {
    return left + column * (width - OVERLAP) + OVERLAP / 2;
  }

  /** Middle of the strip above a row. */
  double seamY(int row) {
    return top - row * (height - OVERLAP) - OVERLAP / 2;
  }

  /** The lines at which windows meet. */
  List<Crowd.Box> seams() {
    List<Crowd.Box> seams = new ArrayList<>();
    double across = columns * (width - OVERLAP) + OVERLAP;
    double down = rows * (height - OVERLAP) + OVERLAP;
    for (int column = 1; column < columns; column++) {
      seams.add(new Crowd.Box(seamX(column), top - down, 0, down));
    }
    for (int row = 1; row < rows; row++) {
      seams.add(new Crowd.Box(left, seamY(row), across, 0));
    }
    return seams;
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
