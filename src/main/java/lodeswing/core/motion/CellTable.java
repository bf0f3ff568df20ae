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
 * at the finest cut has no polynomial, nor has one in which nothing matters: there the caller asks
 * the exact function.
 *
 * <p>2. A directory leads from a place to its cell in two looks, so an evaluation costs the same
 * everywhere and for any number of magnets: each coarse cell has its own net, as fine as the finest
 * cut within it.
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

  private static final int NO_CELL = -1;

  /** A split that gains less than this has met the source's own noise: the parent's error stays. */
  private static final double LEAST_GAIN = 3;

  /** Errors above this many tolerances are never taken for noise. */
  private static final double MOST_NOISE = 30;

  private static final double[] NODES =
      IntStream.range(0, ChebyshevCell.POINTS).mapToDouble(ChebyshevCell::node).toArray();

  private static final double[] CHECK = {-1, -StrictMath.sqrt(0.5), 0, StrictMath.sqrt(0.5), 1};

  private final double halfWidth;
  private final int depth;
  private final int across;
  private final double perAngle;
  private final int[] nets;
  private final int[] directory;
  private final double[] frames;
  private final double[] coefficients;
  private final double valueError;
  private final double slopeError;

  private CellTable(double halfWidth, int depth, List<Cell> leaves) {
    this.halfWidth = halfWidth;
    this.depth = depth;
    this.across = COARSE << depth;
    this.perAngle = across / (2 * halfWidth);
    int[] finest = new int[COARSE * COARSE];
    for (Cell cell : leaves) {
      finest[cell.coarse()] = Math.max(finest[cell.coarse()], cell.level);
    }
    this.nets = new int[2 * COARSE * COARSE];
    int places = 0;
    for (int k = 0; k < finest.length; k++) {
      nets[2 * k] = places;
      nets[2 * k + 1] = finest[k];
      places += 1 << (2 * finest[k]);
    }
    this.directory = new int[places];
    Arrays.fill(directory, NO_CELL);
    int held = Math.toIntExact(leaves.stream().filter(c -> c.holds).count());
    this.frames = new double[held * 3];
    this.coefficients = new double[Math.multiplyExact(held, ChebyshevCell.COEFFICIENTS)];
    double worstValue = 0;
    double worstSlope = 0;
    int index = 0;
    for (Cell cell : leaves) {
      if (cell.holds) {
        enter(cell, index);
        worstValue = Math.max(worstValue, cell.valueError);
        worstSlope = Math.max(worstSlope, cell.slopeError);
        index++;
      }
    }
    this.valueError = worstValue;
    this.slopeError = worstSlope;
  }

  private void enter(Cell cell, int index) {
    frames[index * 3] = cell.u0;
    frames[index * 3 + 1] = cell.v0;
    frames[index * 3 + 2] = 1 / cell.half;
    System.arraycopy(
        cell.coefficients,
        0,
        coefficients,
        index * ChebyshevCell.COEFFICIENTS,
        ChebyshevCell.COEFFICIENTS);
    int start = nets[2 * cell.coarse()];
    int fineness = nets[2 * cell.coarse() + 1];
    int span = 1 << (fineness - cell.level);
    int mask = (1 << cell.level) - 1;
    int column = (cell.j & mask) * span;
    for (int i = (cell.i & mask) * span, k = 0; k < span; k++, i++) {
      int row = start + (i << fineness) + column;
      Arrays.fill(directory, row, row + span, index);
    }
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
        if (cell.holds || cell.needless || cell.level == DEEPEST) {
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
        + (long) Integer.BYTES * (nets.length + directory.length);
  }

  /** Share of the places of a square about the middle that have no cell. */
  double uncovered(double half) {
    int to = Math.min(across, (int) Math.ceil((half + halfWidth) * perAngle));
    int from = across - to;
    long none = 0;
    for (int i = from; i < to; i++) {
      for (int j = from; j < to; j++) {
        none += at(i, j) == NO_CELL ? 1 : 0;
      }
    }
    return none / ((double) (to - from) * (to - from));
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
    return at(i, j);
  }

  private int at(int i, int j) {
    int net = 2 * ((i >> depth) * COARSE + (j >> depth));
    int fineness = nets[net + 1];
    int coarser = depth - fineness;
    int mask = (1 << fineness) - 1;
    int row = (i >> coarser) & mask;
    return directory[nets[net] + (row << fineness) + ((j >> coarser) & mask)];
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
    private boolean needless;
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

    /** The coarse cell that holds it. */
    int coarse() {
      return (i >> level) * COARSE + (j >> level);
    }

    void fit(Source source, double valueTolerance, double slopeTolerance) {
      if (!source.matters(u0, v0, half)) {
        needless = true;
        return;
      }
      double[] asked = new double[3 * ChebyshevCell.COEFFICIENTS];
      double[] values = new double[ChebyshevCell.COEFFICIENTS];
      source.grid(places(u0, NODES), places(v0, NODES), false, asked);
      for (int k = 0; k < values.length; k++) {
        values[k] = asked[3 * k];
      }
      ChebyshevCell.interpolate(values, coefficients, 0);
      boolean slopes = slopeTolerance < Double.POSITIVE_INFINITY;
      source.grid(places(u0, CHECK), places(v0, CHECK), slopes, asked);
      double[] found = new double[3];
      double worstValue = 0;
      double worstSlope = 0;
      for (int k = 0; k < CHECK.length * CHECK.length; k++) {
        ChebyshevCell.gradient(
            coefficients, 0, CHECK[k / CHECK.length], CHECK[k % CHECK.length], found);
        if (slopes) {
          worstSlope = Math.max(worstSlope, 2 * Math.abs(found[1] / half - asked[3 * k + 1]));
          worstSlope = Math.max(worstSlope, 2 * Math.abs(found[2] / half - asked[3 * k + 2]));
        }
        worstValue = Math.max(worstValue, 2 * Math.abs(found[0] - asked[3 * k]));
        relativeError = Math.max(worstValue / valueTolerance, worstSlope / slopeTolerance);
        // The negated comparison also catches NaN.
        if (!(relativeError <= MOST_NOISE)) {
          // Not measured to the end, so that no child may take it for noise.
          relativeError = Double.POSITIVE_INFINITY;
          return;
        }
      }
      valueError = worstValue;
      slopeError = worstSlope;
      holds = relativeError <= 1 || LEAST_GAIN * relativeError > parentError;
    }

    private double[] places(double middle, double[] shares) {
      double[] places = new double[shares.length];
      for (int k = 0; k < shares.length; k++) {
        places[k] = middle + half * shares[k];
      }
      return places;
    }
  }
}
