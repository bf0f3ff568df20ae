package lodeswing.core.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A smooth function of two angles as square cells, each with a polynomial of its own.
 *
 * <p>1. The square is cut into a coarse net of cells. A cell holds when, on a check grid of five by
 * five points where the interpolation error peaks, twice the greatest error of value and of slope
 * stays within the tolerances; else it is cut into four. A cell whose cut gains nothing has met the
 * rounding of the function itself and is kept with the error that it has, and so is one of the
 * finest cut whose error is at most thirty times what was asked for. Beyond that a cell has no
 * polynomial, nor has one in which nothing matters: there the caller asks the exact function.
 *
 * <p>2. A {@link CellDirectory} leads from a place to its cell, so an evaluation costs the same
 * everywhere and for any number of magnets.
 *
 * <p>Immutable after building; evaluation allocates nothing and uses + - * and fma only.
 */
final class CellTable {

  static final int COARSE = 16;
  static final int DEEPEST = 7;

  /** Work of fitting one cell to patches of some twenty by twenty terms. */
  static final double CELL_WORK = 1500;

  /** Most cells of a table: half a kilobyte each. */
  static final int MOST_CELLS = 600_000;

  /**
   * Where the first cell lies in the array. A great array begins at a border of the heap's regions
   * and its numbers 16 bytes behind it; so a row of eight numbers shares its 64 bytes with no
   * other.
   */
  static final int FIRST = 6;

  private final CellDirectory directory;
  private final double[] coefficients;
  private final double valueError;
  private final double slopeError;

  private CellTable(double halfWidth, List<CellFit> leaves) {
    List<CellFit> held = leaves.stream().filter(CellFit::holds).toList();
    this.coefficients =
        new double[FIRST + Math.multiplyExact(held.size(), ChebyshevCell.COEFFICIENTS)];
    List<CellDirectory.Square> squares = new ArrayList<>();
    for (int k = 0; k < held.size(); k++) {
      squares.add(held.get(k).square(k));
      held.get(k).copyTo(coefficients, FIRST + k * ChebyshevCell.COEFFICIENTS);
    }
    leaves.stream()
        .filter(cell -> !cell.holds())
        .forEach(cell -> squares.add(cell.square(CellDirectory.NO_CELL)));
    this.directory = new CellDirectory(halfWidth, squares);
    this.valueError = held.stream().mapToDouble(CellFit::valueError).max().orElse(0);
    this.slopeError = held.stream().mapToDouble(CellFit::slopeError).max().orElse(0);
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

    /**
     * Its value, or value and slopes, at a product of places.
     *
     * @param us places in u [rad], the first and the last the outermost ones
     * @param vs places in v [rad], likewise
     * @param slopes whether slopes are wanted
     * @param out receives f, f_u, f_v in 3 (i vs.length + j)
     */
    default void grid(double[] us, double[] vs, boolean slopes, double[] out) {
      double[] three = new double[3];
      for (int i = 0; i < us.length; i++) {
        for (int j = 0; j < vs.length; j++) {
          if (slopes) {
            slopes(us[i], vs[j], three);
          } else {
            three[0] = value(us[i], vs[j]);
          }
          System.arraycopy(three, 0, out, 3 * (i * vs.length + j), 3);
        }
      }
    }

    /** Whether any place of a square matters. */
    default boolean matters(double u, double v, double half) {
      return true;
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
    List<CellFit> leaves = new ArrayList<>();
    List<CellFit> open = new ArrayList<>();
    for (int i = 0; i < COARSE; i++) {
      for (int j = 0; j < COARSE; j++) {
        open.add(new CellFit(0, i, j, halfWidth, Double.POSITIVE_INFINITY));
      }
    }
    while (!open.isEmpty()) {
      List<CellFit> level = open;
      budget.spend(CELL_WORK * level.size());
      if (leaves.size() + level.size() > MOST_CELLS) {
        throw new WorkExceededException();
      }
      IntStream.range(0, level.size())
          .parallel()
          .forEach(k -> level.get(k).fit(source, valueTolerance, slopeTolerance));
      open = new ArrayList<>();
      for (CellFit cell : level) {
        if (cell.settled()) {
          leaves.add(cell);
        } else {
          open.addAll(cell.cut(halfWidth));
        }
      }
    }
    return new CellTable(halfWidth, leaves);
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
    return (long) Double.BYTES * coefficients.length + directory.bytes();
  }

  /** Leads to its cells. */
  CellDirectory directory() {
    return directory;
  }

  /** All cells' coefficients from {@link #FIRST} on, the table's own array. */
  double[] coefficients() {
    return coefficients;
  }

  /** How many cells hold a polynomial. */
  int cells() {
    return (coefficients.length - FIRST) / ChebyshevCell.COEFFICIENTS;
  }

  /** The entry of a place, below 0 where only the exact function serves. */
  int find(double u, double v) {
    return directory.entry(directory.place(u), directory.place(v));
  }

  private double within(int entry, double angle) {
    return CellDirectory.within(directory.place(angle), CellDirectory.perPlace(entry));
  }

  private static int offset(int entry) {
    return FIRST + CellDirectory.cell(entry) * ChebyshevCell.COEFFICIENTS;
  }

  /** Value at a place whose entry was found. */
  double value(int entry, double u, double v) {
    return ChebyshevCell.value(coefficients, offset(entry), within(entry, u), within(entry, v));
  }

  /** Slopes at a place whose entry was found, to out[1] and out[2]. */
  void slopes(int entry, double u, double v, double[] out) {
    ChebyshevCell.slopes(coefficients, offset(entry), within(entry, u), within(entry, v), out);
    double scale = directory.perAngle(entry);
    out[1] *= scale;
    out[2] *= scale;
  }

  /** Value and slopes at a place whose entry was found. */
  void gradient(int entry, double u, double v, double[] out) {
    slopes(entry, u, v, out);
    out[0] = value(entry, u, v);
  }

  /** Value, slopes and second derivatives at a place whose entry was found. */
  void curvature(int entry, double u, double v, double[] out) {
    double scale = directory.perAngle(entry);
    ChebyshevCell.curvature(coefficients, offset(entry), within(entry, u), within(entry, v), out);
    out[1] *= scale;
    out[2] *= scale;
    double square = scale * scale;
    out[3] *= square;
    out[4] *= square;
    out[5] *= square;
  }
}
