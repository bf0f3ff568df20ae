package lodeswing.core.motion;

import java.util.Optional;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.rig.BenchLayout;

/**
 * How far the bob magnet, tilted with its bar, is from the plate and from the plate's magnets.
 *
 * <p>The solids are convex, so every direction n gives a lower bound of their distance: that of the
 * centres along n less both support functions (S. Gottschalk, M. C. Lin, D. Manocha, OBBTree,
 * SIGGRAPH 1996, separating axes). The clearance to a magnet is the largest of these bounds over
 * the vertical, the plan direction between the centres, the line of centres, the plate magnet's and
 * the bob's own axes. Where it is positive the solids surely do not touch; a touch edge to edge may
 * be told a little early. It is continuous in the angles.
 *
 * <p>Allocates nothing. A magnet whose bounding ball is farther off than the least clearance so far
 * is passed over, which changes no result.
 */
final class Clearance {

  private final double axisHeight;
  private final double offset;
  private final double bobArm;
  private final Solid bob;
  private final double bobBound;
  private final Solid[] solids;
  private final double[] bounds;
  private final double[] xs;
  private final double[] ys;
  private final double[] zs;
  private final double[] cosTurns;
  private final double[] sinTurns;

  Clearance(BenchLayout layout) {
    axisHeight = layout.axisHeight();
    offset = layout.suspension().body().axisOffset();
    bobArm = layout.suspension().body().bobArm();
    Optional<Magnet> bobMagnet = layout.bob().map(BenchLayout.BobMagnet::magnet);
    bob = Solid.of(bobMagnet);
    bobBound = bob.boundingRadius();
    int n = layout.magnetCount();
    solids = new Solid[n];
    bounds = new double[n];
    xs = new double[n];
    ys = new double[n];
    zs = new double[n];
    cosTurns = new double[n];
    sinTurns = new double[n];
    for (int i = 0; i < n; i++) {
      PlacedMagnet placed = layout.magnets().get(i);
      solids[i] = Solid.of(placed.magnet());
      bounds[i] = solids[i].boundingRadius() + bobBound;
      xs[i] = placed.centre().x();
      ys[i] = placed.centre().y();
      zs[i] = placed.centre().z();
      cosTurns[i] = StrictMath.cos(placed.turn());
      sinTurns[i] = StrictMath.sin(placed.turn());
    }
  }

  /** Height of the bob magnet's lowest point over the plate's surface [m]. */
  double toPlate(double beta, double alpha) {
    double s0 = Angles.sine(beta);
    double c0 = Angles.cosine(beta, s0);
    double s1 = Angles.sine(alpha);
    double c1 = Angles.cosine(alpha, s1);
    double height = axisHeight - Math.fma(bobArm, c0, offset) * c1;
    return height - bobSupport(0, 0, 1, s0, c0, s1, c1);
  }

  /** Least clearance to a magnet of the plate [m]; infinite where there is none. */
  double toMagnets(double beta, double alpha) {
    double s0 = Angles.sine(beta);
    double c0 = Angles.cosine(beta, s0);
    double s1 = Angles.sine(alpha);
    double c1 = Angles.cosine(alpha, s1);
    double radius = Math.fma(bobArm, c0, offset);
    double x = bobArm * s0;
    double y = radius * s1;
    double z = axisHeight - radius * c1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < solids.length; i++) {
      double dx = x - xs[i];
      double dy = y - ys[i];
      double dz = z - zs[i];
      double centres = Math.sqrt(Math.fma(dx, dx, Math.fma(dy, dy, dz * dz)));
      if (centres - bounds[i] < least) {
        least = Math.min(least, toMagnet(i, dx, dy, dz, s0, c0, s1, c1));
      }
    }
    return least;
  }

  /** Many arguments, since an object for the pose would be an allocation a call. */
  private double toMagnet(
      int i, double dx, double dy, double dz, double s0, double c0, double s1, double c1) {
    double plan = Math.sqrt(Math.fma(dx, dx, dy * dy));
    double centres = Math.sqrt(Math.fma(plan, plan, dz * dz));
    double gap = along(i, dx, dy, dz, 0, 0, 1, s0, c0, s1, c1);
    if (plan > 0) {
      gap = Math.max(gap, along(i, dx, dy, dz, dx / plan, dy / plan, 0, s0, c0, s1, c1));
      gap =
          Math.max(
              gap, along(i, dx, dy, dz, dx / centres, dy / centres, dz / centres, s0, c0, s1, c1));
    }
    double ct = cosTurns[i];
    double st = sinTurns[i];
    gap = Math.max(gap, along(i, dx, dy, dz, ct, st, 0, s0, c0, s1, c1));
    gap = Math.max(gap, along(i, dx, dy, dz, -st, ct, 0, s0, c0, s1, c1));
    gap = Math.max(gap, along(i, dx, dy, dz, s0, c0 * s1, -c0 * c1, s0, c0, s1, c1));
    gap = Math.max(gap, along(i, dx, dy, dz, c0, -s0 * s1, s0 * c1, s0, c0, s1, c1));
    return Math.max(gap, along(i, dx, dy, dz, 0, c1, s1, s0, c0, s1, c1));
  }

  /** Distance of the two outlines along a unit vector n, negative where they overlap on it. */
  private double along(
      int i,
      double dx,
      double dy,
      double dz,
      double nx,
      double ny,
      double nz,
      double s0,
      double c0,
      double s1,
      double c1) {
    double centres = Math.abs(Math.fma(dx, nx, Math.fma(dy, ny, dz * nz)));
    double ct = cosTurns[i];
    double st = sinTurns[i];
    double plate = solids[i].support(Math.fma(nx, ct, ny * st), Math.fma(ny, ct, -nx * st), nz);
    return centres - plate - bobSupport(nx, ny, nz, s0, c0, s1, c1);
  }

  /**
   * The bob's own axes in the layout's frame: across the bar (c0, -s0 s1, s0 c1) and (0, c1, s1),
   * along it (s0, c0 s1, -c0 c1).
   */
  private double bobSupport(
      double nx, double ny, double nz, double s0, double c0, double s1, double c1) {
    double down = Math.fma(ny, s1, -nz * c1);
    double across0 = Math.fma(nx, c0, -s0 * down);
    double across1 = Math.fma(ny, c1, nz * s1);
    double along = Math.fma(nx, s0, c0 * down);
    return bob.support(across0, across1, along);
  }
}
