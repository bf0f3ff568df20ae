package lodeswing.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Step;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Motion;
import lodeswing.core.rest.RestPoint;
import org.junit.jupiter.api.Test;

/** Ends on lanes against the finder that follows one release at a time, and against full runs. */
class LaneOutcomeTest {

  private static final double LONGEST = 200;

  private static OutcomeFinder lanes(Landscape landscape, double tolerance) {
    return new LaneOutcomeFinder(
        landscape, LaneProvider.choose(), Tolerance.of(tolerance), LONGEST);
  }

  private static OutcomeFinder reference(Landscape landscape, double tolerance) {
    return new ScalarOutcomeFinder(landscape, Tolerance.of(tolerance), LONGEST, false);
  }

  private static double[] releases(int count, double reach, long seed) {
    Random random = new Random(seed);
    double[] releases = new double[4 * count];
    for (int i = 0; i < count; i++) {
      releases[4 * i] = reach * (2 * random.nextDouble() - 1);
      releases[4 * i + 1] = reach * (2 * random.nextDouble() - 1);
    }
    return releases;
  }

  @Test
  void endsAndTimesInThePlaneAgreeWithTheReference() {
    assertAgree(OutcomeLayouts.plane(3), releases(1500, 2, 1), 1e-12, 1);
  }

  @Test
  void shortSwingsOnTheBenchEndAsInTheReference() {
    assertAgree(OutcomeLayouts.bench(), releases(300, 0.05, 2), 1e-10, 2);
  }

  /** Ends the same but for some, sealing times within 2 ms. */
  private static void assertAgree(
      Landscape landscape, double[] releases, double referenceTolerance, int allowed) {
    int count = releases.length / 4;
    Ends found = new Ends(count);
    Ends wanted = new Ends(count);
    lanes(landscape, 1e-9).find(releases, 0, count, found);
    reference(landscape, referenceTolerance).find(releases, 0, count, wanted);
    int differ = 0;
    double worst = 0;
    for (int i = 0; i < count; i++) {
      if (found.end(i) != wanted.end(i)) {
        differ++;
      } else {
        worst = Math.max(worst, Math.abs(found.sealedAt(i) - wanted.sealedAt(i)));
      }
    }
    assertTrue(differ <= allowed, differ + " ends differ");
    assertTrue(worst < 2e-3, "sealing times differ by " + worst);
  }

  @Test
  void sealedEndIsWhereTheFullRunComesToRest() {
    Landscape landscape = OutcomeLayouts.plane(3);
    int count = 100;
    double[] releases = releases(count, 2, 3);
    Ends found = new Ends(count);
    lanes(landscape, 1e-11).find(releases, 0, count, found);
    for (int i = 0; i < count; i++) {
      assertTrue(found.end(i) >= 0);
      assertEquals(restOf(landscape, releases, i), found.end(i), "release " + i);
    }
  }

  /** Follows a release far past its sealing and takes the nearest rest point. */
  private static int restOf(Landscape landscape, double[] releases, int i) {
    double[] start = {releases[4 * i], releases[4 * i + 1], 0, 0};
    double[] end = new double[4];
    ScalarIntegrator.forMotion(landscape.motion())
        .integrate(
            start,
            150,
            new Tolerance(1e-13, 1e-11),
            (Step step) -> {
              step.endState(end);
              return true;
            });
    int nearest = -1;
    double least = Double.POSITIVE_INFINITY;
    for (RestPoint point : landscape.restPoints().list()) {
      double distance = Math.hypot(point.q0() - end[0], point.q1() - end[1]);
      if (distance < least) {
        least = distance;
        nearest = point.index();
      }
    }
    assertTrue(least < 1e-3, "not at rest yet: " + least);
    return nearest;
  }

