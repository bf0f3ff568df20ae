package lodeswing.analysis.field;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import lodeswing.core.field.Frame;

/**
 * The lowest way out of each weak spot, on a grid: places are joined in the order of their
 * strength, and where what belongs to a spot first meets what belongs to another, or the window's
 * edge, is its pass.
 *
 * <p>Source: the join tree of H. Carr, J. Snoeyink and U. Axen, Computational Geometry 24 (2003)
 * 75.
 */
final class Passes {

  /** Stands for all that lies beyond the window's edge. */
  private static final int OUTSIDE = -2;

  private static final int NONE = -1;
  private static final int[][] WAYS = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}};

  private final int[] pass;
  private final boolean[] outwards;

  /**
   * The passes.
   *
   * @param strengths at the frame's places; NaN as beyond the edge
   * @param spots the place next to each spot
   */
  Passes(Frame frame, double[] strengths, int[] spots) {
    pass = new int[spots.length];
    outwards = new boolean[spots.length];
    Arrays.fill(pass, NONE);
    int[] root = new int[strengths.length];
    int[] holds = new int[strengths.length];
    Arrays.fill(root, NONE);
    Arrays.fill(holds, NONE);
    for (int spot = 0; spot < spots.length; spot++) {
      holds[spots[spot]] = spot;
    }
    int[] order =
        IntStream.range(0, strengths.length)
            .filter(i -> !Double.isNaN(strengths[i]))
            .boxed()
            .sorted(Comparator.comparingDouble(i -> strengths[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    for (int place : order) {
      root[place] = place;
      int column = place % frame.columns();
      int row = place / frame.columns();
      boolean edge =
          column == 0 || row == 0 || column == frame.columns() - 1 || row == frame.rows() - 1;
      if (edge) {
        meet(holds, place, OUTSIDE, place);
        holds[place] = OUTSIDE;
      }
      for (int[] way : WAYS) {
        int c = column + way[0];
        int r = row + way[1];
        if (c >= 0 && r >= 0 && c < frame.columns() && r < frame.rows()) {
          join(root, holds, place, r * frame.columns() + c);
        }
      }
    }
  }

  private void join(int[] root, int[] holds, int place, int other) {
    if (root[other] == NONE) {
      return;
    }
    int a = top(root, place);
    int b = top(root, other);
    if (a == b) {
      return;
    }
    if (holds[a] != NONE && holds[b] != NONE) {
      meet(holds, a, holds[b], place);
      meet(holds, b, holds[a], place);
    }
    int stays = holds[a] == OUTSIDE || holds[b] == OUTSIDE ? OUTSIDE : Math.max(holds[a], holds[b]);
    root[b] = a;
    holds[a] = stays;
  }

  /** What is held at a root has its pass where it meets something else, if it has none yet. */
  private void meet(int[] holds, int at, int other, int place) {
    int spot = holds[at];
    if (spot >= 0 && pass[spot] == NONE) {
      pass[spot] = place;
      outwards[spot] = other == OUTSIDE;
    }
  }

  private static int top(int[] root, int place) {
    int at = place;
    while (root[at] != at) {
      root[at] = root[root[at]];
      at = root[at];
    }
    return at;
  }

  /** The place of a spot's pass on the grid, or less than 0 where it has none. */
  int of(int spot) {
    return pass[spot];
  }

  /** Whether the way over it leads out of the window. */
  boolean outwards(int spot) {
    return outwards[spot];
  }
}
