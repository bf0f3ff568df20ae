package lodeswing.analysis.field;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import lodeswing.core.field.FieldGrid;
import lodeswing.core.field.Frame;
import lodeswing.core.field.Surface;
import lodeswing.core.integrate.lane.LaneProvider;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * Finds where the whole field vanishes in the space above the magnets: cells of a grid in which all
 * three components may, each refined by Newton's method; counted by how often the field covers all
 * directions over the box's surface.
 *
 * <p>Sources: J. M. Greene, J. Comput. Phys. 98 (1992) 194 (the count by Kronecker's integral); A.
 * van Oosterom and J. Strackee, IEEE Trans. Biomed. Eng. 30 (1983) 125 (solid angle of a triangle).
 */
public final class SpaceNulls {

  private static final int[][] SIDES = {{49, 25}, {97, 49}};
  private static final int MOST_STEPS = 60;
  private static final double WIDENING = 0.25;
  private static final double STEP = 1e-3;

  private final PlateField plate;
  private final LaneProvider provider;
  private final Frame window;
  private final double low;
  private final double high;
  private final DoubleConsumer progress;

  /**
   * A search.
   *
   * @param window in the plan
   * @param low height of the box's bottom, above every magnet [m]
   * @param high height of its top [m]
   */
  public SpaceNulls(
      PlateField plate,
      LaneProvider provider,
      Frame window,
      double low,
      double high,
      DoubleConsumer progress) {
    this.plate = plate;
    this.provider = provider;
    this.window = window;
    this.low = low;
    this.high = high;
    this.progress = progress;
  }

  /**
   * What was found.
   *
   * @param nulls the places
   * @param indexSum of them
   * @param covers how often the field covers all directions over the box's surface
   */
  public record Found(List<SpaceNull> nulls, int indexSum, int covers) {

    /** Copies the list. */
    public Found {
      nulls = List.copyOf(nulls);
    }

    /** Whether the count holds. */
    public boolean agrees() {
      return indexSum == covers;
    }
  }

  /** Searches. */
  public Found run() {
    Found found = new Found(List.of(), 0, 0);
    if (plate.sources().count() == 0) {
      return found;
    }
    for (int[] sides : SIDES) {
      found = search(sides[0], sides[1]);
      if (found.agrees()) {
        return found;
      }
    }
    return found;
  }

  private Found search(int side, int levels) {
    Frame frame = window.with(side, side);
    FieldGrid[] level = new FieldGrid[levels];
    double rise = (high - low) / (levels - 1);
    for (int k = 0; k < levels; k++) {
      level[k] =
          FieldGrid.of(plate.sources(), provider, frame, Surface.level(low + k * rise), f -> {});
      progress.accept((double) k / levels);
    }
    List<SpaceNull> found = new ArrayList<>();
    for (int k = 0; k < levels - 1; k++) {
      for (int row = 0; row < side - 1; row++) {
        for (int column = 0; column < side - 1; column++) {
          if (mayHold(level, k, row * side + column, side)) {
            refine(
                new double[] {
                  frame.x(column) + frame.stepX() / 2,
                  frame.y(row) + frame.stepY() / 2,
                  low + (k + 0.5) * rise
                },
                Math.max(frame.stepX(), rise),
                found);
          }
        }
      }
    }
    int sum = found.stream().mapToInt(SpaceNull::index).sum();
    return new Found(found, sum, covers(level, side, levels));
  }

  private static boolean mayHold(FieldGrid[] level, int k, int lower, int side) {
    for (int axis = 0; axis < 3; axis++) {
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (int corner = 0; corner < 8; corner++) {
        int at = lower + (corner & 1) + ((corner & 2) != 0 ? side : 0);
        double value = level[k + (corner >> 2)].component(at, axis);
        least = Math.min(least, value);
        most = Math.max(most, value);
      }
      double widened = WIDENING * (most - least);
      if (!(least - widened <= 0 && most + widened >= 0)) {
        return false;
      }
    }
    return true;
  }

  private void refine(double[] start, double cell, List<SpaceNull> found) {
    double[] p = start.clone();
    double[] b = new double[3];
    double[] next = new double[3];
    plate.sources().field(p[0], p[1], p[2], b);
    double begun = size(b);
    for (int n = 0; n < MOST_STEPS; n++) {
      double[] step = Linear.solved(slopes(p), b);
      double length = size(step);
      if (!(length > 1e-13 * cell)) {
        break;
      }
      double share = Math.min(1, cell / length);
      double before = size(b);
      boolean weaker = false;
      while (!weaker && share > 1e-4) {
        plate
            .sources()
            .field(p[0] - share * step[0], p[1] - share * step[1], p[2] - share * step[2], next);
        weaker = size(next) < before;
        share *= weaker ? 1 : 0.5;
      }
      if (!weaker) {
        break;
      }
      for (int i = 0; i < 3; i++) {
        p[i] -= share * step[i];
      }
      System.arraycopy(next, 0, b, 0, 3);
    }
    double moved = Math.hypot(Math.hypot(p[0] - start[0], p[1] - start[1]), p[2] - start[2]);
    boolean within = window.holds(p[0], p[1]) && p[2] >= low && p[2] <= high;
    if (size(b) <= 1e-9 * begun && moved < 3 * cell && within) {
      boolean known =
          found.stream()
              .anyMatch(
                  o ->
                      Math.hypot(Math.hypot(o.x() - p[0], o.y() - p[1]), o.z() - p[2])
                          < 1e-3 * cell);
      if (!known) {
        found.add(described(p));
      }
    }
  }

  private static double size(double[] b) {
    return Math.sqrt(b[0] * b[0] + b[1] * b[1] + b[2] * b[2]);
  }

  /** Slopes by central differences of order 4, row i the component, column j the direction. */
  private double[][] slopes(double[] p) {
    double h = STEP * plate.detail();
    double[][] slopes = new double[3][3];
    double[] b = new double[3];
    for (int j = 0; j < 3; j++) {
      for (int n = -2; n <= 2; n++) {
        if (n != 0) {
          double[] q = p.clone();
          q[j] += n * h;
          plate.sources().field(q[0], q[1], q[2], b);
          double weight = (Math.abs(n) == 1 ? 8.0 : -1.0) / (12 * h) * Math.signum(n);
          for (int i = 0; i < 3; i++) {
            slopes[i][j] += weight * b[i];
          }
        }
      }
    }
    return slopes;
  }

  private SpaceNull described(double[] p) {
    double[][] m = slopes(p);
    double[][] even = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        even[i][j] = (m[i][j] + m[j][i]) / 2;
      }
    }
    var eigen = new EigenDecomposition(new Array2DRowRealMatrix(even));
    double[] values = eigen.getRealEigenvalues();
    int index = (int) Math.signum(Linear.determinant(m));
    // The spine is the direction whose value has the sign of the determinant, alone.
    int spine = 0;
    for (int i = 1; i < 3; i++) {
      if (index * values[i] > index * values[spine]) {
        spine = i;
      }
    }
    double[] way = eigen.getEigenvector(spine).toArray();
    double sign = way[2] < 0 ? -1 : 1;
    return new SpaceNull(
        p[0], p[1], p[2], index, sign * way[0] + 0.0, sign * way[1] + 0.0, sign * way[2] + 0.0);
  }

  /** Solid angle of the field's directions over the box's surface, in whole spheres. */
  private static int covers(FieldGrid[] level, int side, int levels) {
    double sum = 0;
    for (int i = 0; i < side - 1; i++) {
      for (int j = 0; j < side - 1; j++) {
        int at = j * side + i;
        sum -= quad(level[0], at, level[0], at + 1, level[0], at + side + 1, level[0], at + side);
        FieldGrid top = level[levels - 1];
        sum += quad(top, at, top, at + 1, top, at + side + 1, top, at + side);
      }
      for (int k = 0; k < levels - 1; k++) {
        FieldGrid a = level[k];
        FieldGrid b = level[k + 1];
        int last = (side - 1) * side;
        sum += quad(a, i, a, i + 1, b, i + 1, b, i);
        sum -= quad(a, last + i, a, last + i + 1, b, last + i + 1, b, last + i);
        int right = side - 1;
        sum -= quad(a, i * side, a, (i + 1) * side, b, (i + 1) * side, b, i * side);
        sum +=
            quad(
                a,
                i * side + right,
                a,
                (i + 1) * side + right,
                b,
                (i + 1) * side + right,
                b,
                i * side + right);
      }
    }
    return (int) Math.round(sum / (4 * Math.PI));
  }

  private static double quad(
      FieldGrid ga, int a, FieldGrid gb, int b, FieldGrid gc, int c, FieldGrid gd, int d) {
    double[] pa = vector(ga, a);
    double[] pb = vector(gb, b);
    double[] pc = vector(gc, c);
    double[] pd = vector(gd, d);
    return Linear.solidAngle(pa, pb, pc) + Linear.solidAngle(pa, pc, pd);
  }

  private static double[] vector(FieldGrid grid, int at) {
    return new double[] {grid.component(at, 0), grid.component(at, 1), grid.component(at, 2)};
  }
}
