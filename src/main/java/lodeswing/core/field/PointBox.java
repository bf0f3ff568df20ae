package lodeswing.core.field;

/**
 * The least upright box that holds a block's points.
 *
 * @param left least x [m], and so on
 */
record PointBox(double left, double right, double front, double back, double bottom, double top) {

  static PointBox of(double[] slots) {
    double[] least = new double[3];
    double[] most = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      int from = axis * FieldSlots.POINTS;
      least[axis] = slots[from];
      most[axis] = slots[from];
      for (int i = 1; i < FieldSlots.POINTS; i++) {
        least[axis] = Math.min(least[axis], slots[from + i]);
        most[axis] = Math.max(most[axis], slots[from + i]);
      }
    }
    return new PointBox(least[0], most[0], least[1], most[1], least[2], most[2]);
  }

  /** Least distance of a place on an axis from an interval. */
  private static double apart(double from, double to, double at) {
    return Math.max(0, Math.max(from - at, at - to));
  }

  /** Greatest distance of a place on an axis from an interval. */
  private static double reach(double from, double to, double at) {
    return Math.max(Math.abs(from - at), Math.abs(to - at));
  }

  /** Least distance from an upright axis. */
  double leastAcross(double x, double y) {
    return Math.hypot(apart(left, right, x), apart(front, back, y));
  }

  /** Greatest distance from an upright axis. */
  double mostAcross(double x, double y) {
    return Math.hypot(reach(left, right, x), reach(front, back, y));
  }

  /** Least distance in height. */
  double leastAlong(double z) {
    return apart(bottom, top, z);
  }

  /** Greatest distance in height. */
  double mostAlong(double z) {
    return reach(bottom, top, z);
  }
}
