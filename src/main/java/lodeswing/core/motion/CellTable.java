package lodeswing.core.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A smooth function of two angles as square cells, each with a polynomial of its own.
 *
 * <p>1. The square is cut into a coarse net of cells. A cell holds when, on a check grid of five by
 * five points where the interpolation error peaks, twice the greatest error of value and of slope
 * stays within the tolerances; else it is cut into four. A cell whose cut gains nothing has met the
 * rounding of the function itself and is kept with the error that it has. A cell that does not hold
 * at the finest cut has no polynomial: there the caller asks the exact function.
 *
 * <p>2. A directory at the finest cut that occurs leads from a place to its cell in one look, so an
 * evaluation costs the same everywhere and for any number of magnets.
 *
 * <p>Immutable after building; evaluation allocates nothing and uses + - * and fma only.
 */
final class CellTable {

  static final int COARSE = 16;
  static final int DEEPEST = 7;

  /** Work of fitting one cell to patches of some twenty by twenty terms, measured. */
  static final double CELL_WORK = 5e3;

  /** Most cells of a table: half a kilobyte each. */
  static final int MOST_CELLS = 600_000;

  private static final int NO_CELL = -1;

  /** A split that gains less than this has met the source's own noise: the parent's error stays. */
  private static final double LEAST_GAIN = 3;

  /** Errors above this many tolerances are never taken for noise. */
  private static final double MOST_NOISE = 30;

  private static final double[] CHECK = {-1, -StrictMath.sqrt(0.5), 0, StrictMath.sqrt(0.5), 1};

  private final double halfWidth;
  private final int across;
  private final double perAngle;
  private final int[] directory;
  private final double[] frames;
  private final double[] coefficients;
  private final double valueError;
  private final double slopeError;

  private CellTable(double halfWidth, int depth, List<Cell> leaves) {
    this.halfWidth = halfWidth;
    this.across = COARSE << depth;
    this.perAngle = across / (2 * halfWidth);
    this.directory = new int[across * across];
    Arrays.fill(directory, NO_CELL);
    long held = leaves.stream().filter(c -> c.holds).count();
    this.frames = new double[Math.toIntExact(held * 3)];
    this.coefficients = new double[Math.toIntExact(held * ChebyshevCell.COEFFICIENTS)];
    double worstValue = 0;
    double worstSlope = 0;
    int index = 0;
    for (Cell cell : leaves) {
      if (!cell.holds) {
        continue;
      }
      frames[index * 3] = cell.u0;
      frames[index * 3 + 1] = cell.v0;
      frames[index * 3 + 2] = 1 / cell.half;
      System.arraycopy(
          cell.coefficients,
          0,
          coefficients,
          index * ChebyshevCell.COEFFICIENTS,
          ChebyshevCell.COEFFICIENTS);
      int span = 1 << (depth - cell.level);
      for (int i = cell.i * span; i < (cell.i + 1) * span; i++) {
        Arrays.fill(directory, i * across + cell.j * span, i * across + (cell.j + 1) * span, index);
      }
      worstValue = Math.max(worstValue, cell.valueError);
      worstSlope = Math.max(worstSlope, cell.slopeError);
      index++;
    }
    this.valueError = worstValue;
    this.slopeError = worstSlope;
  }

  /** The function a table is made from. */
  interface Source {
    /** Its value. */
    double value(double u, double v);

    /**
     * Its value and slopes, for the check; asked only where slopes have a tolerance.
     *
     * @param out receives f, f_u, f_v
     */
    default void slopes(double u, double v, double[] out) {
      throw new IllegalStateException("this source has no slopes");
    }
  }

  /**
   * Builds the table over [-halfWidth, halfWidth]^2, on all cores.
   *
   * @param source the function, safe for several threads
   * @param halfWidth half the side of the square [rad]
   * @param valueTolerance greatest error of the value
   * @param slopeTolerance greatest error of a slope; infinite where slopes do not matter
   * @param budget what the work is counted in
   * @throws WorkExceededException where the budget runs out
   */
  static CellTable build(
      Source source,
      double halfWidth,
      double valueTolerance,
      double slopeTolerance,
      WorkBudget budget) {
    List<Cell> leaves = new ArrayList<>();
    List<Cell> open = new ArrayList<>();
    for (int i = 0; i < COARSE; i++) {
      for (int j = 0; j < COARSE; j++) {
        open.add(new Cell(0, i, j, halfWidth, Double.POSITIVE_INFINITY));
      }
    }
    int depth = 0;
    while (!open.isEmpty()) {
      List<Cell> level = open;
      budget.spend(CELL_WORK * level.size());
      if (leaves.size() + level.size() > MOST_CELLS) {
        throw new WorkExceededException();
      }
      IntStream.range(0, level.size())
          .parallel()
          .forEach(k -> level.get(k).fit(source, valueTolerance, slopeTolerance));
      open = new ArrayList<>();
      for (Cell cell : level) {
        depth = Math.max(depth, cell.level);
        if (cell.holds || cell.level == DEEPEST) {
          leaves.add(cell);
        } else {
          for (int q = 0; q < 4; q++) {
            open.add(
                new Cell(
                    cell.level + 1,
                    2 * cell.i + (q >> 1),
                    2 * cell.j + (q & 1),
                    halfWidth,
                    cell.relativeError));
          }
        }
      }
    }
    return new CellTable(halfWidth, depth, leaves);
  }

