package lodeswing.core.motion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.rig.Release;
import lodeswing.core.rig.TextbookLayout;

/**
 * The plane idealisation, a point of mass 1 at r = (x, y) among point attractors at R_i.
 *
 * <p>r'' = -omega0^2 r - drag r' + sum k_i (R_i - r) / (|r - R_i|^2 + h^2)^(3/2), from the energy V
 * = omega0^2 r^2/2 - sum k_i / (|r - R_i|^2 + h^2)^(1/2). Quantities are in the model's own units.
 *
 * <p>The sum runs over the magnets in the layout's order, with +, *, /, sqrt and fma only, so lanes
 * that do the same operations agree to the bit.
 *
 * <p>Source: H.-O. Peitgen, H. Juergens, D. Saupe, Chaos and Fractals, 2nd ed. (2004), section
 * 12.8, the pendulum over three magnets (from memory).
 */
public final class TextbookMotion implements PositionForce {

  private final double stiffness;
  private final double omega0;
  private final double drag;
  private final double height2;
  private final double[] xs;
  private final double[] ys;
  private final double[] strengths;
  private final double reach;

  /** The motion of a layout. */
  public TextbookMotion(TextbookLayout layout) {
    omega0 = layout.omega0();
    stiffness = omega0 * omega0;
    drag = layout.drag();
    height2 = layout.height() * layout.height();
    int n = layout.magnetCount();
    xs = new double[n];
    ys = new double[n];
    strengths = new double[n];
    for (int i = 0; i < n; i++) {
      xs[i] = layout.magnets().get(i).x();
      ys[i] = layout.magnets().get(i).y();
      strengths[i] = layout.magnets().get(i).strength();
    }
    reach = reachOf(layout);
  }

  /**
   * With far the distance of the farthest magnet and L^3 = sum |k_i| / omega0^2, every point where
   * the forces balance lies within far + L: beyond, omega0^2 r exceeds sum |k_i| / (r - far)^2.
   */
  private static double reachOf(TextbookLayout layout) {
    double far = 0;
    double sum = 0;
    for (TextbookLayout.Attractor magnet : layout.magnets()) {
      far = Math.max(far, Math.sqrt(magnet.x() * magnet.x() + magnet.y() * magnet.y()));
      sum += Math.abs(magnet.strength());
    }
    double stiffness = layout.omega0() * layout.omega0();
    double balance = stiffness > 0 ? StrictMath.cbrt(sum / stiffness) : 0;
    double size = 4 * Math.max(far, layout.height()) + 2 * balance;
    return size > 0 ? size : 1;
  }

  @Override
  public void acceleration(double q0, double q1, double v0, double v1, double[] out) {
    force(q0, q1, out);
    out[0] = Math.fma(-drag, v0, out[0]);
    out[1] = Math.fma(-drag, v1, out[1]);
  }

  /**
   * Writes F(q) = -grad V, the acceleration of a bob at rest.
   *
   * @param out receives F0, F1; length at least 3, the third is scratch
   */
  @Override
  public void force(double q0, double q1, double[] out) {
    attraction(q0, q1, out);
    out[0] = Math.fma(-stiffness, q0, out[0]);
    out[1] = Math.fma(-stiffness, q1, out[1]);
  }

  /**
   * Writes what the attractors alone give: their force and the sum of k/r, minus their potential.
   *
   * <p>Three attractors share one division, 1/(p1 p2 p3) with p = s^(3/2), s = |R - q|^2 + h^2;
   * what is left over three is taken one by one.
   *
   * @param out receives F0, F1, sum of k/s^(1/2)
   */
  public void attraction(double q0, double q1, double[] out) {
    out[0] = 0;
    out[1] = 0;
    out[2] = 0;
    int m = 0;
    for (; m + 3 <= xs.length; m += 3) {
      attractThree(m, q0, q1, out);
    }
    for (; m < xs.length; m++) {
      double dx = xs[m] - q0;
      double dy = ys[m] - q1;
      double d2 = Math.fma(dx, dx, Math.fma(dy, dy, height2));
      double w = strengths[m] / (d2 * Math.sqrt(d2));
      out[0] = Math.fma(w, dx, out[0]);
      out[1] = Math.fma(w, dy, out[1]);
      out[2] = Math.fma(w, d2, out[2]);
    }
  }

