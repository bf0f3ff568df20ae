package lodeswing.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.landscape.MirrorSymmetry;
import lodeswing.core.motion.Motion;
import lodeswing.core.motion.MotionSystem;
import lodeswing.core.rest.SealRule;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** The reference finder, against Commons Math's DOP853 at 1e-12 on the textbook scene. */
class ScalarOutcomeFinderTest {

  private static final Landscape TRIANGLE = Landscape.of(TrialLayouts.triangle(0.2));
  private static final Tolerance TOLERANCE = Tolerance.of(1e-10);

  private static double[] releases(int count, double half) {
    SplittableRandom random = new SplittableRandom(3);
    double[] releases = new double[4 * count];
    for (int i = 0; i < count; i++) {
      releases[4 * i] = half * (2 * random.nextDouble() - 1);
      releases[4 * i + 1] = half * (2 * random.nextDouble() - 1);
    }
    return releases;
  }

  private static Ends find(Landscape landscape, double[] releases, double longest) {
    Ends ends = new Ends(releases.length / 4);
    new ScalarOutcomeFinder(landscape, TOLERANCE, longest, false)
        .find(releases, 0, ends.size(), ends);
    return ends;
  }

  @Test
  void endsAndSealingTimesAreThoseOfAnotherIntegrator() {
    double[] releases = releases(150, 2);
    Ends ends = find(TRIANGLE, releases, 600);
    for (int i = 0; i < ends.size(); i++) {
      Sealing other = new Sealing(TRIANGLE, releases, i);
      assertEquals(other.well, ends.end(i));
      assertEquals(other.time, ends.sealedAt(i), 1e-3);
    }
  }

  @Test
  void eachOfThreeEqualStationsGetsAThirdOfTheReleases() {
    int count = 3_000;
    double[] releases = releases(count, 2);
    for (int i = 0; i < count; i++) {
      // A disc keeps the symmetry of the triangle, a square does not.
      double longer = Math.max(Math.abs(releases[4 * i]), Math.abs(releases[4 * i + 1]));
      double shrink = longer / Math.hypot(releases[4 * i], releases[4 * i + 1]);
      releases[4 * i] *= shrink;
      releases[4 * i + 1] *= shrink;
    }
    Ends ends = find(TRIANGLE, releases, 600);
    int[] found = new int[3];
    for (int i = 0; i < count; i++) {
      found[ends.end(i)]++;
    }
    // Standard error of a share of a third among 3,000: 0.86 %; four of them.
    for (int wells : found) {
      assertEquals(1 / 3.0, (double) wells / count, 0.035);
    }
  }

  @Test
  void withoutLossABobEndsNowhere() {
    Landscape lossless = Landscape.of(TrialLayouts.triangle(0));
    Ends ends = find(lossless, new double[] {1.5, 0.2, 0, 0, 0.57, 0.01, 0, 0}, 600);
    assertEquals(Ends.UNSETTLED, ends.end(0));
    assertTrue(Double.isNaN(ends.sealedAt(0)));
    assertEquals(Ends.UNSETTLED, ends.end(1));
  }

  @Test
  void whatIsNotCertainInTimeIsUnsettled() {
    Ends ends = find(TRIANGLE, new double[] {1.5, 0.2, 0, 0}, 1);
    assertEquals(Ends.UNSETTLED, ends.end(0));
  }

  @Test
  void bobSettlesAfterItsEndIsCertain() {
    double[] releases = releases(40, 2);
    Ends ends = new Ends(40);
    new ScalarOutcomeFinder(TRIANGLE, TOLERANCE, 600, true).find(releases, 0, 40, ends);
    Ends sealed = find(TRIANGLE, releases, 600);
    for (int i = 0; i < 40; i++) {
      assertEquals(sealed.end(i), ends.end(i));
      assertEquals(sealed.sealedAt(i), ends.sealedAt(i), 1e-9);
      assertTrue(ends.settledAt(i) > ends.sealedAt(i));
    }
  }