  /** Greatest error of the value found on the check grids, doubled. */
  double valueError() {
    return valueError;
  }

  /** Greatest error of a slope found on the check grids, doubled. */
  double slopeError() {
    return slopeError;
  }

  /** About how much memory it holds. */
  long bytes() {
    return (long) Double.BYTES * (frames.length + coefficients.length)
        + (long) Integer.BYTES * directory.length;
  }

  /** All cells' coefficients, the table's own array. */
  double[] coefficients() {
    return coefficients;
  }

  /** All cells' middles and inverse half widths, the table's own array. */
  double[] frames() {
    return frames;
  }

  /** How many cells hold a polynomial. */
  int cells() {
    return frames.length / 3;
  }

  /** The cell of a place, or -1 where only the exact function serves. */
  int find(double u, double v) {
    int i = (int) Math.floor((u + halfWidth) * perAngle);
    int j = (int) Math.floor((v + halfWidth) * perAngle);
    if (i < 0 || j < 0 || i >= across || j >= across) {
      return NO_CELL;
    }
    return directory[i * across + j];
  }

  /** Value in a found cell. */
  double value(int cell, double u, double v) {
    double scale = frames[cell * 3 + 2];
    return ChebyshevCell.value(
        coefficients,
        cell * ChebyshevCell.COEFFICIENTS,
        (u - frames[cell * 3]) * scale,
        (v - frames[cell * 3 + 1]) * scale);
  }

  /** Value and slopes in a found cell. */
  void gradient(int cell, double u, double v, double[] out) {
    double scale = frames[cell * 3 + 2];
    ChebyshevCell.gradient(
        coefficients,
        cell * ChebyshevCell.COEFFICIENTS,
        (u - frames[cell * 3]) * scale,
        (v - frames[cell * 3 + 1]) * scale,
        out);
    out[1] *= scale;
    out[2] *= scale;
  }

  /** Value, slopes and second derivatives in a found cell. */
  void curvature(int cell, double u, double v, double[] out) {
    double scale = frames[cell * 3 + 2];
    ChebyshevCell.curvature(
        coefficients,
        cell * ChebyshevCell.COEFFICIENTS,
        (u - frames[cell * 3]) * scale,
        (v - frames[cell * 3 + 1]) * scale,
        out);
    out[1] *= scale;
    out[2] *= scale;
    double square = scale * scale;
    out[3] *= square;
    out[4] *= square;
    out[5] *= square;
  }

  /** A cell while the table is being built. */
  private static final class Cell {
    private final int level;
    private final int i;
    private final int j;
    private final double half;
    private final double u0;
    private final double v0;
    private final double[] coefficients = new double[ChebyshevCell.COEFFICIENTS];
    private final double parentError;
    private double relativeError = Double.POSITIVE_INFINITY;
    private boolean holds;
    private double valueError;
    private double slopeError;

    Cell(int level, int i, int j, double halfWidth, double parentError) {
      this.level = level;
      this.i = i;
      this.j = j;
      this.parentError = parentError;
      this.half = halfWidth / (COARSE << level);
      this.u0 = -halfWidth + (2 * i + 1) * half;
      this.v0 = -halfWidth + (2 * j + 1) * half;
    }

    void fit(Source source, double valueTolerance, double slopeTolerance) {
      double[] values = new double[ChebyshevCell.COEFFICIENTS];
      for (int k = 0; k < ChebyshevCell.POINTS; k++) {
        for (int l = 0; l < ChebyshevCell.POINTS; l++) {
          values[k * ChebyshevCell.POINTS + l] =
              source.value(u0 + half * ChebyshevCell.node(k), v0 + half * ChebyshevCell.node(l));
        }
      }
      ChebyshevCell.interpolate(values, coefficients, 0);
      double[] exact = new double[3];
      double[] found = new double[3];
      double worstValue = 0;
      double worstSlope = 0;
      for (double cu : CHECK) {
        for (double cv : CHECK) {
          ChebyshevCell.gradient(coefficients, 0, cu, cv, found);
          if (slopeTolerance < Double.POSITIVE_INFINITY) {
            source.slopes(u0 + half * cu, v0 + half * cv, exact);
            worstSlope = Math.max(worstSlope, 2 * Math.abs(found[1] / half - exact[1]));
            worstSlope = Math.max(worstSlope, 2 * Math.abs(found[2] / half - exact[2]));
          } else {
            exact[0] = source.value(u0 + half * cu, v0 + half * cv);
          }
          worstValue = Math.max(worstValue, 2 * Math.abs(found[0] - exact[0]));
          relativeError = Math.max(worstValue / valueTolerance, worstSlope / slopeTolerance);
          // The negated comparison also catches NaN.
          if (!(relativeError <= MOST_NOISE)) {
            // Not measured to the end, so that no child may take it for noise.
            relativeError = Double.POSITIVE_INFINITY;
            return;
          }
        }
      }
      valueError = worstValue;
      slopeError = worstSlope;
      holds = relativeError <= 1 || LEAST_GAIN * relativeError > parentError;
    }
  }
}
