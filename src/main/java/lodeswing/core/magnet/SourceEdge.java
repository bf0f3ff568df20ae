package lodeswing.core.magnet;

/** Where a source's outside potential is singular: its edges, or the point of a dipole. */
final class SourceEdge {

  private SourceEdge() {}

  /** Distance of a point in the source's frame from the nearest such place, or less [m]. */
  static double distance(Magnet magnet, double x, double y, double z) {
    double rho = Math.sqrt(x * x + y * y);
    double height = Math.abs(Math.abs(z) - magnet.halfHeight());
    if (magnet instanceof Disc disc) {
      return hypotenuse(rho - disc.radius(), height);
    }
    if (magnet instanceof Ring ring) {
      double nearer =
          Math.min(Math.abs(rho - ring.outerRadius()), Math.abs(rho - ring.innerRadius()));
      return hypotenuse(nearer, height);
    }
    if (magnet instanceof Block block) {
      return rim(Math.abs(x) - block.length() / 2, Math.abs(y) - block.width() / 2, height);
    }
    return hypotenuse(rho, z);
  }

  /** Distance from a rectangle's rim, given the overhang in both directions and the height. */
  private static double rim(double overX, double overY, double height) {
    double across;
    if (overX > 0 || overY > 0) {
      across = hypotenuse(Math.max(overX, 0), Math.max(overY, 0));
    } else {
      across = Math.min(-overX, -overY);
    }
    return hypotenuse(across, height);
  }

  private static double hypotenuse(double a, double b) {
    return Math.sqrt(a * a + b * b);
  }
}
