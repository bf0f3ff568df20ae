package lodeswing.analysis.basin;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lodeswing.analysis.trace.Trace;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.analysis.trace.TraceSpec;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.landscape.MirrorSymmetry;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.outcome.SharedFinder;
import lodeswing.core.rig.Release;
import lodeswing.core.window.BasinWindow;
import lodeswing.core.window.PixelGrid;
import org.junit.jupiter.api.Test;

/** Maps of layouts that are their own picture in a mirror. */
class MirroredMapTest {

  private static final OutcomeFinders FINDERS = new OutcomeFinders(LaneProvider.choose());
  private static final int SIDE = 32;

  private static BasinMap tile(Landscape landscape, BasinWindow window, int zoom, long x, long y) {
    PixelGrid grid = PixelGrid.tile(window, zoom, x, y, SIDE);
    Tolerance tolerance = window.tolerance(landscape, grid.pixel());
    return BasinMap.ofSettling(
        landscape, grid, FINDERS.settling(landscape, tolerance, 600), done -> {});
  }

  private static void assertSame(BasinMap expected, BasinMap found) {
    assertArrayEquals(expected.ends(), found.ends());
    for (int row = 0; row < SIDE; row++) {
      for (int column = 0; column < SIDE; column++) {
        assertEquals(
            Float.floatToRawIntBits(expected.sealedAt(column, row)),
            Float.floatToRawIntBits(found.sealedAt(column, row)));
        assertEquals(
            Float.floatToRawIntBits(expected.settledAt(column, row)),
            Float.floatToRawIntBits(found.settledAt(column, row)));
      }
    }
  }

  /** The half width has no short binary form, so that centres are rounded. */
  @Test
  void mirrorImageIsToTheBitWhatIsComputedAnew() {
    Landscape landscape = Landscape.of(TrialLayouts.triangle(0.2));
    MirrorSymmetry symmetry = landscape.symmetry();
    assertTrue(symmetry.turnsY());
    BasinWindow window = new BasinWindow(0.1, 0, 1.7);
    for (long[] place : new long[][] {{1, 1, 1}, {3, 2, 5}}) {
      int zoom = (int) place[0];
      long across = (1L << zoom) - 1 - place[2];
      assertSame(
          tile(landscape, window, zoom, place[1], place[2]),
          tile(landscape, window, zoom, place[1], across).mirrored(symmetry, false, true));
    }
  }

  @Test
  void benchLayoutWithTwoMirrorsTurnsInBoth() {
    Landscape landscape = Landscape.of(TrialLayouts.sample("closed-doors"));
    MirrorSymmetry symmetry = landscape.symmetry();
    assertTrue(symmetry.turnsX() && symmetry.turnsY());
    BasinWindow window = new BasinWindow(0, 0, 0.023);
    assertSame(
        tile(landscape, window, 1, 0, 1),
        tile(landscape, window, 1, 1, 0).mirrored(symmetry, true, true));
  }

  @Test
  void endsOfMirroredReleasesAreMirrored() {
    Landscape landscape = Landscape.of(TrialLayouts.triangle(0.2));
    Tolerance tolerance = landscape.planScale().tolerance(1e-5, 2);
    SharedFinder finder = FINDERS.of(landscape, tolerance, 600);
    int count = 500;
    double[] releases = new double[8 * count];
    var random = new java.util.SplittableRandom(11);
    for (int i = 0; i < count; i++) {
      for (int k = 0; k < 4; k++) {
        double value = 4 * random.nextDouble() - 2;
        releases[8 * i + k] = value;
        releases[8 * i + 4 + k] = k % 2 == 0 ? value : -value;
      }
    }
    Ends ends = new Ends(2 * count);
    finder.find(releases, 0, 2 * count, ends);
    for (int i = 0; i < count; i++) {
      int mirrored = landscape.symmetry().unfold(ends.end(2 * i), false, true);
      assertEquals(mirrored, ends.end(2 * i + 1), "release " + i);
      assertEquals(ends.sealedAt(2 * i), ends.sealedAt(2 * i + 1), "release " + i);
    }
  }

  /** One at a time they are followed as they stand, as a trace follows them. */
  @Test
  void singleReleasesTakeTheirOwnPath() {
    Landscape landscape = Landscape.of(TrialLayouts.triangle(0.2));
    SharedFinder finder = FINDERS.single(landscape, Tolerance.TRACE, 600, false);
    var random = new java.util.SplittableRandom(12);
    for (int i = 0; i < 40; i++) {
      double x = 4 * random.nextDouble() - 2;
      double y = -2 * random.nextDouble();
      Ends ends = new Ends(1);
      finder.find(new double[] {x, y, 0, 0}, 0, 1, ends);
      TraceSpec spec = new TraceSpec(new Release(x, y, 0, 0), 1, 0.5, 1e-3, 600);
      TraceResult trace = new Trace(landscape).run(spec, new double[] {x, y, 0, 0});
      assertEquals(trace.restPoint().orElse(Ends.UNSETTLED), ends.end(0), x + " " + y);
      assertEquals(trace.sealedAt().orElse(Double.NaN), ends.sealedAt(0), x + " " + y);
    }
  }
}
