package lodeswing.core.motion;

import java.util.List;
import java.util.stream.IntStream;

/** A cell of a {@link CellTable} while the table is being built. */
final class CellFit {

  /** A split that gains less than this has met the source's own noise: the parent's error stays. */
  private static final double LEAST_GAIN = 3;

  /** Errors above this many tolerances are never taken for noise, nor kept at the finest cut. */
  private static final double MOST_NOISE = 30;

  private static final double[] NODES =
      IntStream.range(0, ChebyshevCell.POINTS).mapToDouble(ChebyshevCell::node).toArray();

  private static final double[] CHECK = {-1, -StrictMath.sqrt(0.5), 0, StrictMath.sqrt(0.5), 1};

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

  CellFit(int level, int i, int j, double halfWidth, double parentError) {
    this.level = level;
    this.i = i;
    this.j = j;
    this.parentError = parentError;
    this.half = halfWidth / (CellTable.COARSE << level);
    this.u0 = -halfWidth + (2 * i + 1) * half;
    this.v0 = -halfWidth + (2 * j + 1) * half;
  }

  /** The four cells that it is cut into. */
  List<CellFit> cut(double halfWidth) {
    return IntStream.range(0, 4)
        .mapToObj(
            q ->
                new CellFit(level + 1, 2 * i + (q >> 1), 2 * j + (q & 1), halfWidth, relativeError))
        .toList();
  }

  /** Whether it need not or cannot be cut again. */
  boolean settled() {
    return holds || needless || level == CellTable.DEEPEST;
  }

  /** Whether it has a polynomial that holds. */
  boolean holds() {
    return holds;
  }

  /** Twice the greatest error of the value on the check grid. */
  double valueError() {
    return valueError;
  }

  /** Twice the greatest error of a slope on the check grid. */
  double slopeError() {
    return slopeError;
  }

  /** Its square, under the table's number for it. */
  CellDirectory.Square square(int cell) {
    return new CellDirectory.Square(level, i, j, cell);
  }

  /** Copies its coefficients. */
  void copyTo(double[] all, int at) {
    System.arraycopy(coefficients, 0, all, at, ChebyshevCell.COEFFICIENTS);
  }

  void fit(CellTable.Source source, double valueTolerance, double slopeTolerance) {
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
      double u = CHECK[k / CHECK.length];
      double v = CHECK[k % CHECK.length];
      if (slopes) {
        ChebyshevCell.slopes(coefficients, 0, u, v, found);
        worstSlope = Math.max(worstSlope, 2 * Math.abs(found[1] / half - asked[3 * k + 1]));
        worstSlope = Math.max(worstSlope, 2 * Math.abs(found[2] / half - asked[3 * k + 2]));
      }
      worstValue =
          Math.max(
              worstValue, 2 * Math.abs(ChebyshevCell.value(coefficients, 0, u, v) - asked[3 * k]));
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
    boolean noise = LEAST_GAIN * relativeError > parentError;
    holds = relativeError <= 1 || noise || level == CellTable.DEEPEST;
  }

  private double[] places(double middle, double[] shares) {
    double[] places = new double[shares.length];
    for (int k = 0; k < shares.length; k++) {
      places[k] = middle + half * shares[k];
    }
    return places;
  }
}
