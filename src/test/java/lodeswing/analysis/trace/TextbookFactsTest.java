package lodeswing.analysis.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.ReleaseWatch;
import lodeswing.core.rest.RestPoint;
import lodeswing.core.rest.RestPoints;
import lodeswing.core.rest.Saddle;
import lodeswing.core.rig.TextbookLayout;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;

/**
 * What is known of the plane idealisation over three equal magnets, omega0 = 0.5, drag = 0.2,
 * height = 0.3, magnets a unit apart.
 *
 * <p>That it has three fixed-point attractors: A. E. Motter, M. Gruiz, G. Karolyi, T. Tel, Doubly
 * transient chaos: generic form of chaos in autonomous dissipative systems, Phys. Rev. Lett. 111
 * (2013) 194101, as reported in Physics World of 20 November 2013. That the boundary of its basins
 * has a dimension that falls as the resolution grows: X. Chen, T. Nishikawa, A. E. Motter, Slim
 * fractals: the geometry of doubly transient chaos, Phys. Rev. X 7 (2017) 021040, abstract. That
 * the rate of settling grows with time: the abstract of the first paper, from memory. The
 * parameters are those of the sample, not checked against the papers; places and shares are derived
 * here.
 */
class TextbookFactsTest {

  private static final double RADIUS = 1 / Math.sqrt(3);
  private static final double HEIGHT = 0.3;
  private static final double STIFFNESS = 0.25;
  private static final Landscape LANDSCAPE = Landscape.of(layout());

  private static TextbookLayout layout() {
    return new TextbookLayout(
        0.5,
        0.2,
        HEIGHT,
        List.of(
            new TextbookLayout.Attractor(RADIUS, 0, 1),
            new TextbookLayout.Attractor(-RADIUS / 2, 0.5, 1),
            new TextbookLayout.Attractor(-RADIUS / 2, -0.5, 1)));
  }

  /** Force along the axis of symmetry through the first magnet: one equation in one unknown. */
  private static double forceOnAxis(double x) {
    double dx = RADIUS - x;
    double own = dx / Math.pow(dx * dx + HEIGHT * HEIGHT, 1.5);
    double ex = -RADIUS / 2 - x;
    double others = 2 * ex / Math.pow(ex * ex + 0.25 + HEIGHT * HEIGHT, 1.5);
    return own + others - STIFFNESS * x;
  }

  private static double root(double from, double to) {
    return new BrentSolver(1e-15, 1e-15).solve(200, TextbookFactsTest::forceOnAxis, from, to);
  }

  @Test
  void attractorsAndPassesAreRootsOnTheAxesOfSymmetry() {
    RestPoints found = LANDSCAPE.restPoints();
    double well = root(0.4, 0.6);
    double pass = root(-0.5, -0.05);
    assertEquals(3, found.list().size());
    assertEquals(3, found.saddles().size());
    assertEquals(1, found.census().maxima());
    for (RestPoint r : found.list()) {
      double turn = 2 * Math.PI / 3 * r.index();
      assertEquals(well * Math.cos(turn), r.x(), 1e-12);
      assertEquals(well * Math.sin(turn), r.y(), 1e-12);
    }
    for (Saddle s : found.saddles()) {
      assertEquals(-pass, Math.hypot(s.x(), s.y()), 1e-12);
      double turns = (Math.atan2(s.y(), s.x()) - Math.PI) / (2 * Math.PI / 3);
      assertEquals(Math.rint(turns), turns, 1e-9);
    }
    assertTrue(well < RADIUS, "the spring draws the bob inwards of its magnet");
    assertEquals(0, forceOnAxis(0), 1e-15);
  }

