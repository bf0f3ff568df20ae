package lodeswing.core.motion;

import lodeswing.core.suspension.TwoAxisBody;

/**
 * Lift-off of a hook from its eye: the support's pull along the line e = (0, sin(alpha),
 * -cos(alpha)) from the upper to the second axis, as a margin in newtons.
 *
 * <p>With the centre of mass at s_c below the second axis and r = d + s_c cos(beta), the pull is
 *
 * <pre>
 * N = M [r alpha'^2 + s_c (sin(beta) beta'' + cos(beta) beta'^2)] + M g cos(alpha) + F.e - sin(beta) f
 * </pre>
 *
 * with F the magnets' force and f the air's and the linear loss' force across the bar; beta'' is
 * the one of {@link BenchMotion}.
 *
 * <p>Least margin. With beta'' put in, the speeds enter as p beta'^2 + q alpha'^2 and through the
 * losses; p = M s_c cos(beta) &gt; 0 and q = M r + M s_c sin(beta) A'/(2 I), which is at least 0
 * since I &gt;= M s_c^2 and I &gt;= Ia. The linear loss adds k beta' at most, so p beta'^2 + k
 * beta' &gt;= -k^2/(4 p). An element of air drag adds D |v| |beta'| at most, and |v| |beta'| &lt;=
 * (s + r/2) beta'^2 + r/2 alpha'^2, which is taken off p and q first. Pivot friction adds M s_c
 * |sin(beta)| T/I at most. Where p or q would turn negative nothing can be relied on: minus
 * infinity.
 */
final class HookSlack implements Limit {

  private final PivotedLoss loss;
  private final AngleEnergy potential;
  private final AxialForce axialForce;
  private final double gravity;
  private final double offset;
  private final double mass;
  private final double first;
  private final double swing;
  private final double ownAxial;
  private final double bobArm;

  HookSlack(
      TwoAxisBody body,
      double gravity,
      PivotedLoss loss,
      AngleEnergy potential,
      AxialForce axialForce) {
    this.loss = loss;
    this.potential = potential;
    this.axialForce = axialForce;
    this.gravity = gravity;
    offset = body.axisOffset();
    mass = body.mass();
    first = body.firstMoment();
    swing = body.swingInertia();
    ownAxial = body.axialInertia();
    bobArm = body.bobArm();
  }

  @Override
  public Kind kind() {
    return Kind.SUSPENSION_SLACK;
  }

  @Override
  public double margin(double[] state) {
    double v0 = state[2];
    double v1 = state[3];
    double s0 = Angles.sine(state[0]);
    double c0 = Angles.cosine(state[0], s0);
    double[] torques = new double[2];
    loss.torques(c0, v0, v1, torques);
    double turning = first * c0 * v0 * v0 + upperFactor(s0, c0) * v1 * v1;
    double lossPart = s0 * (first * torques[0] / swing - loss.sideForce(c0, v0, v1));
    return still(state[0], state[1], s0) + turning + lossPart;
  }

  @Override
  public double leastMargin(double q0, double q1) {
    double s0 = Angles.sine(q0);
    double c0 = Angles.cosine(q0, s0);
    double p = first * c0;
    double q = upperFactor(s0, c0);
    for (int i = 0; i < loss.elements(); i++) {
      double arm = loss.arm(i);
      double radius = Math.abs(Math.fma(arm, c0, offset));
      double share = loss.coefficient(i) * Math.abs(sideShare(arm) * s0);
      p -= share * (Math.abs(arm) + radius / 2);
      q -= share * radius / 2;
    }
    if (!(p > 0 && q >= 0)) {
      return Double.NEGATIVE_INFINITY;
    }
    double k = loss.linear() * Math.abs(sideShare(bobArm) * s0);
    double friction = first * Math.abs(s0) * loss.pivotTorque() / swing;
    return still(q0, q1, s0) - k * k / (4 * p) - friction;
  }

  /** The pull at zero speed without losses. */
  private double still(double q0, double q1, double s0) {
    double[] slopes = new double[3];
    potential.slopes(q0, q1, slopes);
    double c1 = Angles.cosine(q1, Angles.sine(q1));
    return mass * gravity * c1 - first * s0 * slopes[1] / swing + axialForce.along(q0, q1);
  }

  /** Factor of alpha'^2: M r + M s_c sin(beta) A'(beta)/(2 I). */
  private double upperFactor(double s0, double c0) {
    double halfSlope = -s0 * Math.fma(swing - ownAxial, c0, offset * first);
    return Math.fma(mass, offset, first * c0) + first * s0 * halfSlope / swing;
  }

  /** What a force of 1 N per speed at an arm adds to the pull, per sin(beta) and beta'. */
  private double sideShare(double arm) {
    return arm * (1 - first * arm / swing);
  }
}
