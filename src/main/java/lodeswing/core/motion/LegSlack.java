package lodeswing.core.motion;

import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * Slack of a cord, or of a Y cord's leg and upper cords: margin in newtons.
 *
 * <p>The bob is a point mass at l, u the unit vector from knot to bob. The leg's pull is -M (a -
 * g).u + F.u; from the two rotations, -a.u = l (beta'^2 + cos(beta)^2 alpha'^2) + d cos(beta)
 * alpha'^2, and g.u = g cos(beta) cos(alpha). Losses have no component along u. The margin is the
 * lesser of this pull and of the slackest upper cord's share taken at the pull M g: positive
 * exactly while every cord pulls.
 *
 * <p>The terms in the speeds are squares with factors at least 0 (cos(beta) is positive in the
 * range used) and the share depends on the place alone, so the least margin is the one at zero
 * speed.
 */
final class LegSlack implements Limit {

  private final Suspension suspension;
  private final AxialForce axialForce;
  private final double offset;
  private final double mass;
  private final double arm;
  private final double weight;

  LegSlack(Suspension suspension, double gravity, AxialForce axialForce) {
    this.suspension = suspension;
    this.axialForce = axialForce;
    TwoAxisBody body = suspension.body();
    offset = body.axisOffset();
    mass = body.mass();
    arm = body.centreArm();
    weight = mass * gravity;
  }

  @Override
  public Kind kind() {
    return Kind.SUSPENSION_SLACK;
  }

  @Override
  public double margin(double[] state) {
    return marginAt(state[0], state[1], state[2], state[3]);
  }

  @Override
  public double leastMargin(double q0, double q1) {
    return marginAt(q0, q1, 0, 0);
  }

  private double marginAt(double q0, double q1, double v0, double v1) {
    double s0 = Angles.sine(q0);
    double c0 = Angles.cosine(q0, s0);
    double c1 = Angles.cosine(q1, Angles.sine(q1));
    double turning = arm * v0 * v0 + (arm * c0 + offset) * c0 * v1 * v1;
    double pull = mass * turning + weight * c0 * c1 + axialForce.along(q0, q1);
    return Math.min(pull, weight * suspension.slackestShare(s0, c0));
  }
}