  /** In the middle V'' = omega0^2 + 3/D^3 - 9 R^2/(2 D^5), D^2 = R^2 + h^2, in every direction. */
  @Test
  void middleIsARoundHill() {
    double[] d = new double[6];
    LANDSCAPE.motion().potentialDerivatives(0, 0, d);
    double square = RADIUS * RADIUS + HEIGHT * HEIGHT;
    double bend =
        STIFFNESS + 3 / Math.pow(square, 1.5) - 4.5 * RADIUS * RADIUS / Math.pow(square, 2.5);
    assertTrue(bend < 0);
    assertEquals(bend, d[3], 1e-12);
    assertEquals(bend, d[5], 1e-12);
    assertEquals(0, d[4], 1e-12);
  }

  private record End(int well, double sealedAt) {}

  private static End end(double x, double y) {
    double[] start = {x, y, 0, 0};
    ReleaseWatch watch = new ReleaseWatch(LANDSCAPE, start, false);
    if (!watch.done()) {
      ScalarIntegrator.forMotion(LANDSCAPE.motion())
          .integrate(start, 400, Tolerance.of(1e-10), watch.observer());
    }
    assertTrue(watch.end() >= 0);
    return new End(watch.end(), watch.sealedAt());
  }

  private static List<double[]> places(int count, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<double[]> places = new ArrayList<>();
    while (places.size() < count) {
      double x = 2 * random.nextDouble(-1, 1);
      double y = 2 * random.nextDouble(-1, 1);
      if (Math.hypot(x, y) < 2) {
        places.add(new double[] {x, y});
      }
    }
    return places;
  }

  /** Over a disc about the middle the basins are turned copies: a third of it each. */
  @Test
  void basinsShareADiscEquallyAndSettleFasterAndFaster() {
    int count = 6_000;
    List<End> ends = places(count, 1).stream().parallel().map(p -> end(p[0], p[1])).toList();
    int[] counts = new int[3];
    ends.forEach(e -> counts[e.well()]++);
    // Five standard deviations of a binomial share of a third.
    double allowed = 5 * Math.sqrt(count * 2.0 / 9);
    for (int c : counts) {
      assertEquals(count / 3.0, c, allowed);
    }
    double[] left = new double[7];
    for (int k = 0; k < left.length; k++) {
      double time = 2 * k;
      left[k] = ends.stream().filter(e -> e.sealedAt() > time).count();
    }
    double before = 0;
    for (int k = 2; k < 6; k++) {
      assertTrue(left[k + 1] > 100, "too few are left to count");
      double rate = Math.log(left[k] / left[k + 1]) / 2;
      assertTrue(rate > 1.2 * before, "rate " + rate + " after " + before);
      before = rate;
    }
  }

  /**
   * Share f of releases that end elsewhere than one displaced by eps: f goes with eps^(2 - D), D
   * the boundary's dimension at that resolution (C. Grebogi, S. W. McDonald, E. Ott, J. A. Yorke,
   * Final state sensitivity, Phys. Lett. A 99 (1983) 415; the number from memory).
   */
  @Test
  void dimensionOfTheBasinsBoundaryFallsWithTheResolution() {
    double[] scales = {1e-1, 1e-2, 1e-3, 1e-4, 1e-5};
    int count = 2_500;
    List<double[]> places = places(count, 2);
    int[] own = places.stream().parallel().mapToInt(p -> end(p[0], p[1]).well()).toArray();
    double[] share = new double[scales.length];
    for (int k = 0; k < scales.length; k++) {
      double eps = scales[k];
      share[k] =
          IntStream.range(0, count)
                  .parallel()
                  .filter(i -> end(places.get(i)[0] + eps, places.get(i)[1]).well() != own[i])
                  .count()
              / (double) count;
    }
    double before = 2;
    for (int k = 0; k + 1 < scales.length; k++) {
      double dimension = 2 - Math.log10(share[k] / share[k + 1]);
      // A smooth line has 1; some twenty pairs decide the finest scale.
      assertTrue(0.8 < dimension && dimension < before - 0.05, dimension + " after " + before);
      before = dimension;
    }
  }
}
