package lodeswing.core.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;
import lodeswing.core.suspension.BarPart;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.TwoAxisBody;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.junit.jupiter.api.Test;

/**
 * The same mechanics written in another way, both by Gragg-Bulirsch-Stoer extrapolation at 1e-13:
 * point masses in Cartesian coordinates with a constraint (Lagrange's equations of the first kind),
 * and a cloud of masses by virtual work.
 */
class OtherFormulationTest {

  private static final double G = Rigs.GRAVITY;

  @Test
  void cordFollowsThePointOnASphere() {
    compare(Rigs.CORD, 0.3, 0.1, -0.2, 0.5);
  }

  @Test
  void yCordFollowsThePointOnATorus() {
    compare(Rigs.YOKE, 0.12, -0.1, 0.3, 0.4);
  }

  private static void compare(Suspension suspension, double x, double y, double vx, double vy) {
    LossLaw loss = Rigs.everyLossButFriction(suspension);
    BenchLayout layout = Rigs.layout(suspension, loss);
    PointAttractor attractor = Rigs.attractor(layout);
    BenchMotion motion = Rigs.over(layout, attractor);
    TwoAxisBody body = suspension.body();
    double[] state = motion.toState(new Release(x, y, vx, vy)).orElseThrow();
    double[] end = Runs.end(MotionSystem.of(motion), state, 4);
    double[] plan = new double[4];
    motion.toPlan(end, plan);

    double[] start = cartesian(body, state, x, y, vx, vy);
    double[] other = Runs.end(new Surface(body, loss, attractor), start, 4);
    assertEquals(other[0], plan[0], 1e-10);
    assertEquals(other[1], plan[1], 1e-10);
    assertEquals(other[3], plan[2], 1e-9);
    assertEquals(other[4], plan[3], 1e-9);
  }

  private static double[] cartesian(
      TwoAxisBody body, double[] state, double x, double y, double vx, double vy) {
    double d = body.axisOffset();
    double l = body.bobArm();
    double radius = d + l * Math.cos(state[0]);
    double z = -radius * Math.cos(state[1]);
    double vz =
        l * Math.sin(state[0]) * Math.cos(state[1]) * state[2]
            + radius * Math.sin(state[1]) * state[3];
    return new double[] {x, y, z, vx, vy, vz};
  }

