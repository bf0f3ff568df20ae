package lodeswing.core.rest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import lodeswing.core.motion.Motion;

/** Where critical points lie in plan and among the magnets, and the order that follows. */
final class PlaceOrder {

  /** Angles closer than this count as equal, so that rounding does not decide an order. */
  private static final double ANGLE_STEP = 1e-6;

  private static final double CENTRE_SHARE = 1e-6;
  private static final int NEAR_MAGNETS = 2;

  private final Motion motion;
  private final ScanRegion region;

  PlaceOrder(Motion motion, ScanRegion region) {
    this.motion = motion;
    this.region = region;
  }

  /** {x, y, 0, 0} of a place. */
  double[] plan(CriticalPoint p) {
    double[] out = new double[4];
    motion.toPlan(new double[] {p.q0(), p.q1(), 0, 0}, out);
    return out;
  }

  /** Those over a magnet first, by magnet; then by plan angle, then by radius. */
  List<CriticalPoint> sorted(List<CriticalPoint> points) {
    List<Keyed> keyed = new ArrayList<>();
    for (CriticalPoint p : points) {
      double[] plan = plan(p);
      double radius = Math.hypot(plan[0], plan[1]);
      boolean centre = radius < CENTRE_SHARE * region.lengthScale();
      int owner = surroundings(p).owner().orElse(Integer.MAX_VALUE);
      keyed.add(new Keyed(p, owner, centre ? -1 : angle(plan[0], plan[1]), radius));
    }
    keyed.sort(
        Comparator.comparingInt(Keyed::owner)
            .thenComparingLong(Keyed::angle)
            .thenComparingDouble(Keyed::radius));
    return keyed.stream().map(Keyed::point).toList();
  }

  private static long angle(double x, double y) {
    long steps = Math.round(Math.atan2(y, x) / ANGLE_STEP);
    return steps < 0 ? steps + Math.round(2 * Math.PI / ANGLE_STEP) : steps;
  }

  /** The magnets about a place. */
  RestPoint.Surroundings surroundings(CriticalPoint p) {
    double[] plan = plan(p);
    List<RestPoint.NearMagnet> near = new ArrayList<>();
    for (int i = 0; i < region.magnets().size(); i++) {
      ScanRegion.MagnetPlace m = region.magnets().get(i);
      near.add(new RestPoint.NearMagnet(i, Math.hypot(plan[0] - m.x(), plan[1] - m.y())));
    }
    near.sort(
        Comparator.comparingDouble(RestPoint.NearMagnet::distance)
            .thenComparingInt(RestPoint.NearMagnet::magnet));
    OptionalInt owner = OptionalInt.empty();
    for (RestPoint.NearMagnet m : near) {
      boolean over = m.distance() <= region.magnets().get(m.magnet()).radius();
      if (owner.isEmpty() && over) {
        owner = OptionalInt.of(m.magnet());
      }
    }
    List<RestPoint.NearMagnet> nearest = near.subList(0, Math.min(NEAR_MAGNETS, near.size()));
    return new RestPoint.Surroundings(owner, nearest, owner.isEmpty() && allRepel(near));
  }

  private boolean allRepel(List<RestPoint.NearMagnet> near) {
    if (near.isEmpty()) {
      return false;
    }
    double within = near.get(0).distance() + 2 * region.lengthScale();
    boolean repel = true;
    for (RestPoint.NearMagnet m : near) {
      repel &= m.distance() > within || !region.magnets().get(m.magnet()).attracts();
    }
    return repel;
  }

  private record Keyed(CriticalPoint point, int owner, long angle, double radius) {}
}
