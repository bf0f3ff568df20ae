package lodeswing.analysis.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Motion;
import lodeswing.core.rest.RestPoint;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;
import org.junit.jupiter.api.Test;

/** Sealed outcomes against the same motion followed until the bob hardly moves. */
class TraceOutcomeTest {

  private static final int RELEASES = 16;

  @Test
  void sealedOutcomeIsWhereTheFullRunComesToRest() {
    AtomicInteger compared = new AtomicInteger();
    for (Layout layout :
        List.of(
            TrialLayouts.sample("three-stations"),
            TrialLayouts.sample("kitchen-drawer"),
            TrialLayouts.sample("paper-triangle"),
            mixed())) {
      Landscape landscape = TrialLandscapes.of(layout);
      double reach = TrialLandscapes.isBench(landscape) ? 0.12 : 1.8;
      SplittableRandom random = new SplittableRandom(layout.magnetCount());
      List<double[]> starts =
          random
              .doubles(-reach, reach)
              .boxed()
              .map(x -> TrialLandscapes.start(landscape, x, reach * random.nextDouble(-1, 1), 0, 0))
              .filter(s -> TrialLandscapes.inside(landscape.motion(), s))
              .limit(RELEASES)
              .toList();
      IntStream.range(0, RELEASES)
          .parallel()
          .forEach(i -> compare(landscape, starts.get(i), layout + " " + i, compared));
    }
    assertTrue(compared.get() >= 60, "compared only " + compared.get());
  }

  /** Three that attract unequally and two that repel. */
  private static TextbookLayout mixed() {
    return new TextbookLayout(
        0.6,
        0.15,
        0.25,
        List.of(
            new TextbookLayout.Attractor(0.7, 0.1, 1),
            new TextbookLayout.Attractor(-0.5, 0.6, 0.7),
            new TextbookLayout.Attractor(-0.3, -0.8, 1.3),
            new TextbookLayout.Attractor(0.1, 0.1, -0.8),
            new TextbookLayout.Attractor(0.5, -0.9, -0.5)));
  }

  private static void compare(
      Landscape landscape, double[] start, String name, AtomicInteger compared) {
    TraceResult path = new Trace(landscape).run(TrialLandscapes.spec(1, 0.1), start);
    if (path.ending().isPresent()) {
      return;
    }
    assertTrue(path.restPoint().isPresent(), name);
    assertTrue(path.sealedAt().orElseThrow() <= path.settledAt().orElseThrow(), name);
    assertTrue(path.settledAt().orElseThrow() <= path.followedUntil(), name);
    double[] plan = new double[4];
    landscape.motion().toPlan(atRest(landscape, start), plan);
    assertEquals(path.restPoint().getAsInt(), nearest(landscape, plan), name);
    compared.incrementAndGet();
  }

  /** The state once the bob has kept below a thousandth of its swing's speed for a while. */
  private static double[] atRest(Landscape landscape, double[] start) {
    Motion motion = landscape.motion();
    double slow = 1e-3 * Math.hypot(start[0], start[1]) * motion.naturalRate();
    double[] state = new double[4];
    double[] quietSince = {0};
    return ScalarIntegrator.forMotion(motion)
        .integrate(
            start,
            2_000,
            Tolerance.TRACE,
            step -> {
              step.endState(state);
              if (Math.hypot(state[2], state[3]) > slow) {
                quietSince[0] = step.endTime();
              }
              return step.endTime() - quietSince[0] < 2 * Math.PI / motion.naturalRate();
            })
        .state();
  }

  private static int nearest(Landscape landscape, double[] plan) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    for (RestPoint r : landscape.restPoints().list()) {
      double distance = Math.hypot(plan[0] - r.x(), plan[1] - r.y());
      if (distance < least) {
        least = distance;
        best = r.index();
      }
    }
    return best;
  }

  @Test
  void progressIsToldOftenRisesAndMayEndTheWork() {
    Landscape landscape = TrialLandscapes.of(TrialLayouts.sample("paper-triangle"));
    double[] start = TrialLandscapes.start(landscape, 1.2, 0.4, 0, 0);
    TraceSpec spec = TrialLandscapes.spec(1, 0.1);
    List<Double> told = new ArrayList<>();

    TraceResult path = new Trace(landscape).run(spec, start, told::add);

    assertEquals(new Trace(landscape).run(spec, start).restPoint(), path.restPoint());
    assertTrue(told.size() > 2, told.toString());
    for (int i = 1; i < told.size(); i++) {
      assertTrue(told.get(i - 1) <= told.get(i) && told.get(i) <= 1, told.toString());
    }
    assertThrows(
        CancellationException.class,
        () ->
            new Trace(landscape)
                .run(
                    spec,
                    start,
                    fraction -> {
                      throw new CancellationException();
                    }));
  }
}
