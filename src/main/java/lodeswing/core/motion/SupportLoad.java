package lodeswing.core.motion;

import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.PullLine;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * What the support carries: the pull of {@code LegSlack} and {@code HookSlack} without its losses,
 * as what a bob at rest loads it with and what its speed adds at most.
 *
 * <p>The terms in the speeds are a beta'^2 + b alpha'^2 and the kinetic energy is (I beta'^2 + A
 * alpha'^2)/2, so that a joule of it adds 2 max(a/I, b/A) at most.
 */
public final class SupportLoad {

  private final TwoAxisBody body;
  private final boolean alongBar;
  private final double gravity;
  private final AngleEnergy potential;
  private final AxialForce axialForce;

  /**
   * The load of a rig.
   *
   * @param potential energy of weight and magnets
   * @param axialForce force of the plate on the bob magnet along the support's pull
   */
  public SupportLoad(BenchLayout layout, AngleEnergy potential, AxialForce axialForce) {
    this.body = layout.suspension().body();
    this.alongBar = layout.suspension().pullLine() == PullLine.ALONG_BAR;
    this.gravity = layout.gravity();
    this.potential = potential;
    this.axialForce = axialForce;
  }

  /** Pull of a bob that is held still in its plane of swing [N]. */
  public double still(double beta, double alpha) {
    double s0 = Angles.sine(beta);
    double c0 = Angles.cosine(beta, s0);
    double c1 = Angles.cosine(alpha, Angles.sine(alpha));
    double weight = body.mass() * gravity * c1;
    double plate = axialForce.along(beta, alpha);
    if (alongBar) {
      return weight * c0 + plate;
    }
    double[] slopes = new double[3];
    potential.slopes(beta, alpha, slopes);
    return weight - body.firstMoment() * s0 * slopes[1] / body.swingInertia() + plate;
  }

  /** What a joule of kinetic energy adds to the pull at most [N/J]. */
  public double perJoule(double beta) {
    double s0 = Angles.sine(beta);
    double c0 = Angles.cosine(beta, s0);
    double first = body.firstMoment();
    double swing = body.swingInertia();
    double upper = body.upperInertia(s0, c0);
    if (alongBar) {
      double upperShare = c0 * (first * c0 + body.mass() * body.axisOffset()) / upper;
      return 2 * Math.max(first / swing, upperShare);
    }
    double halfSlope = -s0 * ((swing - body.axialInertia()) * c0 + body.axisOffset() * first);
    double factor = body.mass() * body.axisOffset() + first * c0 + first * s0 * halfSlope / swing;
    return 2 * Math.max(first * c0 / swing, factor / upper);
  }
}
