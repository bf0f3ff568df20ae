package lodeswing.core.motion;

import lodeswing.core.loss.LossLaw;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * Torques that the losses put on the two angles of a {@link TwoAxisBody}.
 *
 * <p>Each element at s moves with s beta' and (d + s cos(beta)) alpha' at right angles, so a force
 * -(c + k |v|) v gives Q_beta = -(c + k |v|) s^2 beta' and Q_alpha = -(c + k |v|) (d + s
 * cos(beta))^2 alpha'. Friction at the pivot is a torque of constant size T against the angular
 * velocity (beta', alpha'), whose two axes are at right angles: Q = -T (beta', alpha') / w with w =
 * (beta'^2 + alpha'^2 + e^2)^(1/2), e = {@link #SMOOTHING}. Every term's power is at most 0.
 */
public final class PivotedLoss {

  /** Angular speed below which pivot friction fades linearly to zero [rad/s]. */
  public static final double SMOOTHING = 1e-4;

  private final double offset;
  private final double linear;
  private final double bobArm;
  private final double torque;
  private final double[] arms;
  private final double[] coefficients;

  PivotedLoss(TwoAxisBody body, LossLaw law) {
    offset = body.axisOffset();
    linear = law.linear();
    bobArm = body.bobArm();
    torque = law.pivotTorque();
    arms = law.drag().stream().mapToDouble(LossLaw.DragElement::arm).toArray();
    coefficients = law.drag().stream().mapToDouble(LossLaw.DragElement::coefficient).toArray();
  }

  /**
   * Writes the torques.
   *
   * @param out receives Q_beta, Q_alpha [N m]
   */
  void torques(double cosBeta, double v0, double v1, double[] out) {
    torques(linear, cosBeta, v0, v1, out);
  }

  /** Writes the torques of air drag and friction alone, which are not smooth where v is zero. */
  void edgedTorques(double cosBeta, double v0, double v1, double[] out) {
    torques(0, cosBeta, v0, v1, out);
  }

  private void torques(double linear, double cosBeta, double v0, double v1, double[] out) {
    double radius = Math.fma(bobArm, cosBeta, offset);
    double rate0 = linear * bobArm * bobArm;
    double rate1 = linear * radius * radius;
    for (int i = 0; i < arms.length; i++) {
      double s = arms[i];
      double r = Math.fma(s, cosBeta, offset);
      double w0 = s * v0;
      double w1 = r * v1;
      double push = coefficients[i] * Math.sqrt(Math.fma(w0, w0, w1 * w1));
      rate0 = Math.fma(push * s, s, rate0);
      rate1 = Math.fma(push * r, r, rate1);
    }
    double pivot = torque / Math.sqrt(Math.fma(v0, v0, Math.fma(v1, v1, SMOOTHING * SMOOTHING)));
    out[0] = -(rate0 + pivot) * v0;
    out[1] = -(rate1 + pivot) * v1;
  }

  /**
   * Writes the derivatives of the torques; none depends on alpha.
   *
   * @param out receives dQ0/dbeta, dQ0/dv0, dQ0/dv1, dQ1/dbeta, dQ1/dv0, dQ1/dv1
   */
  void derivatives(double sinBeta, double cosBeta, double v0, double v1, double[] out) {
    double radius = Math.fma(bobArm, cosBeta, offset);
    double q0b = 0;
    double q00 = -linear * bobArm * bobArm;
    double q01 = 0;
    double q1b = 2 * linear * radius * bobArm * sinBeta * v1;
    double q10 = 0;
    double q11 = -linear * radius * radius;
    for (int i = 0; i < arms.length; i++) {
      double s = arms[i];
      double r = Math.fma(s, cosBeta, offset);
      double rb = -s * sinBeta;
      double w0 = s * v0;
      double w1 = r * v1;
      double k = coefficients[i];
      double speed = Math.sqrt(Math.fma(w0, w0, w1 * w1));
      double inverse = speed > 0 ? 1 / speed : 0;
      double speedB = w1 * rb * v1 * inverse;
      double speed0 = w0 * s * inverse;
      double speed1 = w1 * r * inverse;
      q0b -= k * speedB * s * w0;
      q00 -= k * (speed0 * s * w0 + speed * s * s);
      q01 -= k * speed1 * s * w0;
      q1b -= k * (speedB * r * w1 + 2 * speed * rb * w1);
      q10 -= k * speed0 * r * w1;
      q11 -= k * (speed1 * r * w1 + speed * r * r);
    }
    double size2 = Math.fma(v0, v0, Math.fma(v1, v1, SMOOTHING * SMOOTHING));
    double pivot = torque / Math.sqrt(size2);
    double bend = pivot / size2;
    out[0] = q0b;
    out[1] = q00 - pivot + bend * v0 * v0;
    out[2] = q01 + bend * v0 * v1;
    out[3] = q1b;
    out[4] = q10 + bend * v0 * v1;
    out[5] = q11 - pivot + bend * v1 * v1;
  }

  /**
   * Force of linear loss and air drag in the direction in which beta grows [N], summed over the
   * bar.
   */
  double sideForce(double cosBeta, double v0, double v1) {
    double force = -linear * bobArm * v0;
    for (int i = 0; i < arms.length; i++) {
      double w0 = arms[i] * v0;
      double w1 = Math.fma(arms[i], cosBeta, offset) * v1;
      force -= coefficients[i] * Math.sqrt(Math.fma(w0, w0, w1 * w1)) * w0;
    }
    return force;
  }

  /** Size of the friction torque at the pivot [N m]. */
  public double pivotTorque() {
    return torque;
  }

  /** Force per speed at the bob magnet's centre [N s/m]. */
  public double linear() {
    return linear;
  }

  /** Whether any torque has an edge where the bob stops: that of air drag or of friction. */
  boolean hasEdge() {
    return torque > 0 || arms.length > 0;
  }

  /** How many points of the bar feel the air. */
  public int elements() {
    return arms.length;
  }

  /** Distance of such a point below the second axis [m]. */
  public double arm(int i) {
    return arms[i];
  }

  /** Its k = 1/2 rho C_d A [kg/m]. */
  public double coefficient(int i) {
    return coefficients[i];
  }
}
