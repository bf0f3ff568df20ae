package lodeswing.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import org.junit.jupiter.api.Test;

/** Settling times on lanes, against those of one release at a time, which traces share. */
class SettlingTest {

  private static final double LONGEST = 300;
  private static final int COUNT = 60;
  private static final Tolerance TOLERANCE = new Tolerance(1e-12, 1e-11);

  @Test
  void lanesSettleWhenOneAtATimeDoesOnThePlane() {
    assertTrue(compare(OutcomeLayouts.plane(3), 1) > 0.9);
  }

  @Test
  void lanesSettleWhenOneAtATimeDoesOnABenchWithFriction() {
    assertTrue(compare(OutcomeLayouts.benchWithDragAndFriction(), 0.04) > 0.8);
  }

  @Test
  void whatIsNotCertainInTimeHasNotSettled() {
    Ends ends = lanes(OutcomeLayouts.plane(3), releases(1.5), 2);
    int sealed = 0;
    for (int i = 0; i < COUNT; i++) {
      sealed += ends.end(i) >= 0 ? 1 : 0;
      assertTrue(!(ends.settledAt(i) > 2));
      assertTrue(ends.end(i) >= 0 || Double.isNaN(ends.settledAt(i)));
    }
    assertTrue(sealed < COUNT);
  }

  /** Share of the releases whose times both agree. */
  private static double compare(Landscape landscape, double reach) {
    double[] releases = releases(reach);
    Ends settling = lanes(landscape, releases, LONGEST);
    Ends sealed = new Ends(COUNT);
    new LaneOutcomeFinder(landscape, LaneProvider.choose(), TOLERANCE, LONGEST)
        .find(releases, 0, COUNT, sealed);
    Ends single = new Ends(COUNT);
    new ScalarOutcomeFinder(landscape, TOLERANCE, LONGEST, true).find(releases, 0, COUNT, single);
    int alike = 0;
    for (int i = 0; i < COUNT; i++) {
      assertEquals(sealed.end(i), settling.end(i));
      assertEquals(
          Double.doubleToRawLongBits(sealed.sealedAt(i)),
          Double.doubleToRawLongBits(settling.sealedAt(i)));
      assertTrue(settling.end(i) < 0 || settling.settledAt(i) >= settling.sealedAt(i));
      if (settling.end(i) == single.end(i)) {
        assertEquals(single.settledAt(i), settling.settledAt(i), 1e-3 * LONGEST);
        alike += Math.abs(single.settledAt(i) - settling.settledAt(i)) < 1e-5 * LONGEST ? 1 : 0;
      }
    }
    return (double) alike / COUNT;
  }

  private static Ends lanes(Landscape landscape, double[] releases, double longest) {
    Ends ends = new Ends(COUNT);
    new OutcomeFinders(LaneProvider.choose())
        .settling(landscape, TOLERANCE, longest)
        .find(releases, 0, COUNT, ends);
    return ends;
  }

  private static double[] releases(double reach) {
    Random random = new Random(11);
    double[] releases = new double[4 * COUNT];
    for (int i = 0; i < COUNT; i++) {
      releases[4 * i] = reach * (2 * random.nextDouble() - 1);
      releases[4 * i + 1] = reach * (2 * random.nextDouble() - 1);
    }
    return releases;
  }
}
