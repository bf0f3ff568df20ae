package lodeswing.analysis.field;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.field.FieldGrid;
import lodeswing.core.field.Frame;
import lodeswing.core.field.SurfaceField;

/**
 * Finds where the field's part in the plane vanishes: cells of a grid in which both components may,
 * or round which the field turns, each refined by Newton's method with the exact field.
 *
 * <p>A step is halved until the field gets weaker and is never longer than a cell (J. Nocedal and
 * S. Wright, Numerical Optimization (2006), chapter 11). Where the slopes are singular only the
 * steep direction is stepped along, so that one place of a line of zeros is found.
 */
final class InPlaneZeros {

  private static final int MOST_STEPS = 40;
  private static final double SINGULAR = 1e-7;
  private static final double SAME_PLACE = 1e-3;
  private static final double WIDENING = 0.2;
  private static final double FARTHEST = 3;
  private static final double TURNING = 1e-3;

  private final SurfaceField field;
  private final FieldGrid grid;
  private final Frame frame;
  private final double scale;
  private final double[] here = new double[3];
  private final double[] there = new double[3];
  private final double[] slopes = new double[6];
  private final double[] step = new double[2];

  /**
   * A search.
   *
   * @param scale greatest in-plane strength of the grid [T]
   */
  InPlaneZeros(SurfaceField field, FieldGrid grid, double scale) {
    this.field = field;
    this.grid = grid;
    this.frame = grid.frame();
    this.scale = scale;
  }

  /** A zero. */
  record Zero(double x, double y, SpotKind kind) {}

  /** All zeros found within the window, each once; of a line of zeros one place. */
  List<Zero> find() {
    List<Zero> found = new ArrayList<>();
    for (int row = 0; row < frame.rows() - 1; row++) {
      for (int column = 0; column < frame.columns() - 1; column++) {
        int lower = row * frame.columns() + column;
        if ((mayVanish(lower, 0) && mayVanish(lower, 1)) || turns(lower) != 0) {
          refine(column, row, found);
        }
      }
    }
    return joined(found);
  }

  private int corner(int lower, int k) {
    return lower + (k == 1 || k == 2 ? 1 : 0) + (k >= 2 ? frame.columns() : 0);
  }

  private boolean mayVanish(int lower, int axis) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < 4; k++) {
      double value = grid.component(corner(lower, k), axis);
      if (Double.isNaN(value)) {
        return false;
      }
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    double widened = WIDENING * (high - low);
    return low - widened <= 0 && high + widened >= 0;
  }

  private long turns(int lower) {
    double sum = 0;
    for (int k = 0; k < 4; k++) {
      sum += Turning.angle(grid, corner(lower, k), corner(lower, (k + 1) % 4));
    }
    return Double.isNaN(sum) ? 0 : Math.round(sum / (2 * Math.PI));
  }

  private void refine(int column, int row, List<Zero> found) {
    double size = Math.max(frame.stepX(), frame.stepY());
    double startX = frame.x(column) + frame.stepX() / 2;
    double startY = frame.y(row) + frame.stepY() / 2;
    double x = startX;
    double y = startY;
    field.at(x, y, here);
    double length = Double.POSITIVE_INFINITY;
    for (int n = 0; n < MOST_STEPS && length > 1e-13 * size; n++) {
      field.slopes(x, y, slopes);
      newtonStep(size);
      double before = Math.hypot(here[0], here[1]);
      double share = 1;
      boolean weaker = before == 0;
      while (!weaker && share > 1e-4) {
        field.at(x + share * step[0], y + share * step[1], there);
        weaker = Math.hypot(there[0], there[1]) < before;
        share *= weaker ? 1 : 0.5;
      }
      length = Math.hypot(step[0], step[1]);
      if (!weaker || before == 0) {
        break;
      }
      x += share * step[0];
      y += share * step[1];
      System.arraycopy(there, 0, here, 0, 3);
      if (Math.hypot(x - startX, y - startY) > FARTHEST * size) {
        return;
      }
    }
    boolean zero = Math.hypot(here[0], here[1]) <= 1e-10 * scale;
    if (zero && frame.holds(x, y)) {
      field.slopes(x, y, slopes);
      Zero place = new Zero(x, y, kind());
      if (found.stream().noneMatch(one -> distance(one, place) < SAME_PLACE * size)) {
        found.add(place);
      }
    }
  }

  /** By the singular values of the slopes, so that a singular direction is left alone. */
  private void newtonStep(double longest) {
    double a = slopes[0];
    double b = slopes[3];
    double c = slopes[1];
    double d = slopes[4];
    double det = a * d - b * c;
    double square = a * a + b * b + c * c + d * d;
    if (Math.abs(det) > SINGULAR * square) {
      step[0] = (-d * here[0] + b * here[1]) / det;
      step[1] = (c * here[0] - a * here[1]) / det;
    } else {
      // Of rank one the pseudoinverse is the transpose over the square of its size.
      step[0] = -(a * here[0] + c * here[1]) / square;
      step[1] = -(b * here[0] + d * here[1]) / square;
    }
    double length = Math.hypot(step[0], step[1]);
    if (length > longest) {
      step[0] *= longest / length;
      step[1] *= longest / length;
    }
  }

  private SpotKind kind() {
    double trace = slopes[0] + slopes[4];
    double det = slopes[0] * slopes[4] - slopes[3] * slopes[1];
    double square =
        slopes[0] * slopes[0]
            + slopes[1] * slopes[1]
            + slopes[3] * slopes[3]
            + slopes[4] * slopes[4];
    if (Math.abs(det) <= SINGULAR * square) {
      return SpotKind.LINE;
    }
    if (det < 0) {
      return SpotKind.SADDLE;
    }
    if (trace * trace < TURNING * det) {
      return SpotKind.CENTRE;
    }
    if (trace * trace < 4 * det * (1 - 1e-9)) {
      return SpotKind.SPIRAL;
    }
    return trace > 0 ? SpotKind.SOURCE : SpotKind.SINK;
  }

  /** One place for each line of zeros: the one farthest along x. */
  private List<Zero> joined(List<Zero> found) {
    List<Zero> result = new ArrayList<>();
    List<Zero> line = new ArrayList<>();
    for (Zero zero : found) {
      (zero.kind() == SpotKind.LINE ? line : result).add(zero);
    }
    double gap = 3 * Math.max(frame.stepX(), frame.stepY());
    while (!line.isEmpty()) {
      List<Zero> chain = new ArrayList<>();
      chain.add(line.remove(line.size() - 1));
      for (int n = 0; n < chain.size(); n++) {
        Zero from = chain.get(n);
        for (int k = line.size() - 1; k >= 0; k--) {
          if (distance(line.get(k), from) < gap) {
            chain.add(line.remove(k));
          }
        }
      }
      Zero best = chain.get(0);
      for (Zero zero : chain) {
        best = zero.x() > best.x() ? zero : best;
      }
      result.add(best);
    }
    return result;
  }

  private static double distance(Zero a, Zero b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }
}
