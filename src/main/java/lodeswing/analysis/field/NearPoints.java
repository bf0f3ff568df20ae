package lodeswing.analysis.field;

import java.util.Arrays;
import lodeswing.core.field.Frame;

/** Points in the cells of a window, to ask whether any lies near a place. */
final class NearPoints {

  private final Frame window;
  private final double cell;
  private final int columns;
  private final int rows;
  private final double[][] cells;
  private final int[] held;
  private int count;

  NearPoints(Frame window, double cell) {
    this.window = window;
    this.cell = cell;
    this.columns = (int) Math.ceil(window.width() / cell) + 1;
    this.rows = (int) Math.ceil(window.height() / cell) + 1;
    this.cells = new double[columns * rows][];
    this.held = new int[columns * rows];
    Arrays.fill(cells, new double[0]);
  }

  /** How many points there are. */
  int count() {
    return count;
  }

  private int column(double u) {
    return (int) Math.max(0, Math.min(columns - 1, Math.floor((u - window.left()) / cell)));
  }

  private int row(double v) {
    return (int) Math.max(0, Math.min(rows - 1, Math.floor((v - window.bottom()) / cell)));
  }

  void add(double u, double v) {
    int at = row(v) * columns + column(u);
    if (2 * held[at] == cells[at].length) {
      cells[at] = Arrays.copyOf(cells[at], Math.max(16, 2 * cells[at].length));
    }
    cells[at][2 * held[at]] = u;
    cells[at][2 * held[at] + 1] = v;
    held[at]++;
    count++;
  }

  /** Whether a point lies nearer than a distance, which is a cell's side at most. */
  boolean anyWithin(double u, double v, double distance) {
    int column = column(u);
    int row = row(v);
    double square = distance * distance;
    for (int r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
      for (int c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) {
        int at = r * columns + c;
        for (int i = 0; i < held[at]; i++) {
          double du = cells[at][2 * i] - u;
          double dv = cells[at][2 * i + 1] - v;
          if (du * du + dv * dv < square) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
