package lodeswing.core.motion;

/** Where a table of two angles must hold. */
public interface Region {

  /** Everywhere. */
  Region EVERYWHERE =
      new Region() {
        @Override
        public boolean matters(double u, double v, double half) {
          return true;
        }

        @Override
        public boolean allMatters(double u, double v, double half) {
          return true;
        }
      };

  /**
   * Whether any place of a square matters.
   *
   * @param u its middle [rad]
   * @param v its middle [rad]
   * @param half half its side [rad], 0 for a place
   */
  boolean matters(double u, double v, double half);

  /**
   * Whether the function is smooth all over a square, in that every place of it can be reached.
   *
   * @param u its middle [rad]
   * @param v its middle [rad]
   * @param half half its side [rad]
   */
  boolean allMatters(double u, double v, double half);
}