  @Test
  void allCoresFindWhatOneFinds() {
    double[] releases = releases(500, 2);
    Ends one = find(TRIANGLE, releases, 600);
    Ends all =
        new ParallelOutcomes(new ScalarOutcomeFinder(TRIANGLE, TOLERANCE, 600, false))
            .find(
                500,
                (from, to, out) -> System.arraycopy(releases, 4 * from, out, 0, 4 * (to - from)),
                part -> assertTrue(part >= 0 && part <= 1));
    for (int i = 0; i < 500; i++) {
      assertEquals(one.end(i), all.end(i));
      assertEquals(
          Double.doubleToRawLongBits(one.sealedAt(i)), Double.doubleToRawLongBits(all.sealedAt(i)));
    }
  }

  /** When Commons Math sees the energy fall below the level of the well it ends in. */
  private static final class Sealing {
    private final Motion motion;
    private final double[] level;
    private int well = SealRule.NONE;
    private double time = Double.NaN;

    Sealing(Landscape landscape, double[] releases, int i) {
      motion = landscape.motion();
      SealRule rule = landscape.sealRule();
      level = new double[rule.wells()];
      DormandPrince853Integrator integrator =
          new DormandPrince853Integrator(1e-13, 1, 1e-12, 1e-12);
      for (int w = 0; w < level.length; w++) {
        level[w] = Double.NaN;
        integrator.addEventHandler(new Level(this, rule, w), 0.05, 1e-10, 100);
      }
      double[] state = {releases[4 * i], releases[4 * i + 1], 0, 0};
      for (int w = 0; w < level.length; w++) {
        level[w] = motion.potential(state[0], state[1]) < rule.sealEnergy(w) ? 0 : level[w];
      }
      integrator.integrate(MotionSystem.of(motion), 0, state, 60, state);
      well = rule.sealedWell(state[0], state[1], energy(state));
      time = well >= 0 ? level[well] : Double.NaN;
    }

    private double energy(double[] y) {
      return motion.energy(y[0], y[1], y[2], y[3]);
    }
  }

  /** Notes the first time below the level of a well. */
  private record Level(Sealing path, SealRule rule, int well) implements EventHandler {

    @Override
    public void init(double t0, double[] y0, double t) {}

    @Override
    public double g(double t, double[] y) {
      return path.energy(y) - rule.sealEnergy(well);
    }

    @Override
    public Action eventOccurred(double t, double[] y, boolean increasing) {
      if (Double.isNaN(path.level[well])) {
        path.level[well] = t;
      }
      return Action.CONTINUE;
    }

    @Override
    public void resetState(double t, double[] y) {}
  }

  /** A finder of a layout without mirrors. */
  private abstract static class Unmirrored implements SharedFinder {
    @Override
    public MirrorSymmetry symmetry() {
      return MirrorSymmetry.NONE;
    }
  }

  @Test
  void runThatIsEndedHandsOutNoMoreReleases() {
    AtomicInteger found = new AtomicInteger();
    SharedFinder counting =
        new Unmirrored() {
          @Override
          public void find(double[] releases, ReleaseQueue queue, Ends ends) {
            while (queue.take() != ReleaseQueue.EMPTY) {
              found.incrementAndGet();
            }
          }
        };

    assertThrows(
        CancellationException.class,
        () ->
            new ParallelOutcomes(counting)
                .find(
                    1_000_000,
                    (from, to, releases) -> {},
                    fraction -> {
                      if (found.get() > 0) {
                        throw new CancellationException();
                      }
                    }));

    assertTrue(found.get() < 10_000, found.toString());
  }

  @Test
  void everyReleaseIsHandedOutOnce() {
    int count = 300_001;
    AtomicIntegerArray found = new AtomicIntegerArray(count);
    SharedFinder counting =
        new Unmirrored() {
          @Override
          public void find(double[] releases, ReleaseQueue queue, Ends ends) {
            for (int i = queue.take(); i != ReleaseQueue.EMPTY; i = queue.take()) {
              int number = (int) releases[4 * i];
              found.incrementAndGet(number);
              ends.set(i, number % 7, number);
            }
          }
        };

    Ends ends =
        new ParallelOutcomes(counting)
            .find(
                count,
                (from, to, releases) -> {
                  for (int i = from; i < to; i++) {
                    releases[4 * (i - from)] = i;
                  }
                },
                fraction -> {});

    for (int i = 0; i < count; i++) {
      assertEquals(1, found.get(i));
      assertEquals(i % 7, ends.end(i));
      assertEquals(i, ends.sealedAt(i));
    }
  }
}
