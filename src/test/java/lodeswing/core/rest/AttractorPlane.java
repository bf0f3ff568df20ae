package lodeswing.core.rest;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.Release;
import lodeswing.core.rig.TextbookLayout;

/** The plane idealisation written down once more, independent of the one in use, with borders. */
final class AttractorPlane implements Motion {

  private final TextbookLayout layout;
  private final List<Limit> limits;
  private final double reach;

  AttractorPlane(TextbookLayout layout, double reach, List<Limit> limits) {
    this.layout = layout;
    this.reach = reach;
    this.limits = List.copyOf(limits);
  }

  static AttractorPlane of(TextbookLayout layout) {
    return new AttractorPlane(layout, 4, List.of());
  }

  static TextbookLayout threeMagnets() {
    double third = 1 / Math.sqrt(3);
    return new TextbookLayout(
        0.5,
        0.2,
        0.3,
        List.of(
            new TextbookLayout.Attractor(third, 0, 1),
            new TextbookLayout.Attractor(-third / 2, 0.5, 1),
            new TextbookLayout.Attractor(-third / 2, -0.5, 1)));
  }

  @Override
  public void acceleration(double q0, double q1, double v0, double v1, double[] out) {
    double[] d = new double[6];
    potentialDerivatives(q0, q1, d);
    out[0] = -d[1] - layout.drag() * v0;
    out[1] = -d[2] - layout.drag() * v1;
  }

  @Override
  public void jacobian(double q0, double q1, double v0, double v1, double[] out) {
    throw new UnsupportedOperationException();
  }

  @Override
  public OptionalDouble uniformLoss() {
    return OptionalDouble.of(layout.drag());
  }

  @Override
  public double potential(double q0, double q1) {
    double w = layout.omega0() * layout.omega0();
    double v = 0.5 * w * (q0 * q0 + q1 * q1);
    for (TextbookLayout.Attractor a : layout.magnets()) {
      double x = q0 - a.x();
      double y = q1 - a.y();
      v -= a.strength() / Math.sqrt(x * x + y * y + layout.height() * layout.height());
    }
    return v;
  }

  @Override
  public void potentialDerivatives(double q0, double q1, double[] out) {
    double w = layout.omega0() * layout.omega0();
    out[0] = 0.5 * w * (q0 * q0 + q1 * q1);
    out[1] = w * q0;
    out[2] = w * q1;
    out[3] = w;
    out[4] = 0;
    out[5] = w;
    for (TextbookLayout.Attractor a : layout.magnets()) {
      double x = q0 - a.x();
      double y = q1 - a.y();
      double square = 1 / (x * x + y * y + layout.height() * layout.height());
      double inverse = a.strength() * Math.sqrt(square);
      double cube = inverse * square;
      double fifth = 3 * cube * square;
      out[0] -= inverse;
      out[1] += cube * x;
      out[2] += cube * y;
      out[3] += cube - fifth * x * x;
      out[4] -= fifth * x * y;
      out[5] += cube - fifth * y * y;
    }
  }

  @Override
  public double power(double q0, double q1, double v0, double v1) {
    return -layout.drag() * (v0 * v0 + v1 * v1);
  }

  @Override
  public double kinetic(double q0, double q1, double v0, double v1) {
    return 0.5 * (v0 * v0 + v1 * v1);
  }

  @Override
  public void inertia(double q0, double q1, double[] out) {
    out[0] = 1;
    out[1] = 1;
  }

  @Override
  public double naturalRate() {
    return layout.omega0();
  }

  @Override
  public void toPlan(double[] state, double[] out) {
    System.arraycopy(state, 0, out, 0, 4);
  }

  @Override
  public Optional<double[]> toState(Release release) {
    return Optional.of(new double[] {release.x(), release.y(), release.vx(), release.vy()});
  }

  @Override
  public List<Limit> limits() {
    return limits;
  }

  @Override
  public double reach() {
    return reach;
  }

  /** A post that the bob touches: a disc in plan. */
  record Post(double x, double y, double radius) implements Limit {

    @Override
    public Kind kind() {
      return Kind.MAGNET_CONTACT;
    }

    @Override
    public double margin(double[] state) {
      return leastMargin(state[0], state[1]);
    }

    @Override
    public double leastMargin(double q0, double q1) {
      return Math.hypot(q0 - x, q1 - y) - radius;
    }
  }

  /** A round rim beyond which the model is not used. */
  record Rim(double radius) implements Limit {

    @Override
    public Kind kind() {
      return Kind.ANGLE_LIMIT;
    }

    @Override
    public double margin(double[] state) {
      return leastMargin(state[0], state[1]);
    }

    @Override
    public double leastMargin(double q0, double q1) {
      return radius - Math.hypot(q0, q1);
    }
  }
}
