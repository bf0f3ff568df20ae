package lodeswing.core.motion;

import lodeswing.core.suspension.TwoAxisBody;

/**
 * Potential energy of a rig over its two angles: the body's weight and the magnets.
 *
 * <p>V = g [(M d + S1)(1 - cos(alpha)) + S1 cos(alpha)(1 - cos(beta))] + U(beta, alpha), zero where
 * the body hangs straight down without magnets. Only +, -, *, /, fma and {@link Angles} are used
 * beside what U uses, in one fixed order.
 *
 * @param body what hangs
 * @param gravity [m/s^2]
 * @param magnets energy U of the bob magnet over the plate
 */
public record RigPotential(TwoAxisBody body, double gravity, AngleEnergy magnets)
    implements AngleEnergy {

  /** The potential of a rig over a bare plate. */
  static RigPotential bare(TwoAxisBody body, double gravity) {
    return new RigPotential(body, gravity, new NoEnergy());
  }

  /** Moment of the weight about the upper axis with the bar straight, over g [kg m]. */
  private double hung(double cosine) {
    return Math.fma(body.firstMoment(), cosine, body.mass() * body.axisOffset());
  }

  /** 1 - cos taken as sin^2/(1 + cos), so that small swings keep their digits. */
  private double weight(double s0, double c0, double s1, double c1) {
    double rise0 = s0 * s0 / (1 + c0);
    double rise1 = s1 * s1 / (1 + c1);
    return gravity * Math.fma(hung(1), rise1, body.firstMoment() * c1 * rise0);
  }

  @Override
  public double value(double beta, double alpha) {
    return magnets.value(beta, alpha) + weight(beta, alpha);
  }

  private double weight(double beta, double alpha) {
    double s0 = Angles.sine(beta);
    double s1 = Angles.sine(alpha);
    return weight(s0, Angles.cosine(beta, s0), s1, Angles.cosine(alpha, s1));
  }

  @Override
  public void gradient(double beta, double alpha, double[] out) {
    magnets.gradient(beta, alpha, out);
    addWeight(beta, alpha, out, 0);
  }

  @Override
  public void slopes(double beta, double alpha, double[] out) {
    magnets.slopes(beta, alpha, out);
    addWeight(beta, alpha, out, 0);
  }

  /**
   * Adds the weight's energy and its slopes.
   *
   * @param out three numbers from an offset on
   */
  void addWeight(double beta, double alpha, double[] out, int offset) {
    double s0 = Angles.sine(beta);
    double c0 = Angles.cosine(beta, s0);
    double s1 = Angles.sine(alpha);
    double c1 = Angles.cosine(alpha, s1);
    out[offset] += weight(s0, c0, s1, c1);
    out[offset + 1] = Math.fma(gravity * body.firstMoment() * c1, s0, out[offset + 1]);
    out[offset + 2] = Math.fma(gravity * s1, hung(c0), out[offset + 2]);
  }

  @Override
  public void curvature(double beta, double alpha, double[] out) {
    magnets.curvature(beta, alpha, out);
    addWeight(beta, alpha, out, 0);
    double s0 = Angles.sine(beta);
    double c0 = Angles.cosine(beta, s0);
    double s1 = Angles.sine(alpha);
    double c1 = Angles.cosine(alpha, s1);
    double lever = gravity * body.firstMoment();
    out[3] = Math.fma(lever * c1, c0, out[3]);
    out[4] = Math.fma(-lever * s1, s0, out[4]);
    out[5] = Math.fma(gravity * c1, hung(c0), out[5]);
  }
}
