package lodeswing.core.integrate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.Release;

/**
 * A bob on an ideal cord of 0.42 m over three point dipoles, in the angles of a two-axis
 * suspension: small enough for tests, with all the ways in which speed enters on the bench.
 *
 * <p>x = l sin b, y = l cos b sin a, z = -l cos b cos a; l^2 b'' = -l^2 sin b cos b a'^2 - V_b/m,
 * l^2 cos^2 b a'' = 2 l^2 sin b cos b a' b' - V_a/m, less the loss; U of two upright dipoles is -c
 * (3 z^2/r^2 - 1)/r^3.
 */
final class DipoleBenchMotion implements Motion {

  static final double LENGTH = 0.42;
  static final double MASS = 0.045;
  private static final double GRAVITY = 9.80665;
  private static final double HEIGHT = 0.45;
  private static final double[] X = {0.045, -0.0225, -0.0225};
  private static final double[] Y = {0, 0.03897, -0.03897};
  private final double strength;
  private final double loss;

  DipoleBenchMotion(double strength, double loss) {
    this.strength = strength;
    this.loss = loss;
  }

  /** About the pull of the sample rig: moments of 0.84 and 0.75 A m^2, 30 mm apart. */
  static DipoleBenchMotion sample() {
    return new DipoleBenchMotion(1e-7 * 0.84 * 0.75, 2 * Math.log(2) / (25 * 1.3));
  }

  @Override
  public void acceleration(double b, double a, double vb, double va, double[] out) {
    double sb = Math.sin(b);
    double cb = Math.cos(b);
    double sa = Math.sin(a);
    double ca = Math.cos(a);
    double x = LENGTH * sb;
    double y = LENGTH * cb * sa;
    double z = HEIGHT - LENGTH * cb * ca;
    double ux = 0;
    double uy = 0;
    double uz = 0;
    for (int i = 0; i < 3; i++) {
      double dx = x - X[i];
      double dy = y - Y[i];
      double r2 = dx * dx + dy * dy + z * z;
      double r = Math.sqrt(r2);
      double w = strength / (r2 * r2 * r);
      double radial = 15 * z * z / r2 - 3;
      ux += w * dx * radial;
      uy += w * dy * radial;
      uz += w * z * (radial - 6);
    }
    uz += MASS * GRAVITY;
    double vBeta = LENGTH * (ux * cb - uy * sb * sa + uz * sb * ca);
    double vAlpha = LENGTH * (uy * cb * ca + uz * cb * sa);
    double inertia = MASS * LENGTH * LENGTH;
    out[0] = -sb * cb * va * va - vBeta / inertia - loss * vb;
    out[1] = 2 * sb / cb * va * vb - vAlpha / (inertia * cb * cb) - loss * va;
  }

  @Override
  public double potential(double b, double a) {
    double x = LENGTH * Math.sin(b);
    double y = LENGTH * Math.cos(b) * Math.sin(a);
    double z = HEIGHT - LENGTH * Math.cos(b) * Math.cos(a);
    double u = MASS * GRAVITY * z;
    for (int i = 0; i < 3; i++) {
      double r2 = (x - X[i]) * (x - X[i]) + (y - Y[i]) * (y - Y[i]) + z * z;
      u -= strength * (3 * z * z / r2 - 1) / (r2 * Math.sqrt(r2));
    }
    return u;
  }

  @Override
  public double power(double b, double a, double vb, double va) {
    return -2 * loss * kinetic(b, a, vb, va);
  }

  @Override
  public double kinetic(double b, double a, double vb, double va) {
    double c = Math.cos(b);
    return 0.5 * MASS * LENGTH * LENGTH * (vb * vb + c * c * va * va);
  }

  @Override
  public void jacobian(double q0, double q1, double v0, double v1, double[] out) {
    throw new UnsupportedOperationException("integrators without variations do not ask for it");
  }

  @Override
  public OptionalDouble uniformLoss() {
    return OptionalDouble.empty();
  }

  @Override
  public void potentialDerivatives(double q0, double q1, double[] out) {
    throw new UnsupportedOperationException("integrators do not ask for it");
  }

  @Override
  public void inertia(double q0, double q1, double[] out) {
    double c = Math.cos(q0);
    out[0] = MASS * LENGTH * LENGTH;
    out[1] = out[0] * c * c;
  }

  @Override
  public double naturalRate() {
    return Math.sqrt(GRAVITY / LENGTH);
  }

  @Override
  public void toPlan(double[] state, double[] out) {
    throw new UnsupportedOperationException("integrators do not ask for it");
  }

  @Override
  public Optional<double[]> toState(Release release) {
    throw new UnsupportedOperationException("integrators do not ask for it");
  }

  @Override
  public List<Limit> limits() {
    return List.of();
  }

  @Override
  public double reach() {
    return 1;
  }
}
