package lodeswing.core.landscape;

import java.util.List;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;

/**
 * Where, in the square of coordinates, a motion may meet one of its limits whatever its speed.
 *
 * <p>The square is cut into cells; each limit's least margin is known at a cell's corners, middle
 * and sides. A cell is free where the least of these nine exceeds what the margin changes over the
 * cell: half of that would do for a margin that bends evenly. The limit of angles is left out,
 * since lanes look at it themselves. Immutable.
 */
public final class LimitMap {

  private static final int CELLS = 64;
  private static final int NODES = 2 * CELLS + 1;

  private final double reach;
  private final boolean[] doubtful = new boolean[CELLS * CELLS];
  private final boolean empty;

  private LimitMap(double reach, List<Limit> limits) {
    this.reach = reach;
    boolean none = true;
    for (Limit limit : limits) {
      double[] margins = margins(limit);
      for (int cell = 0; cell < CELLS * CELLS; cell++) {
        doubtful[cell] |= isDoubtful(margins, cell);
        none &= !doubtful[cell];
      }
    }
    this.empty = none;
  }

  /** The map of a motion. */
  static LimitMap of(Motion motion) {
    List<Limit> limits =
        motion.limits().stream().filter(l -> l.kind() != Limit.Kind.ANGLE_LIMIT).toList();
    return new LimitMap(motion.reach(), limits);
  }

  private double[] margins(Limit limit) {
    double[] margins = new double[NODES * NODES];
    double step = 2 * reach / (NODES - 1);
    for (int i = 0; i < NODES; i++) {
      for (int j = 0; j < NODES; j++) {
        margins[i * NODES + j] = limit.leastMargin(i * step - reach, j * step - reach);
      }
    }
    return margins;
  }

  private static boolean isDoubtful(double[] margins, int cell) {
    int corner = 2 * (cell / CELLS) * NODES + 2 * (cell % CELLS);
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        double margin = margins[corner + i * NODES + j];
        least = Math.min(least, margin);
        most = Math.max(most, margin);
      }
    }
    // Infinite margins all over leave no number to compare.
    return least < Double.POSITIVE_INFINITY && !(least > most - least);
  }

  /** Whether no cell is doubtful. */
  public boolean empty() {
    return empty;
  }

  /** Whether a limit may be met at a place; so it may everywhere outside the square. */
  public boolean doubtful(double q0, double q1) {
    int i = (int) Math.floor((q0 + reach) / (2 * reach) * CELLS);
    int j = (int) Math.floor((q1 + reach) / (2 * reach) * CELLS);
    return i < 0 || j < 0 || i >= CELLS || j >= CELLS || doubtful[i * CELLS + j];
  }
}
