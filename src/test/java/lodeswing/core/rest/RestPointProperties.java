package lodeswing.core.rest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.PriorityQueue;
import lodeswing.core.rig.TextbookLayout;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

class RestPointProperties {

  private static final int SIDE = 641;
  private static final double REACH = 4;

  /** Minima - saddles + maxima = 1 on a disc (Milnor 1965, section 6). */
  @Property(tries = 60)
  void criticalPointsOfRandomLayoutsAddUpToOne(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    TextbookLayout layout = RandomLayouts.layout(seed);
    RestPoints found = new RestPointFinder(AttractorPlane.of(layout), ScanRegion.of(layout)).find();
    RestPoints.Census census = found.census();
    assertTrue(found.complete(), () -> census.toString());
    assertEquals(1, census.turns());
    assertEquals(1, census.minima() - census.saddles() + census.maxima());
    assertEquals(census.minima(), found.list().size());
    double[] d = new double[6];
    for (RestPoint r : found.list()) {
      AttractorPlane.of(layout).potentialDerivatives(r.q0(), r.q1(), d);
      assertTrue(Math.hypot(d[1], d[2]) < 1e-11);
      assertTrue(d[3] > 0 && d[3] * d[5] > d[4] * d[4]);
    }
  }

  /**
   * The lowest highest point of all ways out, by Dijkstra (1959) on a fine grid of its own: an
   * independent way to the barrier, off by less than what one cell's curvature allows.
   */
  @Property(tries = 30)
  void barriersAreTheLowestWaysOutOnAFineGrid(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    TextbookLayout layout = RandomLayouts.layout(seed);
    AttractorPlane plane = AttractorPlane.of(layout);
    RestPoints found = new RestPointFinder(plane, ScanRegion.of(layout)).find();
    double[] v = new double[SIDE * SIDE];
    for (int n = 0; n < v.length; n++) {
      v[n] = plane.potential(at(n / SIDE), at(n % SIDE));
    }
    double[] d = new double[6];
    for (RestPoint r : found.list()) {
      if (found.list().size() == 1) {
        continue;
      }
      Saddle over = found.saddles().get(r.barrier().saddle().orElseThrow());
      plane.potentialDerivatives(over.q0(), over.q1(), d);
      double cell = 2 * REACH / (SIDE - 1);
      double bend = Math.abs(d[3]) + Math.abs(d[5]) + 2 * Math.abs(d[4]);
      double level = lowestWayOut(v, r, found);
      assertEquals(level, r.barrier().passEnergy(), 0.5 * bend * cell * cell + 1e-9);
    }
  }

  private static double at(int i) {
    return -REACH + 2 * REACH * i / (SIDE - 1);
  }

  private static int node(double q0, double q1) {
    long i = Math.round((q0 + REACH) * (SIDE - 1) / (2 * REACH));
    long j = Math.round((q1 + REACH) * (SIDE - 1) / (2 * REACH));
    return (int) (i * SIDE + j);
  }

  private static double lowestWayOut(double[] v, RestPoint from, RestPoints found) {
    boolean[] goal = new boolean[v.length];
    for (RestPoint r : found.list()) {
      goal[node(r.q0(), r.q1())] |= r.index() != from.index();
    }
    double[] best = new double[v.length];
    Arrays.fill(best, Double.POSITIVE_INFINITY);
    PriorityQueue<double[]> queue = new PriorityQueue<>((a, b) -> Double.compare(a[0], b[0]));
    int start = node(from.q0(), from.q1());
    best[start] = v[start];
    queue.add(new double[] {v[start], start});
    while (!queue.isEmpty()) {
      double[] top = queue.remove();
      int n = (int) top[1];
      if (goal[n]) {
        return top[0];
      }
      for (int di = -1; di <= 1; di++) {
        for (int dj = -1; dj <= 1; dj++) {
          int i = n / SIDE + di;
          int j = n % SIDE + dj;
          boolean inside = i >= 0 && j >= 0 && i < SIDE && j < SIDE;
          if (inside && Math.max(top[0], v[i * SIDE + j]) < best[i * SIDE + j]) {
            best[i * SIDE + j] = Math.max(top[0], v[i * SIDE + j]);
            queue.add(new double[] {best[i * SIDE + j], i * SIDE + j});
          }
        }
      }
    }
    return Double.POSITIVE_INFINITY;
  }
}
