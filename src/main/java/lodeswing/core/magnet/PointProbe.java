package lodeswing.core.magnet;

import static lodeswing.core.magnet.Work.FIELD;
import static lodeswing.core.magnet.Work.POSE;
import static lodeswing.core.magnet.Work.SUM;

/**
 * A bob as a point dipole at its centre, exact for a sphere too: U = -m . B, torque m x B, force (m
 * . grad) B.
 *
 * <p>A field that is harmonic over a sphere has its centre's value as its mean there, so a
 * uniformly magnetised sphere feels what a dipole feels (J. D. Jackson, Classical Electrodynamics,
 * 3rd ed. (1999), section 4.1). The derivative along m is a central difference of order 10 with a
 * step of a thirtieth of the distance to the source's nearest edge: its error stays below 1e-10.
 */
record PointProbe(double moment) implements BobProbe {

  private static final double STEP = 1.0 / 30;

  /**
   * Weights of the central first difference of order 10; B. Fornberg, Math. Comp. 51 (1988) 699.
   */
  private static final double[] DIFFERENCE = {5.0 / 6, -5.0 / 21, 5.0 / 84, -5.0 / 504, 1.0 / 1260};

  @Override
  public double energy(SourceKernel source, double[] work) {
    source.field(work[POSE], work[POSE + 1], work[POSE + 2], work);
    return -moment
        * (work[POSE + 9] * work[FIELD]
            + work[POSE + 10] * work[FIELD + 1]
            + work[POSE + 11] * work[FIELD + 2]);
  }

  @Override
  public double energyAndLoad(SourceKernel source, double[] work) {
    double x = work[POSE];
    double y = work[POSE + 1];
    double z = work[POSE + 2];
    double tx = work[POSE + 9];
    double ty = work[POSE + 10];
    double tz = work[POSE + 11];
    double step = STEP * source.edgeDistance(x, y, z);
    double fx = 0;
    double fy = 0;
    double fz = 0;
    for (int k = -5; k <= 5; k++) {
      if (k == 0) {
        continue;
      }
      double s = k * step;
      source.field(x + s * tx, y + s * ty, z + s * tz, work);
      double weight = k > 0 ? DIFFERENCE[k - 1] : -DIFFERENCE[-k - 1];
      fx += weight * work[FIELD];
      fy += weight * work[FIELD + 1];
      fz += weight * work[FIELD + 2];
    }
    double perStep = moment / step;
    work[SUM] = perStep * fx;
    work[SUM + 1] = perStep * fy;
    work[SUM + 2] = perStep * fz;
    double energy = energy(source, work);
    work[SUM + 3] = moment * (ty * work[FIELD + 2] - tz * work[FIELD + 1]);
    work[SUM + 4] = moment * (tz * work[FIELD] - tx * work[FIELD + 2]);
    work[SUM + 5] = moment * (tx * work[FIELD + 1] - ty * work[FIELD]);
    return energy;
  }
}
