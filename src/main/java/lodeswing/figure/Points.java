package lodeswing.figure;

import java.util.Arrays;

/** A run of points in model units; owns its arrays. */
public final class Points {
  private final double[] x;
  private final double[] y;

  /**
   * Copies the coordinates.
   *
   * @throws IllegalArgumentException where the arrays differ in length or a value is not finite
   */
  public Points(double[] x, double[] y) {
    if (x.length != y.length) {
      throw new IllegalArgumentException("Points need as many x as y.");
    }
    for (int i = 0; i < x.length; i++) {
      if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
        throw new IllegalArgumentException("Points need finite coordinates.");
      }
    }
    this.x = x.clone();
    this.y = y.clone();
  }

  /** How many points there are. */
  public int count() {
    return x.length;
  }

  /** x of point i. */
  public double x(int i) {
    return x[i];
  }

  /** y of point i. */
  public double y(int i) {
    return y[i];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Points that && Arrays.equals(x, that.x) && Arrays.equals(y, that.y);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
  }
}
