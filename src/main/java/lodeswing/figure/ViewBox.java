package lodeswing.figure;

/**
 * The part of the model's plane that a drawing shows, y upwards.
 *
 * @param left least x [model units: metres on the bench]
 * @param bottom least y
 * @param width extent in x, positive
 * @param height extent in y, positive
 */
public record ViewBox(double left, double bottom, double width, double height) {

  /**
   * @throws IllegalArgumentException where a figure is not finite or an extent not positive
   */
  public ViewBox {
    if (!Double.isFinite(left) || !Double.isFinite(bottom)) {
      throw new IllegalArgumentException("A view box needs finite corners.");
    }
    if (!(width > 0 && height > 0) || Double.isInfinite(width) || Double.isInfinite(height)) {
      throw new IllegalArgumentException("A view box needs a positive, finite extent.");
    }
  }

  /** Greatest x. */
  public double right() {
    return left + width;
  }

  /** Greatest y. */
  public double top() {
    return bottom + height;
  }

  /** Whether the point lies in the box, its edges included. */
  public boolean contains(double x, double y) {
    return x >= left && x <= right() && y >= bottom && y <= top();
  }
}
