package lodeswing.core.magnet;

import static lodeswing.core.magnet.Work.FIELD;
import static lodeswing.core.magnet.Work.SUM;

/** The sums of force and torque over the charges on the bob's faces. */
final class FaceLoad {

  private FaceLoad() {}

  static void clear(double[] work) {
    for (int i = 0; i < 6; i++) {
      work[SUM + i] = 0;
    }
  }

  /** Adds the field at {@link Work#FIELD}, acting at (dx, dy, dz) from the centre. */
  static void add(double dx, double dy, double dz, double weight, double[] work) {
    double bx = weight * work[FIELD];
    double by = weight * work[FIELD + 1];
    double bz = weight * work[FIELD + 2];
    work[SUM] += bx;
    work[SUM + 1] += by;
    work[SUM + 2] += bz;
    work[SUM + 3] += dy * bz - dz * by;
    work[SUM + 4] += dz * bx - dx * bz;
    work[SUM + 5] += dx * by - dy * bx;
  }
}
