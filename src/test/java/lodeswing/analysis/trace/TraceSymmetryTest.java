package lodeswing.analysis.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Three equal magnets on an exact triangle: a release turned by a third turns its whole path. */
class TraceSymmetryTest {

  private static final double COSINE = -0.5;
  private static final double SINE = 0.5 * Math.sqrt(3);

  private static Layout exactTriangle(boolean bench) {
    double[][] corners = {{1, 0}, {COSINE, SINE}, {COSINE, -SINE}};
    if (!bench) {
      TextbookLayout own = TrialLayouts.triangle(0.2);
      List<TextbookLayout.Attractor> three = new ArrayList<>();
      for (double[] c : corners) {
        double radius = own.magnets().get(0).x();
        three.add(new TextbookLayout.Attractor(radius * c[0], radius * c[1], 1));
      }
      return new TextbookLayout(own.omega0(), own.drag(), own.height(), three);
    }
    BenchLayout own = TrialLayouts.bench("three-stations");
    List<PlacedMagnet> three = new ArrayList<>();
    for (double[] c : corners) {
      PlacedMagnet first = own.magnets().get(0);
      double radius = first.centre().x();
      Vec3 centre = new Vec3(radius * c[0], radius * c[1], first.centre().z());
      three.add(new PlacedMagnet(first.magnet(), centre, 0, first.poleUp()));
    }
    // Lossy enough to be sealed while the path is still trusted.
    LossLaw loss = LossLaw.fromSwingsToHalf(4, own.suspension().body(), own.gravity());
    return new BenchLayout(
        own.suspension(), own.bob(), own.gap(), three, own.backing(), own.gravity(), loss);
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void releaseTurnedByAThirdEndsAThirdFurtherOn(boolean bench) {
    Landscape landscape = TrialLandscapes.of(exactTriangle(bench));
    assertEquals(3, landscape.restPoints().list().size());
    double reach = bench ? 0.11 : 1.6;
    double speed = bench ? 0.2 : 0.5;
    SplittableRandom random = new SplittableRandom(5);
    int sure = 0;
    for (int n = 0; n < 20; n++) {
      double x = reach * random.nextDouble(-1, 1);
      double y = reach * random.nextDouble(-1, 1);
      double vx = speed * random.nextDouble(-1, 1);
      double vy = speed * random.nextDouble(-1, 1);
      TraceResult one = run(landscape, x, y, vx, vy);
      TraceResult two =
          run(
              landscape,
              COSINE * x - SINE * y,
              SINE * x + COSINE * y,
              COSINE * vx - SINE * vy,
              SINE * vx + COSINE * vy);
      sure += compare(landscape, one, two);
    }
    assertTrue(sure >= 15, "only " + sure + " were trusted until sealed");
  }

  private static TraceResult run(Landscape landscape, double x, double y, double vx, double vy) {
    double[] start = TrialLandscapes.start(landscape, x, y, vx, vy);
    return new Trace(landscape).run(TrialLandscapes.spec(30, 0.02), start);
  }

  /** Paths agree as long as both are trusted; ends agree where they were sealed by then. */
  private static int compare(Landscape landscape, TraceResult one, TraceResult two) {
    double trusted =
        Math.min(
            one.trustedUntil().orElse(Double.POSITIVE_INFINITY),
            two.trustedUntil().orElse(Double.POSITIVE_INFINITY));
    double allowed = 2 * landscape.planScale().trustedDistance(1);
    Samples a = one.samples();
    Samples b = two.samples();
    for (int i = 0; i < Math.min(a.count(), b.count()) && a.t(i) < trusted; i++) {
      double x = COSINE * a.x()[i] - SINE * a.y()[i];
      double y = SINE * a.x()[i] + COSINE * a.y()[i];
      int sample = i;
      assertTrue(Math.hypot(x - b.x()[i], y - b.y()[i]) < allowed, () -> "at " + a.t(sample));
    }
    if (one.sealedAt().orElseThrow() > trusted) {
      return 0;
    }
    assertEquals((one.restPoint().orElseThrow() + 1) % 3, two.restPoint().orElseThrow());
    assertEquals(one.sealedAt().getAsDouble(), two.sealedAt().orElseThrow(), 1e-2);
    return 1;
  }
}
