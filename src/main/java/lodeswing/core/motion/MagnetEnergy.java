package lodeswing.core.motion;

import lodeswing.core.magnet.BobEnergy;
import lodeswing.core.suspension.PullLine;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * The exact energy of a bob magnet over the two angles: the pose that the suspension gives it, and
 * the field of the plate's magnets over its faces.
 *
 * <p>With t the direction down the bar, ex = dt/dbeta and ey the direction of growing alpha,
 *
 * <pre>
 * c         = (0, 0, H) + d (0, sin(alpha), -cos(alpha)) + s_b t
 * dU/dbeta  = -s_b F.ex + T.ey
 * dU/dalpha = -(d + s_b cos(beta)) F.ey - T_x
 * </pre>
 *
 * since growing beta turns the bob about -ey and growing alpha about +x. Second derivatives are
 * central differences of these, of fourth order. Costly: tables are made from it. Immutable; safe
 * for several threads; allocates two small arrays a call.
 *
 * <p>Source: the kinematics of the two crossed axes, own derivation, tested against differences.
 */
public final class MagnetEnergy implements AngleEnergy {

  /** Step of the differences for second derivatives [rad]: balances h^4 against rounding over h. */
  private static final double STEP = 1e-3;

  private final BobEnergy energy;
  private final double axisHeight;
  private final double offset;
  private final double bobArm;

  /**
   * The energy of a bob magnet on a suspension.
   *
   * @param energy energy over poses
   * @param body the suspended body
   * @param axisHeight height of the upper axis over the plate [m]
   */
  public MagnetEnergy(BobEnergy energy, TwoAxisBody body, double axisHeight) {
    this.energy = energy;
    this.axisHeight = axisHeight;
    this.offset = body.axisOffset();
    this.bobArm = body.bobArm();
  }

  @Override
  public double value(double beta, double alpha) {
    double[] pose = pose(beta, alpha);
    return energy.energy(pose, new double[BobEnergy.WORK_LENGTH]);
  }

  @Override
  public void gradient(double beta, double alpha, double[] out) {
    double[] pose = pose(beta, alpha);
    double[] work = new double[BobEnergy.WORK_LENGTH];
    double u = energy.energyAndLoad(pose, work);
    double alongX = work[0] * pose[3] + work[1] * pose[4] + work[2] * pose[5];
    double alongY = work[1] * pose[7] + work[2] * pose[8];
    double turnY = work[4] * pose[7] + work[5] * pose[8];
    out[0] = u;
    out[1] = turnY - bobArm * alongX;
    out[2] = -(offset + bobArm * StrictMath.cos(beta)) * alongY - work[3];
  }

  @Override
  public void curvature(double beta, double alpha, double[] out) {
    double[] near = new double[3];
    double[] bend = new double[4];
    for (int axis = 0; axis < 2; axis++) {
      for (int k = -2; k <= 2; k++) {
        if (k == 0) {
          continue;
        }
        double weight = (k * k == 1 ? 8 : -1) * Integer.signum(k) / (12 * STEP);
        gradient(axis == 0 ? beta + k * STEP : beta, axis == 0 ? alpha : alpha + k * STEP, near);
        bend[2 * axis] += weight * near[1];
        bend[2 * axis + 1] += weight * near[2];
      }
    }
    gradient(beta, alpha, out);
    out[3] = bend[0];
    out[4] = 0.5 * (bend[1] + bend[2]);
    out[5] = bend[3];
  }

  /**
   * Force of the plate on the bob along the support's pull, positive away from the support [N].
   *
   * @param line the line along which the support pulls
   */
  public AxialForce axialForce(PullLine line) {
    return (beta, alpha) -> {
      double[] pose = pose(beta, alpha);
      double[] work = new double[BobEnergy.WORK_LENGTH];
      energy.energyAndLoad(pose, work);
      return switch (line) {
        case ALONG_BAR -> work[0] * pose[9] + work[1] * pose[10] + work[2] * pose[11];
        case BETWEEN_AXES -> work[1] * pose[8] - work[2] * pose[7];
      };
    };
  }

  private double[] pose(double beta, double alpha) {
    double sb = StrictMath.sin(beta);
    double cb = StrictMath.cos(beta);
    double sa = StrictMath.sin(alpha);
    double ca = StrictMath.cos(alpha);
    double radius = offset + bobArm * cb;
    return new double[] {
      bobArm * sb,
      radius * sa,
      axisHeight - radius * ca, // centre
      cb,
      -sb * sa,
      sb * ca, // ex
      0,
      ca,
      sa, // ey
      sb,
      cb * sa,
      -cb * ca // t
    };
  }
}