  private void attractThree(int m, double q0, double q1, double[] out) {
    double ax = xs[m] - q0;
    double ay = ys[m] - q1;
    double bx = xs[m + 1] - q0;
    double by = ys[m + 1] - q1;
    double cx = xs[m + 2] - q0;
    double cy = ys[m + 2] - q1;
    double a = Math.fma(ax, ax, Math.fma(ay, ay, height2));
    double b = Math.fma(bx, bx, Math.fma(by, by, height2));
    double c = Math.fma(cx, cx, Math.fma(cy, cy, height2));
    double pa = a * Math.sqrt(a);
    double pb = b * Math.sqrt(b);
    double pc = c * Math.sqrt(c);
    double ab = pa * pb;
    double inverse = 1 / (ab * pc);
    double wc = strengths[m + 2] * (inverse * ab);
    double notC = inverse * pc;
    double wa = strengths[m] * (notC * pb);
    double wb = strengths[m + 1] * (notC * pa);
    out[0] = Math.fma(wc, cx, Math.fma(wb, bx, Math.fma(wa, ax, out[0])));
    out[1] = Math.fma(wc, cy, Math.fma(wb, by, Math.fma(wa, ay, out[1])));
    out[2] = Math.fma(wc, c, Math.fma(wb, b, Math.fma(wa, a, out[2])));
  }

  /** How many attractors there are. */
  public int attractors() {
    return xs.length;
  }

  /** Place x of an attractor. */
  public double attractorX(int m) {
    return xs[m];
  }

  /** Place y of an attractor. */
  public double attractorY(int m) {
    return ys[m];
  }

  /** Strength k of an attractor. */
  public double strength(int m) {
    return strengths[m];
  }

  /** omega0^2. */
  public double stiffness() {
    return stiffness;
  }

  /** h^2. */
  public double heightSquared() {
    return height2;
  }

  /** Drag, twice the rate k of the frame in which the loss is gone. */
  public double drag() {
    return drag;
  }

  @Override
  public void jacobian(double q0, double q1, double v0, double v1, double[] out) {
    potentialDerivatives(q0, q1, out);
    double v00 = out[3];
    double v01 = out[4];
    double v11 = out[5];
    out[0] = -v00;
    out[1] = -v01;
    out[2] = -drag;
    out[3] = 0;
    out[4] = -v01;
    out[5] = -v11;
    out[6] = 0;
    out[7] = -drag;
  }

  @Override
  public OptionalDouble uniformLoss() {
    return OptionalDouble.of(drag);
  }

  @Override
  public double potential(double q0, double q1) {
    double v = stiffness / 2 * Math.fma(q0, q0, q1 * q1);
    for (int i = 0; i < xs.length; i++) {
      double dx = xs[i] - q0;
      double dy = ys[i] - q1;
      v -= strengths[i] / Math.sqrt(Math.fma(dx, dx, Math.fma(dy, dy, height2)));
    }
    return v;
  }

  @Override
  public void potentialDerivatives(double q0, double q1, double[] out) {
    double v = stiffness / 2 * Math.fma(q0, q0, q1 * q1);
    double g0 = stiffness * q0;
    double g1 = stiffness * q1;
    double h00 = stiffness;
    double h01 = 0;
    double h11 = stiffness;
    for (int i = 0; i < xs.length; i++) {
      double dx = xs[i] - q0;
      double dy = ys[i] - q1;
      double d2 = Math.fma(dx, dx, Math.fma(dy, dy, height2));
      double u = strengths[i] / Math.sqrt(d2);
      double w = u / d2;
      double t = -3 * w / d2;
      v -= u;
      g0 = Math.fma(-w, dx, g0);
      g1 = Math.fma(-w, dy, g1);
      h00 += Math.fma(t * dx, dx, w);
      h01 = Math.fma(t * dx, dy, h01);
      h11 += Math.fma(t * dy, dy, w);
    }
    out[0] = v;
    out[1] = g0;
    out[2] = g1;
    out[3] = h00;
    out[4] = h01;
    out[5] = h11;
  }

  @Override
  public double kinetic(double q0, double q1, double v0, double v1) {
    return Math.fma(v0, v0, v1 * v1) / 2;
  }

  @Override
  public double power(double q0, double q1, double v0, double v1) {
    return -drag * Math.fma(v0, v0, v1 * v1);
  }

  @Override
  public void inertia(double q0, double q1, double[] out) {
    out[0] = 1;
    out[1] = 1;
  }

  @Override
  public double naturalRate() {
    return omega0;
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
    return List.of();
  }

  /** Four times the farthest magnet (or the height), and twice the length where forces balance. */
  @Override
  public double reach() {
    return reach;
  }
}
