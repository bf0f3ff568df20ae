package lodeswing.core.statistics;

/** Systems of the literature whose basins are known; each says by whom. */
final class KnownBasins {

  private KnownBasins() {}

  /** Inside or outside a circle of radius 0.7 about (0.1, 0.05): a smooth boundary. */
  static final Plane CIRCLE = (x, y) -> Math.hypot(x - 0.1, y - 0.05) < 0.7 ? 1 : 0;

  /** Three sectors that meet in one point: boundaries pairwise smooth, so not Wada. */
  static final Plane SECTORS =
      (x, y) -> (int) Math.floor((Math.atan2(y - 0.03, x - 0.02) / (2 * Math.PI) + 0.5) * 3) % 3;

  /**
   * The triadic Cantor set times a line (dimension 1 + ln 2 / ln 3), as the common boundary of
   * strips: the gap of level n that holds x bears the label n mod 2. G. Cantor 1883; its dimension
   * F. Hausdorff, Math. Ann. 79 (1919) 157.
   */
  static final Plane CANTOR_STRIPS = (x, y) -> cantorGap(x) % 2;

  /** The same with three labels in turn: every boundary point touches gaps of all levels. */
  static final Plane CANTOR_STRIPS_OF_THREE = (x, y) -> cantorGap(x) % 3;

  private static int cantorGap(double x) {
    double rest = x;
    for (int level = 0; level < 40; level++) {
      rest *= 3;
      int digit = (int) Math.floor(rest);
      if (digit == 1 || digit < 0 || digit > 2) {
        return level;
      }
      rest -= digit;
    }
    return 40;
  }

  /**
   * x -> 3 x mod 1, y -> 1.5 y + cos 2 pi x: y goes to plus or minus infinity; the boundary is a
   * Weierstrass curve of dimension 2 - ln 1.5 / ln 3. McDonald, Grebogi, Ott and Yorke, Physica D
   * 17 (1985) 125 (map and formula from memory; the dimension of Weierstrass curves is proved in K.
   * Baranski, Fractal Geometry and Stochastics V, 2015, 77, theorem 2.4).
   */
  static final Plane WEIERSTRASS =
      (x, y) -> {
        double a = x;
        double b = y;
        while (Math.abs(b) < 10) {
          b = 1.5 * b + Math.cos(2 * Math.PI * a);
          a = 3 * a - Math.floor(3 * a);
        }
        return b > 0 ? 1 : 0;
      };

  /**
   * theta -> theta + 1.32 sin 2 theta - 0.9 sin 4 theta - x sin theta, x -> -0.3 cos theta, with
   * attractors at theta = 0 and pi. Grebogi, McDonald, Ott and Yorke, Phys. Lett. A 99 (1983) 415.
   */
  static final Plane TWO_FIXED_POINTS =
      (theta, x) -> {
        double a = theta;
        double b = x;
        for (int n = 0; n < 2000; n++) {
          double next = a + 1.32 * Math.sin(2 * a) - 0.9 * Math.sin(4 * a) - b * Math.sin(a);
          b = -0.3 * Math.cos(a);
          a = next;
          double turn = Math.rint(a / Math.PI);
          double side = Math.rint(turn / 2) * 2 == turn ? -0.3 : 0.3;
          if (Math.abs(a - turn * Math.PI) < 1e-4 && Math.abs(b - side) < 1e-4) {
            return side < 0 ? 0 : 1;
          }
        }
        return LabelGrid.NO_LABEL;
      };

  /**
   * x -> a - x^2 - j y, y -> x: escape (0) or not (1). M. Henon, Comm. Math. Phys. 50 (1976) 69.
   */
  static Plane henon(double a, double j) {
    return (x, y) -> {
      double p = x;
      double q = y;
      for (int n = 0; n < 300; n++) {
        double next = a - p * p - j * q;
        q = p;
        p = next;
        if (Math.abs(p) > 100) {
          return 0;
        }
      }
      return 1;
    };
  }

  /** Newton's method for z^3 = 1: the root that is reached. A. Cayley, Am. J. Math. 2 (1879) 97. */
  static final Plane NEWTON =
      (x, y) -> {
        double a = x;
        double b = y;
        for (int n = 0; n < 200; n++) {
          double re = a * a - b * b;
          double im = 2 * a * b;
          double size = 3 * (re * re + im * im);
          a = 2 * a / 3 + re / size;
          b = 2 * b / 3 - im / size;
          for (int root = 0; root < 3; root++) {
            double angle = root * 2 * Math.PI / 3;
            if (Math.hypot(a - Math.cos(angle), b - Math.sin(angle)) < 1e-3) {
              return root;
            }
          }
        }
        return LabelGrid.NO_LABEL;
      };
}
