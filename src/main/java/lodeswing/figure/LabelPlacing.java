package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds room for labels: of a ring of places about a thing, the one that covers least of the path,
 * of other labels and of magnets. Greedy and in a fixed order, so the same picture gives the same
 * places. Works in pixels of the page.
 */
final class LabelPlacing {
  private static final double CELL = 4;
  private static final double[] GAPS = {4, 13, 26, 42};
  private static final int DIRECTIONS = 16;
  private static final double INK_COST = 9;
  private static final double CLASH_COST = 5;
  private static final double SOFT_COST = 0.8;
  private static final double GAP_COST = 26;
  private static final double SIDEWAYS_COST = 3;

  private final double left;
  private final double top;
  private final double right;
  private final double bottom;
  private final int columns;
  private final boolean[] inked;
  private final List<Box> hard = new ArrayList<>();
  private final List<Box> soft = new ArrayList<>();

  LabelPlacing(Sheet sheet) {
    left = sheet.plotLeft();
    top = sheet.plotTop();
    right = left + sheet.plotWidth();
    bottom = sheet.plotBottom();
    columns = (int) Math.ceil((right - left) / CELL) + 1;
    int rows = (int) Math.ceil((bottom - top) / CELL) + 1;
    inked = new boolean[columns * rows];
  }

  /** An upright box in pixels, y downwards. */
  record Box(double x, double y, double width, double height) {
    static Box about(double x, double y, double width, double height) {
      return new Box(x - width / 2, y - height / 2, width, height);
    }

    double shared(Box other) {
      double w = Math.min(x + width, other.x + other.width) - Math.max(x, other.x);
      double h = Math.min(y + height, other.y + other.height) - Math.max(y, other.y);
      return w > 0 && h > 0 ? w * h : 0;
    }
  }

  /**
   * A place found.
   *
   * @param box where
   * @param clear whether it covers no other label or mark
   * @param far whether it stands off so far that a line should lead to it
   */
  record Place(Box box, boolean clear, boolean far) {}

  /** Tells that the path runs along a straight piece. */
  void ink(double fromX, double fromY, double toX, double toY) {
    int steps = 1 + (int) (Math.hypot(toX - fromX, toY - fromY) / (CELL / 2));
    for (int i = 0; i <= steps; i++) {
      double x = fromX + (toX - fromX) * i / steps;
      double y = fromY + (toY - fromY) * i / steps;
      int row = (int) Math.floor((y - top) / CELL);
      int column = (int) Math.floor((x - left) / CELL);
      int cell = row * columns + column;
      if (row >= 0 && column >= 0 && column < columns && cell < inked.length) {
        inked[cell] = true;
      }
    }
  }

  /** Tells that a box must stay clear. */
  void keepClear(Box box) {
    hard.add(box);
  }

  /** Tells that a box should rather stay clear. */
  void ratherClear(Box box) {
    soft.add(box);
  }

  /** The best place for a box of a size beside a round thing; nothing is reserved yet. */
  Place find(double x, double y, double reach, double width, double height) {
    Box best = Box.about(x, y, width, height);
    double least = Double.POSITIVE_INFINITY;
    boolean far = false;
    for (int g = 0; g < GAPS.length; g++) {
      double distance = reach + GAPS[g];
      for (int d = 0; d < DIRECTIONS; d++) {
        double angle = 2 * Math.PI * d / DIRECTIONS;
        double cx = x + Math.cos(angle) * (distance + width / 2);
        double cy = y + Math.sin(angle) * (distance + height / 2);
        Box box = Box.about(cx, cy, width, height);
        double cost = cost(box) + g * GAP_COST + SIDEWAYS_COST * (1 - Math.cos(angle));
        if (cost < least) {
          least = cost;
          best = box;
          far = g > 0;
        }
      }
    }
    return new Place(best, clash(best) == 0 && outside(best) == 0, far);
  }

  private double cost(Box box) {
    double cost = CLASH_COST * clash(box) + 1000 * outside(box);
    for (Box other : soft) {
      cost += SOFT_COST * box.shared(other);
    }
    return cost + INK_COST * inkUnder(box);
  }

  private double clash(Box box) {
    double area = 0;
    for (Box other : hard) {
      area += box.shared(other);
    }
    return area;
  }

  private double outside(Box box) {
    return Math.max(0, left - box.x())
        + Math.max(0, box.x() + box.width() - right)
        + Math.max(0, top - box.y())
        + Math.max(0, box.y() + box.height() - bottom);
  }

  private int inkUnder(Box box) {
    int count = 0;
    int firstRow = Math.max(0, (int) ((box.y() - top) / CELL));
    int lastRow = (int) ((box.y() + box.height() - top) / CELL);
    int firstColumn = Math.max(0, (int) ((box.x() - left) / CELL));
    int lastColumn = Math.min(columns - 1, (int) ((box.x() + box.width() - left) / CELL));
    for (int row = firstRow; row <= lastRow; row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        int cell = row * columns + column;
        if (cell < inked.length && inked[cell]) {
          count++;
        }
      }
    }
    return count;
  }
}
