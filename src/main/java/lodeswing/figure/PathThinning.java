package lodeswing.figure;

import java.util.Arrays;

/**
 * Leaves samples of a path out so that linear interpolation in time between the kept ones stays
 * within a tolerance of every sample left out.
 *
 * <p>One pass, no allocation but the answer: from the last kept sample each later one allows only
 * the mean velocities that pass it within the tolerance. The allowed set is held as a rectangle,
 * the intersection of squares inscribed in the exact discs, so the bound is proven and the work
 * linear. A sample is kept when the next one's own mean velocity leaves that set.
 *
 * <p>The idea of intersecting cones: Sklansky and Gonzalez, Fast polygonal approximation of
 * digitized curves, Pattern Recognition 12 (1980), here in time and with two coordinates.
 */
public final class PathThinning {
  private PathThinning() {}

  /**
   * Which samples to keep.
   *
   * @param t times, strictly rising
   * @param x first coordinate at each time, finite
   * @param y second coordinate at each time, finite
   * @param tolerance greatest distance of a sample left out from its interpolated place, in the
   *     coordinates' unit, 0 or more
   * @return rising indices, the first and the last sample always among them
   * @throws IllegalArgumentException where the arrays differ in length, a value is not finite, the
   *     times do not rise or the tolerance is negative
   */
  public static int[] indices(double[] t, double[] x, double[] y, double tolerance) {
    check(t, x, y, tolerance);
    int count = t.length;
    int[] kept = new int[count];
    if (count == 0) {
      return kept;
    }
    int size = 1;
    // A hair less than the inscribed square, so that rounding cannot cross the bound.
    double half = tolerance * Math.sqrt(0.5) * (1 - 1e-9);
    int from = 0;
    double lowX = Double.NEGATIVE_INFINITY;
    double highX = Double.POSITIVE_INFINITY;
    double lowY = Double.NEGATIVE_INFINITY;
    double highY = Double.POSITIVE_INFINITY;
    for (int i = 1; i < count; i++) {
      double span = t[i] - t[from];
      double meanX = (x[i] - x[from]) / span;
      double meanY = (y[i] - y[from]) / span;
      if (!(meanX >= lowX && meanX <= highX && meanY >= lowY && meanY <= highY)) {
        from = i - 1;
        kept[size++] = from;
        span = t[i] - t[from];
        meanX = (x[i] - x[from]) / span;
        meanY = (y[i] - y[from]) / span;
        lowX = Double.NEGATIVE_INFINITY;
        highX = Double.POSITIVE_INFINITY;
        lowY = Double.NEGATIVE_INFINITY;
        highY = Double.POSITIVE_INFINITY;
      }
      double reach = half / span;
      lowX = Math.max(lowX, meanX - reach);
      highX = Math.min(highX, meanX + reach);
      lowY = Math.max(lowY, meanY - reach);
      highY = Math.min(highY, meanY + reach);
    }
    if (count > 1) {
      kept[size++] = count - 1;
    }
    return Arrays.copyOf(kept, size);
  }

  static void check(double[] t, double[] x, double[] y, double tolerance) {
    if (t.length != x.length || t.length != y.length) {
      throw new IllegalArgumentException("A path needs as many times as x and y.");
    }
    if (!(tolerance >= 0)) {
      throw new IllegalArgumentException("A tolerance is 0 or more.");
    }
    for (int i = 0; i < t.length; i++) {
      if (!Double.isFinite(t[i]) || !Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
        throw new IllegalArgumentException("Sample " + i + " of the path is not finite.");
      }
      if (i > 0 && !(t[i] > t[i - 1])) {
        throw new IllegalArgumentException("The times of a path rise; sample " + i + " does not.");
      }
    }
  }
}