  /**
   * A point on f = (rho - d)^2 + x^2 - l^2 = 0, rho its distance from the upper axis: a sphere for
   * d = 0, else the torus on which the leg lies in the plane of the two upper cords.
   */
  private record Surface(TwoAxisBody body, LossLaw loss, PointAttractor attractor)
      implements FirstOrderDifferentialEquations {

    @Override
    public int getDimension() {
      return 6;
    }

    @Override
    public void computeDerivatives(double t, double[] s, double[] out) {
      double m = body.mass();
      double d = body.axisOffset();
      double rho = Math.hypot(s[1], s[2]);
      double[] n = {2 * s[0], 2 * (rho - d) * s[1] / rho, 2 * (rho - d) * s[2] / rho};
      double rhoDot = (s[1] * s[4] + s[2] * s[5]) / rho;
      double across2 = s[4] * s[4] + s[5] * s[5] - rhoDot * rhoDot;
      double bend = 2 * s[3] * s[3] + 2 * rhoDot * rhoDot + 2 * (rho - d) / rho * across2;
      double[] force = new double[3];
      attractor.force(s[0], s[1], s[2], force);
      addDrag(s, rho, rhoDot, across2, force);
      force[2] -= m * G;
      double push = (n[0] * force[0] + n[1] * force[1] + n[2] * force[2]) / m;
      double lambda = -(push + bend) / (n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
      for (int i = 0; i < 3; i++) {
        out[i] = s[3 + i];
        out[3 + i] = force[i] / m + lambda * n[i];
      }
    }

    /** Elements at a part p of the leg: at p along the leg from the knot, by similar triangles. */
    private void addDrag(double[] s, double rho, double rhoDot, double across2, double[] force) {
      double speed = Math.sqrt(s[3] * s[3] + s[4] * s[4] + s[5] * s[5]);
      double rate = loss.linear();
      for (LossLaw.DragElement element : loss.drag()) {
        if (element.arm() == body.bobArm()) {
          rate += element.coefficient() * speed;
        } else {
          addPartWay(element, s, rho, rhoDot, across2, force);
        }
      }
      for (int i = 0; i < 3; i++) {
        force[i] -= rate * s[3 + i];
      }
    }

    /** Force on the element, moved to the bob in proportion to their virtual shifts. */
    private void addPartWay(
        LossLaw.DragElement element,
        double[] s,
        double rho,
        double rhoDot,
        double across2,
        double[] force) {
      double share = element.arm() / body.bobArm();
      double d = body.axisOffset();
      double radius = d + share * (rho - d);
      double turn = radius / rho;
      double speed =
          Math.sqrt(share * share * (s[3] * s[3] + rhoDot * rhoDot) + turn * turn * across2);
      double k = element.coefficient() * speed;
      double outY = s[1] / rho * rhoDot;
      double outZ = s[2] / rho * rhoDot;
      force[0] -= k * share * share * s[3];
      force[1] -= k * (share * share * outY + turn * turn * (s[4] - outY));
      force[2] -= k * (share * share * outZ + turn * turn * (s[5] - outZ));
    }
  }

  @Test
  void barFollowsACloudOfMasses() {
    BenchLayout layout = Rigs.layout(cloudBar(), LossLaw.none());
    PointAttractor attractor = Rigs.attractor(layout);
    BenchMotion motion = Rigs.over(layout, attractor);
    double[] state = {0.5, -0.4, 1.5, 2.0};
    double[] end = Runs.end(MotionSystem.of(motion), state, 4);
    double[] other = Runs.end(new Cloud(attractor), state, 4);
    for (int i = 0; i < 4; i++) {
      assertEquals(other[i], end[i], 2e-9);
    }
  }

  private static final double OFFSET = 0.03;
  private static final double[] HEIGHTS = {-0.05, 0.1, 0.25, 0.4};
  private static final double[] RADII = {0.02, 0.05, 0.01, 0.08};
  private static final double[] MASSES = {0.02, 0.03, 0.01, 0.05};

  /** Four rings of four masses each. */
  private static HookedBar cloudBar() {
    BarPart[] parts = new BarPart[HEIGHTS.length];
    for (int i = 0; i < parts.length; i++) {
      double whole = 4 * MASSES[i];
      double r2 = RADII[i] * RADII[i];
      parts[i] = new BarPart(whole, HEIGHTS[i], whole * r2 / 2, whole * r2, 0, 0);
    }
    return new HookedBar(OFFSET, List.of(parts), 0.42);
  }

  /** sum m J^T (J q'' + J' q') = sum J^T F for masses at Rx(alpha) (-d z + Ry(beta) p). */
  private record Cloud(PointAttractor attractor) implements FirstOrderDifferentialEquations {

    @Override
    public int getDimension() {
      return 4;
    }

    @Override
    public void computeDerivatives(double t, double[] q, double[] out) {
      double[] sums = new double[5];
      for (int i = 0; i < HEIGHTS.length; i++) {
        for (int k = 0; k < 4; k++) {
          double angle = Math.PI / 2 * k;
          double px = RADII[i] * Math.cos(angle);
          double py = RADII[i] * Math.sin(angle);
          add(q, new double[] {px, py, -HEIGHTS[i]}, MASSES[i], new double[] {0, 0, -G}, sums);
        }
      }
      double[] bob = place(q, new double[] {0, 0, -0.42}, 0, 0);
      double[] force = new double[3];
      attractor.force(bob[0], bob[1], bob[2], force);
      double[] b = place(q, new double[] {0, 0, -0.42}, 1, 0);
      double[] a = place(q, new double[] {0, 0, -0.42}, 0, 1);
      double right0 = sums[3] + dot(b, force);
      double right1 = sums[4] + dot(a, force);
      double determinant = sums[0] * sums[2] - sums[1] * sums[1];
      out[0] = q[2];
      out[1] = q[3];
      out[2] = (right0 * sums[2] - right1 * sums[1]) / determinant;
      out[3] = (right1 * sums[0] - right0 * sums[1]) / determinant;
    }

    private static void add(double[] q, double[] p, double m, double[] field, double[] sums) {
      double[] b = place(q, p, 1, 0);
      double[] a = place(q, p, 0, 1);
      double[] bb = place(q, p, 2, 0);
      double[] ba = place(q, p, 1, 1);
      double[] aa = place(q, p, 0, 2);
      double[] f = new double[3];
      for (int i = 0; i < 3; i++) {
        double own = bb[i] * q[2] * q[2] + 2 * ba[i] * q[2] * q[3] + aa[i] * q[3] * q[3];
        f[i] = m * (field[i] - own);
      }
      sums[0] += m * dot(b, b);
      sums[1] += m * dot(b, a);
      sums[2] += m * dot(a, a);
      sums[3] += dot(b, f);
      sums[4] += dot(a, f);
    }

    /** The place of a mass, derived so many times by beta and alpha: each adds a quarter turn. */
    private static double[] place(double[] q, double[] p, int byBeta, int byAlpha) {
      double cb = Math.cos(q[0] + byBeta * Math.PI / 2);
      double sb = Math.sin(q[0] + byBeta * Math.PI / 2);
      double ca = Math.cos(q[1] + byAlpha * Math.PI / 2);
      double sa = Math.sin(q[1] + byAlpha * Math.PI / 2);
      double x = cb * p[0] - sb * p[2];
      double y = byBeta == 0 ? p[1] : 0;
      double z = sb * p[0] + cb * p[2] - (byBeta == 0 ? OFFSET : 0);
      return new double[] {byAlpha == 0 ? x : 0, ca * y - sa * z, sa * y + ca * z};
    }

    private static double dot(double[] a, double[] b) {
      return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
  }
}
