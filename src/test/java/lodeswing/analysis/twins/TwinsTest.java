package lodeswing.analysis.twins;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.rig.Release;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.rig.TextbookLayout.Attractor;
import org.junit.jupiter.api.Test;

/** Pairs whose separation is known exactly, and pairs against the variational equation. */
class TwinsTest {

  private static final OptionalDouble NEVER = OptionalDouble.empty();

  private static Landscape plain(double omega0, double drag) {
    return Landscape.of(new TextbookLayout(omega0, drag, 0.3, List.of()));
  }

  private static Landscape triangle() {
    return Landscape.of(
        new TextbookLayout(
            0.5,
            0.2,
            0.3,
            List.of(
                new Attractor(0.57735, 0, 1),
                new Attractor(-0.28868, 0.5, 1),
                new Attractor(-0.28868, -0.5, 1))));
  }

  private static TwinPath follow(
      Landscape landscape, Twins twins, double duration, double[] start, double[] shift) {
    TwinWatch watch = new TwinWatch(landscape.motion(), twins.grid(), start, shift);
    ScalarIntegrator.forMotion(landscape.motion())
        .integrate(
            start,
            duration,
            Tolerance.TRACE,
            step -> {
              watch.look(step, step.endTime());
              return true;
            });
    return new TwinPath(watch, NEVER, NEVER);
  }

  private static TwinsResult pair(
      Landscape landscape, double duration, Release first, Release second) {
    double[] one = landscape.motion().toState(first).orElseThrow();
    double[] other = landscape.motion().toState(second).orElseThrow();
    double[] shift = new double[4];
    for (int i = 0; i < 4; i++) {
      shift[i] = other[i] - one[i];
    }
    Twins twins = new Twins(landscape, duration);
    return twins.compare(
        follow(landscape, twins, duration, one, shift),
        follow(landscape, twins, duration, other, shift));
  }

  /** r'' = -omega^2 r - c r': any difference dies as e^(-c t/2), whatever the two releases. */
  @Test
  void aHarmonicPairShrinksByHalfTheDragAlone() {
    TwinsResult pair =
        pair(plain(1, 0.01), 600, new Release(1, 0.3, 0, 0.2), new Release(1.01, 0.3, 0, 0.2));
    TwinsResult.Growth growth = pair.growth().orElseThrow();
    assertEquals(600, growth.until(), 1e-9);
    assertEquals(Cut.DURATION, growth.end());
    assertEquals(-0.005, growth.rate().value(), 1e-6);
    assertTrue(growth.rate().interval().contains(-0.005), growth.toString());
    assertTrue(growth.rate().interval().width() < 1e-4, growth.toString());
    // the end of a swing that does not quite close leaves c/(4 omega) of the logarithm
    assertEquals(-0.005, growth.first(), 1e-5);
    assertEquals(growth.first(), growth.second(), 1e-8);
    assertTrue(pair.partedAt().isEmpty());
    assertEquals(0.01, pair.separation().distance()[0], 1e-15);
    int last = pair.separation().count() - 1;
    assertEquals(0.01 * Math.exp(-3), pair.separation().phase()[last], 1e-6);
  }

  /** Without drag the difference keeps its size in phase space for ever. */
  @Test
  void aHarmonicPairWithoutLossKeepsItsDistance() {
    TwinsResult pair = pair(plain(2, 0), 100, new Release(1, 0, 0, 0), new Release(1, 1e-3, 0, 0));
    assertEquals(0, pair.growth().orElseThrow().rate().value(), 1e-9);
    // the classical scheme loses (omega h)^6/144 a step, 1.3e-7 a unit of time at 64 steps a swing
    assertEquals(0, pair.growth().orElseThrow().first(), 1.3e-7);
    assertEquals(1e-3, pair.separation().phase()[pair.separation().count() - 1], 1e-10);
  }

  /** What has come nearer than computing can tell is not told: (omega, c) = (1, 1) from 0.01. */
  @Test
  void whatCannotBeToldApartIsNotShown() {
    TwinsResult pair = pair(plain(1, 1), 200, new Release(1, 0, 0, 0), new Release(1.01, 0, 0, 0));
    assertEquals(Cut.RESOLUTION, pair.shownEnd());
    double expected = Math.log(0.01 / (1.01 * Twins.RESOLVED_SHARE)) / 0.5;
    assertEquals(expected, pair.shownUntil(), 2);
    assertEquals(-0.5, pair.growth().orElseThrow().rate().value(), 0.01);
  }

  @Test
  void exchangedReleasesGiveTheSameNumbersMirrored() {
    Landscape landscape = triangle();
    Release first = new Release(1.25, 0.5, 0, 0);
    Release second = new Release(1.25 + 1.0 / 1024, 0.5, 0, 0);
    TwinsResult pair = pair(landscape, 30, first, second);
    TwinsResult mirrored = pair(landscape, 30, second, first);
    assertEquals(pair.growth().orElseThrow().rate(), mirrored.growth().orElseThrow().rate());
    assertEquals(pair.growth().get().first(), mirrored.growth().get().second(), 0);
    assertEquals(pair.growth().get().second(), mirrored.growth().get().first(), 0);
    assertEquals(pair.partedAt(), mirrored.partedAt());
    assertArrayEquals(pair.separation().distance(), mirrored.separation().distance(), 0);
    assertArrayEquals(pair.separation().phase(), mirrored.separation().phase(), 0);
  }

  /**
   * The two ways to a growth must agree: a small pair's own distance after a time, and the
   * variational equation beside its first path, to the order of the shift.
   */
  @Test
  void smallPairsGrowAsTheVariationalEquationSays() {
    Landscape landscape = triangle();
    double shift = 1e-6;
    TwinsResult pair =
        pair(landscape, 8, new Release(1.2, 0.4, 0, 0), new Release(1.2 + shift, 0.4, 0, 0));
    TwinsResult.Growth growth = pair.growth().orElseThrow();
    int last = pair.separation().count() - 1;
    double own = Math.log(pair.separation().phase()[last] / shift) / pair.shownUntil();
    assertEquals(8, growth.until(), 1e-9);
    assertEquals(8, pair.shownUntil(), 1e-9);
    assertEquals(own, growth.first(), 2e-5);
    assertEquals(own, growth.second(), 2e-5);
  }

  @Test
  void whoStartsASpacingApartHasPartedAndHasNoRate() {
    TwinsResult pair =
        pair(triangle(), 20, new Release(1.2, 0.4, 0, 0), new Release(-1.2, 0.4, 0, 0));
    assertEquals(OptionalDouble.of(0), pair.partedAt());
    assertTrue(pair.growth().isEmpty());
    assertEquals(Math.hypot(0.57735 + 0.28868, 0.5), pair.partedDistance(), 1e-4);
  }
}
