package lodeswing.analysis.swingcount;

import lodeswing.core.suspension.TwoAxisBody;

/** Along which of the plate's axes the bob swung. */
public enum Along {
  /** Along x: about the lower axis, the knot of a Y cord. */
  X("x"),
  /** Along y: about the upper axis. */
  Y("y");

  private final String word;

  Along(String word) {
    this.word = word;
  }

  /** The word for programs. */
  public String word() {
    return word;
  }

  /** Distance of the bob magnet's centre from the axis that the swing turns about [m]. */
  public double arm(TwoAxisBody body) {
    return this == X ? body.bobArm() : body.axisOffset() + body.bobArm();
  }

  /** Angular rate of the small swing without loss [rad/s]. */
  double rate(TwoAxisBody body, double gravity) {
    return this == X ? body.rateX(gravity) : body.rateY(gravity);
  }

  /**
   * What of a force over speed at the bob is the rate gamma of the small swing [1/(kg)]: arm^2 over
   * the moment of inertia.
   */
  double leverage(TwoAxisBody body) {
    double inertia = this == X ? body.swingInertia() : body.upperInertia(0, 1);
    return arm(body) * arm(body) / inertia;
  }
}
