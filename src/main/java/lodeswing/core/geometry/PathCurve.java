package lodeswing.core.geometry;

import java.util.Arrays;

/**
 * A path in plan as a smooth curve: places and velocities at knots, and between two knots the cubic
 * that has both places and both velocities (Hermite's interpolation). Immutable.
 */
public final class PathCurve {

  /** Knots at which a piece of a thinned curve is tried at most, so that thinning stays linear. */
  private static final int TRIED = 64;

  private final double[] t;
  private final double[] x;
  private final double[] y;
  private final double[] vx;
  private final double[] vy;

  /**
   * A curve through knots.
   *
   * @param t times, strictly rising, one or more
   * @param columns x, y, vx, vy at each time, in one unit of length; all arrays are copied
   * @throws IllegalArgumentException where the arrays differ in length or are empty, a value is not
   *     finite, or the times do not rise
   */
  public PathCurve(double[] t, double[]... columns) {
    if (t.length == 0 || columns.length != 4) {
      throw new IllegalArgumentException("A curve has knots of a time and four values.");
    }
    for (double[] column : columns) {
      if (column.length != t.length || !Arrays.stream(column).allMatch(Double::isFinite)) {
        throw new IllegalArgumentException("A curve has columns of one length, all finite.");
      }
    }
    for (int i = 0; i < t.length; i++) {
      if (!Double.isFinite(t[i]) || (i > 0 && !(t[i] > t[i - 1]))) {
        throw new IllegalArgumentException("The times of a curve rise; knot " + i + " does not.");
      }
    }
    this.t = t.clone();
    x = columns[0].clone();
    y = columns[1].clone();
    vx = columns[2].clone();
    vy = columns[3].clone();
  }

  /** How many knots there are. */
  public int count() {
    return t.length;
  }

  /** Time of knot i. */
  public double t(int i) {
    return t[i];
  }

  /** x of knot i. */
  public double x(int i) {
    return x[i];
  }

  /** y of knot i. */
  public double y(int i) {
    return y[i];
  }

  /** Velocity along x at knot i. */
  public double vx(int i) {
    return vx[i];
  }

  /** Velocity along y at knot i. */
  public double vy(int i) {
    return vy[i];
  }

  /** Time of the last knot. */
  public double ends() {
    return t[t.length - 1];
  }

  /**
   * Place and velocity at a time; the nearest end's place, at rest, outside the curve.
   *
   * @param out receives x, y, vx, vy
   */
  public void at(double time, double[] out) {
    int place = Arrays.binarySearch(t, time);
    int knot = place >= 0 ? place : Math.max(0, Math.min(t.length - 1, -place - 2));
    if (place >= 0 || knot == t.length - 1 || time < t[0]) {
      out[0] = x[knot];
      out[1] = y[knot];
      out[2] = place >= 0 ? vx[knot] : 0;
      out[3] = place >= 0 ? vy[knot] : 0;
      return;
    }
    between(knot, knot + 1, time, out);
  }

  /**
   * The curve through fewer of its knots.
   *
   * @param tolerance greatest distance between the two curves at a time, as seen at the knots left
   *     out (at 64 of them where a piece spans more) and halfway to the next
   */
  public PathCurve thinned(double tolerance) {
    int[] kept = new int[t.length];
    int size = 1;
    int from = 0;
    while (from < t.length - 1) {
      int to = from + 1;
      while (to + 1 < t.length && fits(from, to + 1, tolerance)) {
        to++;
      }
      kept[size++] = to;
      from = to;
    }
    int[] all = Arrays.copyOf(kept, size);
    return new PathCurve(pick(t, all), pick(x, all), pick(y, all), pick(vx, all), pick(vy, all));
  }

  private static double[] pick(double[] values, int[] kept) {
    return Arrays.stream(kept).mapToDouble(i -> values[i]).toArray();
  }

  /** Whether one piece can stand for all between two knots. */
  private boolean fits(int from, int to, double tolerance) {
    double[] piece = new double[4];
    double[] exact = new double[4];
    int stride = 1 + (to - from - 1) / TRIED;
    for (int i = to - 1; i >= from; i -= stride) {
      between(from, to, t[i], piece);
      if (!(Math.hypot(piece[0] - x[i], piece[1] - y[i]) <= tolerance)) {
        return false;
      }
      double half = 0.5 * (t[i] + t[i + 1]);
      between(from, to, half, piece);
      between(i, i + 1, half, exact);
      if (!(Math.hypot(piece[0] - exact[0], piece[1] - exact[1]) <= tolerance)) {
        return false;
      }
    }
    return true;
  }

  private void between(int a, int b, double time, double[] out) {
    double h = t[b] - t[a];
    double s = (time - t[a]) / h;
    out[0] = HermiteCubic.value(x[a], h * vx[a], x[b], h * vx[b], s);
    out[1] = HermiteCubic.value(y[a], h * vy[a], y[b], h * vy[b], s);
    out[2] = HermiteCubic.slope(x[a], h * vx[a], x[b], h * vx[b], s) / h;
    out[3] = HermiteCubic.slope(y[a], h * vy[a], y[b], h * vy[b], s) / h;
  }
}
