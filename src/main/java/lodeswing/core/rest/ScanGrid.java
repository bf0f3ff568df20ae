package lodeswing.core.rest;

import java.util.List;
import java.util.Objects;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.rest.UnsafeZone.Border;
import org.jspecify.annotations.Nullable;

/**
 * The potential and its gradient on the nodes of a rectangular grid, and which nodes are unsafe.
 *
 * <p>A node is unsafe if a border's least margin there is no more than its largest change to a
 * neighbour: the border may then lie within one cell. Node (i, j) has the number i * size1 + j.
 */
final class ScanGrid {

  final ScanAxis axis0;
  final ScanAxis axis1;
  final double[] potential;
  final double[] slope0;
  final double[] slope1;

  private final @Nullable Border[] border;

  /** Whether no border but the scan's own edge exists and the potential rises outwards there. */
  final boolean open;

  private final int size1;
  private final int[] neighbourStep;

  ScanGrid(Motion motion, ScanAxis axis0, ScanAxis axis1) {
    this.axis0 = axis0;
    this.axis1 = axis1;
    this.size1 = axis1.size();
    int nodes = axis0.size() * size1;
    potential = new double[nodes];
    slope0 = new double[nodes];
    slope1 = new double[nodes];
    border = new Border[nodes];
    neighbourStep = new int[] {-size1 - 1, -size1, -size1 + 1, -1, 1, size1 - 1, size1, size1 + 1};
    sample(motion);
    List<Limit> limits = motion.limits();
    for (Limit limit : limits) {
      markUnsafe(limit);
    }
    open = limits.isEmpty() && risesOutwards();
    if (!open) {
      markEdge();
    }
  }

  private void sample(Motion motion) {
    double[] d = new double[6];
    for (int n = 0; n < potential.length; n++) {
      motion.potentialDerivatives(q0(n), q1(n), d);
      potential[n] = d[0];
      slope0[n] = d[1];
      slope1[n] = d[2];
      if (!Double.isFinite(d[0]) || !Double.isFinite(d[1]) || !Double.isFinite(d[2])) {
        border[n] = Border.UNDEFINED;
      }
    }
  }

  private void markUnsafe(Limit limit) {
    double[] margin = new double[potential.length];
    for (int n = 0; n < margin.length; n++) {
      margin[n] = limit.leastMargin(q0(n), q1(n));
    }
    Border kind = Border.valueOf(limit.kind().name());
    for (int n = 0; n < margin.length; n++) {
      double change = 0;
      for (int k = 0; k < 8; k++) {
        int m = neighbour(n, k);
        if (m >= 0) {
          change = Math.max(change, Math.abs(margin[m] - margin[n]));
        }
      }
      // written so that a margin that is not a number counts as unsafe
      boolean safe = margin[n] > 0 && margin[n] > change;
      if (!safe && border[n] == null) {
        border[n] = kind;
      }
    }
  }

  private boolean risesOutwards() {
    boolean rises = true;
    int last0 = axis0.size() - 1;
    int last1 = size1 - 1;
    for (int j = 0; j <= last1; j++) {
      rises &= slope0[j] < 0 && slope0[last0 * size1 + j] > 0;
    }
    for (int i = 0; i <= last0; i++) {
      rises &= slope1[i * size1] < 0 && slope1[i * size1 + last1] > 0;
    }
    return rises;
  }

  private void markEdge() {
    for (int n = 0; n < potential.length; n++) {
      if (onEdge(n) && border[n] == null) {
        border[n] = Border.SCAN_EDGE;
      }
    }
  }

  boolean onEdge(int n) {
    int i = n / size1;
    int j = n % size1;
    return i == 0 || j == 0 || i == axis0.size() - 1 || j == size1 - 1;
  }

  int nodes() {
    return potential.length;
  }

  int size1() {
    return size1;
  }

  double q0(int n) {
    return axis0.at(n / size1);
  }

  double q1(int n) {
    return axis1.at(n % size1);
  }

  boolean safe(int n) {
    return border[n] == null;
  }

  /** The border at an unsafe node. */
  Border border(int n) {
    return Objects.requireNonNull(border[n]);
  }

  /** The k-th (0 to 7) of the eight neighbours of a node, or -1 beyond the edge. */
  int neighbour(int n, int k) {
    int j = n % size1;
    int m = n + neighbourStep[k];
    if (m < 0 || m >= potential.length || Math.abs(m % size1 - j) > 1) {
      return -1;
    }
    return m;
  }

  /** The node at the lower corner of the cell that holds a place, or -1 outside. */
  int cellCorner(double q0, double q1) {
    int i = axis0.cell(q0);
    int j = axis1.cell(q1);
    return i < 0 || j < 0 ? -1 : i * size1 + j;
  }

  /** The k-th (0 to 3) corner of the cell with a given lower corner. */
  int corner(int lower, int k) {
    return lower + (k & 1) + (k >> 1) * size1;
  }

  /** Whether all corners of a cell are safe. */
  boolean cellSafe(int lower) {
    return safe(lower) && safe(lower + 1) && safe(lower + size1) && safe(lower + size1 + 1);
  }

  /** Length of the diagonal of a cell. */
  double cellSize(int lower) {
    return Math.hypot(axis0.cellWidth(lower / size1), axis1.cellWidth(lower % size1));
  }

  /** Largest difference of the potential between a node and its safe neighbours. */
  double roughness(int n) {
    double most = 0;
    for (int k = 0; k < 8; k++) {
      int m = neighbour(n, k);
      if (m >= 0 && safe(m)) {
        most = Math.max(most, Math.abs(potential[m] - potential[n]));
      }
    }
    return most;
  }

  /**
   * How often the gradient turns round, anticlockwise, along the border of a cell: 1 around a
   * minimum or maximum, -1 around a saddle, 0 elsewhere.
   */
  int turns(int lower) {
    int a = lower;
    int b = lower + size1;
    int c = lower + size1 + 1;
    int d = lower + 1;
    double sum = turn(a, b) + turn(b, c) + turn(c, d) + turn(d, a);
    return (int) Math.rint(sum / (2 * Math.PI));
  }

  /** The sum of the turns of all cells whose corners are safe: the turns around that region. */
  int turnsOfSafeCells() {
    int sum = 0;
    for (int i = 0; i < axis0.size() - 1; i++) {
      for (int j = 0; j < size1 - 1; j++) {
        int lower = i * size1 + j;
        sum += cellSafe(lower) ? turns(lower) : 0;
      }
    }
    return sum;
  }

  private double turn(int from, int to) {
    double cross = slope0[from] * slope1[to] - slope1[from] * slope0[to];
    double dot = slope0[from] * slope0[to] + slope1[from] * slope1[to];
    return Math.atan2(cross, dot);
  }
}
