package lodeswing.analysis.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lodeswing.core.field.Frame;

/**
 * Borders of where the strength is at least a level, as closed rings: marching squares on the grid,
 * linear between its places, the window's edge closing what runs out of it.
 *
 * <p>Source: W. E. Lorensen and H. E. Cline, Computer Graphics 21 (1987) 163, in the plane; where
 * two opposite corners of a cell are above and two below, the cell's mean decides.
 */
public final class LevelLines {

  private final Frame frame;
  private final double[] values;
  private final int columns;
  private final int rows;

  private LevelLines(Frame frame, double[] values) {
    this.frame = frame;
    this.values = values;
    this.columns = frame.columns() + 2;
    this.rows = frame.rows() + 2;
  }

  /**
   * The level lines of values at a frame's places.
   *
   * @param values row by row from below; NaN counts as below every level
   */
  public static LevelLines of(Frame frame, double[] values) {
    int columns = frame.columns() + 2;
    double[] padded = new double[columns * (frame.rows() + 2)];
    Arrays.fill(padded, Double.NEGATIVE_INFINITY);
    for (int row = 0; row < frame.rows(); row++) {
      for (int column = 0; column < frame.columns(); column++) {
        double value = values[row * frame.columns() + column];
        if (!Double.isNaN(value)) {
          padded[(row + 1) * columns + column + 1] = value;
        }
      }
    }
    return new LevelLines(frame, padded);
  }

  /** A closed ring; owns its corners. */
  public static final class Ring {
    private final double[] x;
    private final double[] y;

    private Ring(double[] x, double[] y) {
      this.x = x;
      this.y = y;
    }

    /** How many corners it has. */
    public int count() {
      return x.length;
    }

    /** x of a corner [m]. */
    public double x(int i) {
      return x[i];
    }

    /** y of a corner [m]. */
    public double y(int i) {
      return y[i];
    }

    /** Signed area, positive where higher values lie within [m^2]. */
    public double area() {
      double twice = 0;
      for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
        twice += x[j] * y[i] - x[i] * y[j];
      }
      return twice / 2;
    }
  }

  /** The rings about where values are at least a level; these lie on their left. */
  public List<Ring> at(double level) {
    // Each cell's crossing edges, linked: an edge is left by one segment and entered by one other.
    int[] next = new int[2 * columns * rows];
    Arrays.fill(next, -1);
    for (int row = 0; row < rows - 1; row++) {
      for (int column = 0; column < columns - 1; column++) {
        link(level, column, row, next);
      }
    }
    List<Ring> rings = new ArrayList<>();
    for (int edge = 0; edge < next.length; edge++) {
      if (next[edge] >= 0) {
        rings.add(ring(level, edge, next));
      }
    }
    return rings;
  }

  /** Edge to the right of a place, or upwards from it. */
  private int across(int column, int row) {
    return 2 * (row * columns + column);
  }

  private int upwards(int column, int row) {
    return 2 * (row * columns + column) + 1;
  }

  private boolean above(double level, int column, int row) {
    return values[row * columns + column] >= level;
  }

  private void link(double level, int column, int row, int[] next) {
    boolean a = above(level, column, row);
    boolean b = above(level, column + 1, row);
    boolean c = above(level, column + 1, row + 1);
    boolean d = above(level, column, row + 1);
    if (a == b && b == c && c == d) {
      return;
    }
    int south = across(column, row);
    int east = upwards(column + 1, row);
    int north = across(column, row + 1);
    int west = upwards(column, row);
    boolean[] corner = {a, b, c, d};
    int[] edge = {south, east, north, west};
    boolean joined = a == c && b == d && a != b && meanAbove(level, column, row);
    // A border runs from where the corners, anticlockwise, fall below: higher values on its left.
    for (int k = 0; k < 4; k++) {
      boolean leaves = corner[k] && !corner[(k + 1) % 4];
      if (leaves) {
        next[edge[k]] = edge[ending(corner, k, joined)];
      }
    }
  }

  /** The edge at which the border that crosses edge k, from above to below, ends. */
  private static int ending(boolean[] corner, int k, boolean joined) {
    if (joined) {
      // The two high corners belong together: the border cuts off the low corner after edge k.
      return (k + 1) % 4;
    }
    // The border cuts off the run of high corners that ends before edge k.
    int from = k;
    while (corner[from]) {
      from = (from + 3) % 4;
    }
    return from;
  }

  private boolean meanAbove(double level, int column, int row) {
    int at = row * columns + column;
    double sum = values[at] + values[at + 1] + values[at + columns] + values[at + columns + 1];
    return sum / 4 >= level;
  }

  private Ring ring(double level, int first, int[] next) {
    int count = 0;
    for (int edge = first; count == 0 || edge != first; edge = next[edge]) {
      count++;
    }
    double[] x = new double[count];
    double[] y = new double[count];
    int edge = first;
    for (int i = 0; i < count; i++) {
      place(level, edge, x, y, i);
      int following = next[edge];
      next[edge] = -1;
      edge = following;
    }
    return new Ring(x, y);
  }

  private void place(double level, int edge, double[] x, double[] y, int i) {
    int at = edge / 2;
    int column = at % columns;
    int row = at / columns;
    boolean up = edge % 2 == 1;
    double here = values[at];
    double there = values[up ? at + columns : at + 1];
    // Against the padding the border lies on the window's edge itself.
    double share =
        here == Double.NEGATIVE_INFINITY
            ? 1
            : there == Double.NEGATIVE_INFINITY ? 0 : (level - here) / (there - here);
    x[i] = frame.left() + frame.stepX() * (column - 1 + (up ? 0 : share));
    y[i] = frame.bottom() + frame.stepY() * (row - 1 + (up ? share : 0));
  }
}
