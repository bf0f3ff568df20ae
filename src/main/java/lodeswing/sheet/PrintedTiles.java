package lodeswing.sheet;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.function.Predicate;
import lodeswing.figure.ViewBox;

/**
 * Which windows of a tiling are printed: those that show something, and as many of the others as it
 * takes for each page to be joined to the rest along an edge.
 */
final class PrintedTiles {

  private final Tiling tiling;
  private final BitSet printed = new BitSet();

  private PrintedTiles(Tiling tiling) {
    this.tiling = tiling;
  }

  /**
   * The pages of a tiling.
   *
   * @param shows whether a part of the plane, one window's own, has something to show
   */
  static PrintedTiles of(Tiling tiling, Predicate<ViewBox> shows) {
    var tiles = new PrintedTiles(tiling);
    int all = tiling.columns() * tiling.rows();
    tiles.printed.set(0, all);
    var empty = new BitSet();
    for (int i = 0; i < all; i++) {
      empty.set(i, !shows.test(tiling.own(i % tiling.columns(), i / tiling.columns())));
    }
    boolean fewer = true;
    while (fewer) {
      fewer = false;
      for (int i = empty.nextSetBit(0); i >= 0; i = empty.nextSetBit(i + 1)) {
        tiles.printed.clear(i);
        if (tiles.joined()) {
          empty.clear(i);
          fewer = true;
        } else {
          tiles.printed.set(i);
        }
      }
    }
    return tiles;
  }

  /** Whether one can go from each page to each other over their edges; not so without a page. */
  private boolean joined() {
    var reached = new BitSet();
    Deque<Integer> next = new ArrayDeque<>();
    if (!printed.isEmpty()) {
      next.add(printed.nextSetBit(0));
    }
    while (!next.isEmpty()) {
      int i = next.remove();
      if (reached.get(i)) {
        continue;
      }
      reached.set(i);
      int column = i % tiling.columns();
      int row = i / tiling.columns();
      int[][] beside = {{column - 1, row}, {column + 1, row}, {column, row - 1}, {column, row + 1}};
      for (int[] one : beside) {
        if (has(one[0], one[1])) {
          next.add(one[1] * tiling.columns() + one[0]);
        }
      }
    }
    return !printed.isEmpty() && reached.equals(printed);
  }

  /** Whether a window is printed; none beyond the tiling's edge is. */
  boolean has(int column, int row) {
    return column >= 0
        && column < tiling.columns()
        && row >= 0
        && row < tiling.rows()
        && printed.get(row * tiling.columns() + column);
  }

  /** How many are printed. */
  int count() {
    return printed.cardinality();
  }

  /** How many have no page. */
  int leftOut() {
    return (int) tiling.count() - count();
  }
}