  @Test
  void whatTouchesAMagnetIsFoundOnLanesToo() {
    Landscape landscape = OutcomeLayouts.blocked();
    int count = 200;
    double[] releases = releases(count, 0.06, 4);
    Ends found = new Ends(count);
    Ends wanted = new Ends(count);
    lanes(landscape, 1e-9).find(releases, 0, count, found);
    reference(landscape, 1e-9).find(releases, 0, count, wanted);
    int touched = 0;
    int differ = 0;
    for (int i = 0; i < count; i++) {
      touched += wanted.end(i) == Ends.MAGNET_CONTACT ? 1 : 0;
      differ += wanted.end(i) == found.end(i) ? 0 : 1;
    }
    assertTrue(touched > 20 && touched < 180, touched + " touch");
    assertTrue(differ <= 2, differ + " differ");
  }

  @Test
  void releaseThatCannotBeIsSaid() {
    Landscape landscape = OutcomeLayouts.bench();
    double[] releases = {0.5, 0, 0, 0, 0.41, 0.05, 0, 0, 0.03, 0, 0, 0};
    Ends ends = new Ends(3);
    lanes(landscape, 1e-6).find(releases, 0, 3, ends);
    assertEquals(Ends.CANNOT_START, ends.end(0));
    assertEquals(Ends.CANNOT_START, ends.end(1));
    assertTrue(ends.end(2) >= 0);
  }

  @Test
  void fastThrowLeavesTheAngles() {
    Landscape landscape = OutcomeLayouts.bench();
    double[] releases = {0.1, 0, 6, 0};
    Ends ends = new Ends(1);
    lanes(landscape, 1e-6).find(releases, 0, 1, ends);
    Ends wanted = new Ends(1);
    reference(landscape, 1e-6).find(releases, 0, 1, wanted);
    assertEquals(wanted.end(0), ends.end(0));
    assertTrue(ends.end(0) < Ends.CANNOT_START, "ended as " + ends.end(0));
  }

  @Test
  void withoutLossNothingIsDecided() {
    Landscape landscape = OutcomeLayouts.of(OutcomeLayouts.ring(3, 0));
    double[] releases = releases(5, 2, 6);
    Ends ends = new Ends(5);
    lanes(landscape, 1e-6).find(releases, 0, 5, ends);
    for (int i = 0; i < 5; i++) {
      assertEquals(Ends.UNSETTLED, ends.end(i));
    }
  }

  @Test
  void whatIsNotDecidedInTimeIsNoGuess() {
    Landscape landscape = OutcomeLayouts.plane(3);
    double[] releases = releases(200, 2, 7);
    Ends ends = new Ends(200);
    new LaneOutcomeFinder(landscape, LaneProvider.choose(), Tolerance.of(1e-6), 5)
        .find(releases, 0, 200, ends);
    int undecided = 0;
    for (int i = 0; i < 200; i++) {
      if (ends.end(i) == Ends.UNSETTLED) {
        undecided++;
        assertTrue(Double.isNaN(ends.sealedAt(i)));
      } else {
        assertTrue(ends.sealedAt(i) <= 5);
      }
    }
    assertTrue(undecided > 20, "only " + undecided);
  }

  @Test
  void powerIsTheRateOfTheEnergy() {
    for (Landscape landscape :
        new Landscape[] {OutcomeLayouts.plane(3), OutcomeLayouts.benchWithDragAndFriction()}) {
      Motion motion = landscape.motion();
      double[] q = {0.07, -0.04, 0.6, 0.9};
      double[] a = new double[3];
      motion.acceleration(q[0], q[1], q[2], q[3], a);
      double h = 1e-5;
      double ahead = energyAfter(motion, q, a, h);
      double behind = energyAfter(motion, q, a, -h);
      double power = motion.power(q[0], q[1], q[2], q[3]);
      assertEquals((ahead - behind) / (2 * h), power, 1e-5 * Math.abs(power));
    }
  }

  private static double energyAfter(Motion motion, double[] q, double[] a, double h) {
    return motion.energy(
        q[0] + h * q[2] + h * h / 2 * a[0],
        q[1] + h * q[3] + h * h / 2 * a[1],
        q[2] + h * a[0],
        q[3] + h * a[1]);
  }
}
