package lodeswing.core.motion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * A rig on the bench: a rigid body on two crossed axes, q = (beta, alpha), among the plate's
 * magnets.
 *
 * <p>With I = S2 + It, A(beta) of {@link TwoAxisBody#upperInertia} and the losses' torques Q:
 *
 * <pre>
 * I beta''        = A'(beta) alpha'^2 / 2 - dV/dbeta + Q_beta
 * A(beta) alpha'' = -A'(beta) alpha' beta' - dV/dalpha + Q_alpha
 * </pre>
 *
 * Lagrange's equations of the kinetic energy (I beta'^2 + A alpha'^2)/2, with V of {@link
 * RigPotential}. Angles are used up to {@link #MAX_ANGLE}; there the mass matrix stays far from
 * singular.
 *
 * <p>{@link #acceleration} needs an out array of length 3 at least (the third element is scratch).
 * Only +, -, *, /, sqrt, fma and {@link Angles} are used, in one fixed order.
 *
 * <p>Source: L. D. Landau, E. M. Lifshitz, Mechanics, 3rd ed. (1976), sections 5 and 32, applied to
 * the two rotations.
 */
public final class BenchMotion implements Motion {

  /** Largest angle about either axis at which the model is used: 60 degrees [rad]. */
  public static final double MAX_ANGLE = Math.PI / 3;

  /** Angular speed below which pivot friction may hold the bob, twice the smoothing [rad/s]. */
  public static final double STICKING_SPEED = 2 * PivotedLoss.SMOOTHING;

  private final BenchLayout layout;
  private final AngleEnergy potential;
  private final AxialForce axialForce;
  private final PivotedLoss loss;
  private final List<Limit> limits;
  private final double offset;
  private final double mass;
  private final double first;
  private final double swing;
  private final double ownAxial;
  private final double bobArm;
  private final double naturalRate;

  /**
   * The motion of a layout.
   *
   * @param layout the rig
   * @param potential energy of the rig over the two angles, weight and magnets: a {@link
   *     RigPotential}, or a {@link PotentialTable} of one
   * @param axialForce force of the plate on the bob magnet along the support's pull
   */
  public BenchMotion(BenchLayout layout, AngleEnergy potential, AxialForce axialForce) {
    this.layout = layout;
    this.potential = potential;
    this.axialForce = axialForce;
    TwoAxisBody body = layout.suspension().body();
    offset = body.axisOffset();
    mass = body.mass();
    first = body.firstMoment();
    swing = body.swingInertia();
    ownAxial = body.axialInertia();
    bobArm = body.bobArm();
    naturalRate = body.rateX(layout.gravity());
    loss = new PivotedLoss(body, layout.loss());
    limits = BenchLimits.of(layout, potential, loss, axialForce);
  }

  /** The motion of a layout as if its plate were bare. */
  public static BenchMotion withoutMagnets(BenchLayout layout) {
    return new BenchMotion(
        layout,
        RigPotential.bare(layout.suspension().body(), layout.gravity()),
        (beta, alpha) -> 0);
  }

  /**
   * The motion of a layout by an energy of its magnets.
   *
   * @param layout the rig
   * @param magnets energy of the bob magnet over the plate
   * @param axialForce force of the plate on the bob magnet along the support's pull
   */
  public static BenchMotion amongMagnets(
      BenchLayout layout, AngleEnergy magnets, AxialForce axialForce) {
    TwoAxisBody body = layout.suspension().body();
    return new BenchMotion(layout, new RigPotential(body, layout.gravity(), magnets), axialForce);
  }

  /** The same motion under another loss. */
  public BenchMotion withLoss(LossLaw other) {
    return new BenchMotion(layout.withLoss(other), potential, axialForce);
  }

  /** What the support carries. */
  public SupportLoad supportLoad() {
    return new SupportLoad(layout, potential, axialForce);
  }

  /** Energy of the rig over the two angles, weight and magnets. */
  public AngleEnergy potentialEnergy() {
    return potential;
  }

  /** The losses' torques. */
  public PivotedLoss losses() {
    return loss;
  }

  /** The rig that moves. */
  public BenchLayout layout() {
    return layout;
  }

  @Override
  public void acceleration(double q0, double q1, double v0, double v1, double[] out) {
    double s0 = Angles.sine(q0);
    double c0 = Angles.cosine(q0, s0);
    potential.slopes(q0, q1, out);
    double pull0 = out[1];
    double pull1 = out[2];
    loss.torques(c0, v0, v1, out);
    double half = halfSlope(s0, c0);
    double turn = half * v1;
    double a0 = (Math.fma(turn, v1, out[0]) - pull0) / swing;
    double a1 = (Math.fma(-2 * turn, v0, out[1]) - pull1) / upperInertia(s0, c0);
    out[0] = a0;
    out[1] = a1;
  }

  @Override
  public boolean edgeAtRest() {
    return loss.hasEdge();
  }

  @Override
  public void edgedAcceleration(double q0, double q1, double v0, double v1, double[] out) {
    double s0 = Angles.sine(q0);
    double c0 = Angles.cosine(q0, s0);
    loss.edgedTorques(c0, v0, v1, out);
    out[0] /= swing;
    out[1] /= upperInertia(s0, c0);
  }

  /** A'(beta)/2. */
  private double halfSlope(double s0, double c0) {
    return -s0 * Math.fma(swing - ownAxial, c0, offset * first);
  }

  /** A''(beta)/2. */
  private double halfBend(double s0, double c0) {
    return -Math.fma(swing - ownAxial, Math.fma(c0, c0, -s0 * s0), offset * first * c0);
  }

  private double upperInertia(double s0, double c0) {
    double ownPart = Math.fma(swing * c0, c0, ownAxial * s0 * s0);
    return Math.fma(offset, Math.fma(mass, offset, 2 * first * c0), ownPart);
  }

  @Override
  public void jacobian(double q0, double q1, double v0, double v1, double[] out) {
    double s0 = Angles.sine(q0);
    double c0 = Angles.cosine(q0, s0);
    acceleration(q0, q1, v0, v1, out);
    double a1 = out[1];
    potentialDerivatives(q0, q1, out);
    double v00 = out[3];
    double v01 = out[4];
    double v11 = out[5];
    loss.derivatives(s0, c0, v0, v1, out);
    double slope = 2 * halfSlope(s0, c0);
    double bend = 2 * halfBend(s0, c0);
    double upper = upperInertia(s0, c0);
    double d0b = (bend / 2 * v1 * v1 - v00 + out[0]) / swing;
    double d0v0 = out[1] / swing;
    double d0v1 = (slope * v1 + out[2]) / swing;
    double d1b = (-bend * v0 * v1 - v01 + out[3] - a1 * slope) / upper;
    double d1v0 = (-slope * v1 + out[4]) / upper;
    double d1v1 = (-slope * v0 + out[5]) / upper;
    out[0] = d0b;
    out[1] = -v01 / swing;
    out[2] = d0v0;
    out[3] = d0v1;
    out[4] = d1b;
    out[5] = -v11 / upper;
    out[6] = d1v0;
    out[7] = d1v1;
  }

  /** Empty: the centrifugal terms depend on the speeds too. */
  @Override
  public OptionalDouble uniformLoss() {
    return OptionalDouble.empty();
  }

  @Override
  public double potential(double q0, double q1) {
    return potential.value(q0, q1);
  }

  @Override
  public void potentialDerivatives(double q0, double q1, double[] out) {
    potential.curvature(q0, q1, out);
  }

  @Override
  public double kinetic(double q0, double q1, double v0, double v1) {
    double s0 = Angles.sine(q0);
    double c0 = Angles.cosine(q0, s0);
    return Math.fma(swing * v0, v0, upperInertia(s0, c0) * v1 * v1) / 2;
  }

  @Override
  public double power(double q0, double q1, double v0, double v1) {
    double[] torques = new double[2];
    loss.torques(Angles.cosine(q0, Angles.sine(q0)), v0, v1, torques);
    return Math.fma(torques[0], v0, torques[1] * v1);
  }

  @Override
  public void inertia(double q0, double q1, double[] out) {
    double s0 = Angles.sine(q0);
    double c0 = Angles.cosine(q0, s0);
    out[0] = swing;
    out[1] = upperInertia(s0, c0);
  }

  @Override
  public double naturalRate() {
    return naturalRate;
  }

  @Override
  public void toPlan(double[] state, double[] out) {
    double s0 = Angles.sine(state[0]);
    double c0 = Angles.cosine(state[0], s0);
    double s1 = Angles.sine(state[1]);
    double c1 = Angles.cosine(state[1], s1);
    double v0 = state[2];
    double v1 = state[3];
    double radius = Math.fma(bobArm, c0, offset);
    out[0] = bobArm * s0;
    out[1] = radius * s1;
    out[2] = bobArm * c0 * v0;
    out[3] = Math.fma(radius * c1, v1, -bobArm * s0 * s1 * v0);
  }

  @Override
  public Optional<double[]> toState(Release release) {
    double s0 = release.x() / bobArm;
    if (!(Math.abs(s0) < 1)) {
      return Optional.empty();
    }
    double q0 = StrictMath.asin(s0);
    double c0 = Math.sqrt((1 - s0) * (1 + s0));
    double radius = Math.fma(bobArm, c0, offset);
    double s1 = release.y() / radius;
    if (!(Math.abs(s1) < 1)) {
      return Optional.empty();
    }
    double q1 = StrictMath.asin(s1);
    if (Math.abs(q0) > MAX_ANGLE || Math.abs(q1) > MAX_ANGLE) {
      return Optional.empty();
    }
    double c1 = Math.sqrt((1 - s1) * (1 + s1));
    double v0 = release.vx() / (bobArm * c0);
    double v1 = Math.fma(bobArm * s0 * s1, v0, release.vy()) / (radius * c1);
    return Optional.of(new double[] {q0, q1, v0, v1});
  }

  /**
   * How far the bob is from being held by pivot friction: above 0 while it moves faster than {@link
   * #STICKING_SPEED} or while the static torque exceeds the friction's; at 0 it sticks for good.
   * Without pivot friction always above 0.
   */
  @Override
  public double slideMargin(double[] state) {
    double torque = loss.pivotTorque();
    if (torque == 0) {
      return 1;
    }
    double[] slopes = new double[6];
    potentialDerivatives(state[0], state[1], slopes);
    double load = Math.sqrt(slopes[1] * slopes[1] + slopes[2] * slopes[2]);
    double speed = Math.sqrt(state[2] * state[2] + state[3] * state[3]);
    return Math.max(speed / STICKING_SPEED, load / torque) - 1;
  }

  @Override
  public List<Limit> limits() {
    return limits;
  }

  /** The largest angle, about either axis. */
  @Override
  public double reach() {
    return MAX_ANGLE;
  }
}
