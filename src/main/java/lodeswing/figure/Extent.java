package lodeswing.figure;

/** Grows to the smallest upright box that holds what it is given. */
final class Extent {
  private double left = Double.POSITIVE_INFINITY;
  private double right = Double.NEGATIVE_INFINITY;
  private double bottom = Double.POSITIVE_INFINITY;
  private double top = Double.NEGATIVE_INFINITY;

  void add(double x, double y, double reach) {
    left = Math.min(left, x - reach);
    right = Math.max(right, x + reach);
    bottom = Math.min(bottom, y - reach);
    top = Math.max(top, y + reach);
  }

  /** Grows to hold another box with a margin about it. */
  void add(Extent other, double margin) {
    add(other.left, other.bottom, margin);
    add(other.right, other.top, margin);
  }

  /** The box itself, where it has an extent. */
  ViewBox box() {
    return new ViewBox(left, bottom, right - left, top - bottom);
  }

  /** Greatest distance of the box's sides from the origin. */
  double fromOrigin() {
    return Math.max(
        Math.max(Math.abs(left), Math.abs(right)), Math.max(Math.abs(bottom), Math.abs(top)));
  }

  /** The box with a margin, a share of its longer side; never thinner than a quarter of that. */
  ViewBox framed(double share) {
    double side = Math.max(right - left, top - bottom);
    if (!(side > 0)) {
      side = 1;
    }
    double width = Math.max(right - left, side / 4) + 2 * share * side;
    double height = Math.max(top - bottom, side / 4) + 2 * share * side;
    return new ViewBox(
        (left + right) / 2 - width / 2, (bottom + top) / 2 - height / 2, width, height);
  }
}
