package lodeswing.core.rest;

import lodeswing.core.motion.Motion;

/**
 * A small well on a grid of its own, along its soft and its stiff direction, for wells that the
 * scan's cells are too coarse for.
 *
 * <p>The region held certain reaches up to {@link #SHARE} of the barrier, so that the grid's
 * rounding at the saddle cannot leak.
 */
final class WellPatch {

  /** Share of the barrier up to which the patch holds. */
  static final double SHARE = 0.9;

  private static final int SIDE = 81;
  private static final int CELLS = SIDE - 1;
  private static final double PAST_SADDLE = 1.6;
  private static final double STIFF_WIDTHS = 2;
  private static final int MOST_ENLARGEMENTS = 5;

  private final int well;
  private final double centre0;
  private final double centre1;
  private final double soft0;
  private final double soft1;
  private double halfSoft;
  private double halfStiff;
  private final boolean[] inside = new boolean[SIDE * SIDE];
  private boolean closed;

  /**
   * A patch about a well.
   *
   * @param well index of the well
   * @param minimum the rest point
   * @param height height of its barrier
   * @param toSaddle distance to the saddle of its lowest pass
   */
  WellPatch(Motion motion, int well, CriticalPoint minimum, double height, double toSaddle) {
    SymmetricPair pair = minimum.eigen();
    this.well = well;
    centre0 = minimum.q0();
    centre1 = minimum.q1();
    soft0 = pair.low0();
    soft1 = pair.low1();
    halfSoft = PAST_SADDLE * toSaddle;
    halfStiff = STIFF_WIDTHS * Math.sqrt(2 * height / pair.high());
    double level = minimum.potential() + SHARE * height;
    for (int n = 0; n <= MOST_ENLARGEMENTS && !closed; n++) {
      closed = flood(motion, level);
      if (!closed) {
        halfSoft *= 1.5;
        halfStiff *= 1.5;
      }
    }
  }

  /** Whether the region ends within the patch. */
  boolean closed() {
    return closed;
  }

  /** Index of the well. */
  int well() {
    return well;
  }

  /** Largest distance from the rest point along q0 that the patch may reach. */
  double extent0() {
    return Math.abs(soft0) * halfSoft + Math.abs(soft1) * halfStiff;
  }

  /** Largest distance from the rest point along q1 that the patch may reach. */
  double extent1() {
    return Math.abs(soft1) * halfSoft + Math.abs(soft0) * halfStiff;
  }

  /** Whether a place lies in a cell all of whose corners belong to the well. */
  boolean holds(double q0, double q1) {
    double d0 = q0 - centre0;
    double d1 = q1 - centre1;
    double u = ((d0 * soft0 + d1 * soft1) / halfSoft + 1) * (0.5 * CELLS);
    double w = ((d1 * soft0 - d0 * soft1) / halfStiff + 1) * (0.5 * CELLS);
    if (!(u >= 0 && u < CELLS && w >= 0 && w < CELLS)) {
      return false;
    }
    int lower = ((int) u) * SIDE + (int) w;
    return inside[lower] && inside[lower + 1] && inside[lower + SIDE] && inside[lower + SIDE + 1];
  }

  private boolean flood(Motion motion, double level) {
    boolean[] below = new boolean[inside.length];
    for (int n = 0; n < below.length; n++) {
      int row = n / SIDE;
      int column = n % SIDE;
      double u = halfSoft * (2.0 / CELLS * row - 1);
      double w = halfStiff * (2.0 / CELLS * column - 1);
      below[n] =
          motion.potential(centre0 + u * soft0 - w * soft1, centre1 + u * soft1 + w * soft0)
              < level;
      inside[n] = false;
    }
    int[] stack = new int[inside.length];
    int top = 0;
    int middle = CELLS / 2 * SIDE + CELLS / 2;
    inside[middle] = true;
    stack[top++] = middle;
    while (top > 0) {
      int n = stack[--top];
      int i = n / SIDE;
      int j = n % SIDE;
      if (i == 0 || j == 0 || i == CELLS || j == CELLS) {
        return false;
      }
      for (int k = 0; k < 9; k++) {
        int m = (i + k / 3 - 1) * SIDE + j + k % 3 - 1;
        if (below[m] && !inside[m]) {
          inside[m] = true;
          stack[top++] = m;
        }
      }
    }
    return true;
  }
}
