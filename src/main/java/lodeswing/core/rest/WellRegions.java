package lodeswing.core.rest;

import java.util.Arrays;
import java.util.List;

/** For each cell of a grid the one well that holds all its corners below its pass. */
final class WellRegions {

  static final short NONE = -1;

  private WellRegions() {}

  /**
   * Marks the cells.
   *
   * @param minima the wells' rest points
   * @param level for each well the energy below which its region holds it alone
   * @return well of each cell by the number of its lower corner, or {@link #NONE}
   */
  static short[] mark(ScanGrid grid, List<CriticalPoint> minima, double[] level) {
    short[] node = new short[grid.nodes()];
    Arrays.fill(node, NONE);
    int[] stack = new int[grid.nodes()];
    for (short w = 0; w < minima.size(); w++) {
      flood(grid, minima.get(w), level[w], w, node, stack);
    }
    short[] cell = new short[grid.nodes()];
    Arrays.fill(cell, NONE);
    for (int i = 0; i < grid.axis0.size() - 1; i++) {
      for (int j = 0; j < grid.axis1.size() - 1; j++) {
        int lower = i * grid.size1() + j;
        short well = node[lower];
        boolean same = true;
        for (int k = 1; k < 4; k++) {
          same &= node[grid.corner(lower, k)] == well;
        }
        cell[lower] = same ? well : NONE;
      }
    }
    return cell;
  }

  private static void flood(
      ScanGrid grid, CriticalPoint minimum, double level, short well, short[] node, int[] stack) {
    int top = 0;
    int lower = grid.cellCorner(minimum.q0(), minimum.q1());
    for (int k = 0; k < 4; k++) {
      int corner = grid.corner(lower, k);
      if (belongs(grid, corner, level, node)) {
        node[corner] = well;
        stack[top++] = corner;
      }
    }
    while (top > 0) {
      int n = stack[--top];
      for (int k = 0; k < 8; k++) {
        int m = grid.neighbour(n, k);
        if (m >= 0 && belongs(grid, m, level, node)) {
          node[m] = well;
          stack[top++] = m;
        }
      }
    }
  }

  private static boolean belongs(ScanGrid grid, int n, double level, short[] node) {
    return node[n] == NONE && grid.safe(n) && grid.potential[n] < level;
  }
}
