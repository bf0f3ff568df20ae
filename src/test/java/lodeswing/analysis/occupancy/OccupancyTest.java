package lodeswing.analysis.occupancy;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.rig.TextbookLayout.Attractor;
import lodeswing.core.statistics.Interval;
import org.junit.jupiter.api.Test;

class OccupancyTest {

  private static final double RADIUS = 2;

  private static TextbookLayout triangle(double strength, double drag) {
    return new TextbookLayout(
        0.5,
        drag,
        0.3,
        List.of(
            new Attractor(0.57735, 0, strength),
            new Attractor(-0.28868, 0.5, strength),
            new Attractor(-0.28868, -0.5, strength)));
  }

  private static OccupancyResult run(TextbookLayout layout, int releases, long seed) {
    OccupancySpec spec = new OccupancySpec(RADIUS, 8 * Math.PI, releases, seed);
    return new Occupancy(Landscape.of(layout), spec).run(done -> {});
  }

  /**
   * Harmonic swings without loss from places even over a disc of radius R spend within r of the
   * middle 2/pi (s sqrt(1 - s^2) + asin s) of their time, s = r/R: the arc-sine law of a swing's
   * place over its amplitude a, of density 2a/R^2 (own derivation).
   */
  @Test
  void freeSwingsKeepToTheArcSineLaw() {
    OccupancyResult result = run(new TextbookLayout(0.5, 0, 0.3, List.of()), 4_096, 7);
    double[] shares = result.shares();
    for (double radius : new double[] {0.4, 0.8, 1.2, 1.6}) {
      double within = 0;
      for (int cell = 0; cell < shares.length; cell++) {
        double x = result.grid().x(cell);
        double y = result.grid().y(cell);
        within += Math.hypot(x, y) <= radius ? shares[cell] : 0;
      }
      double s = radius / RADIUS;
      double exact = 2 / Math.PI * (s * Math.sqrt(1 - s * s) + Math.asin(s));
      // a cell is 0.07 wide, its middle stands for all of it
      assertEquals(exact, within, 0.01, "within " + radius);
    }
    assertEquals(0, result.elsewhere(), 1e-12);
    assertFalse(result.correlation().isPresent(), "there is no field");
  }

  @Test
  void magnetsDrawABobToThemOrDriveItAway() {
    OccupancyResult drawn = run(triangle(1, 0.2), 1_024, 1);
    OccupancyResult driven = run(triangle(-1, 0.2), 1_024, 1);

    assertTrue(drawn.change().orElseThrow().interval().low() > 0.2, drawn.change().toString());
    assertTrue(driven.change().orElseThrow().interval().high() < -0.2, driven.change().toString());
    assertTrue(drawn.meanStrength().interval().low() > drawn.freeMeanStrength().interval().high());
    assertTrue(driven.overMagnets().interval().high() < driven.freeOverMagnets().interval().low());
    // without their pull it is the same swing
    assertArrayEquals(drawn.freeShares(), driven.freeShares());
  }

  /** Point poles whose field is written out by hand: 1/h^2 above one by itself. */
  @Test
  void fieldOfOnePoleFallsWithTheSquareOfItsDistance() {
    TextbookLayout one = new TextbookLayout(0.5, 0.2, 0.3, List.of(new Attractor(0, 0, 2)));
    FieldStrength field = new FieldStrength(one, Landscape.of(one).motion());
    assertEquals(2 / 0.09, field.at(0, 0), 1e-12);
    assertEquals(2 / 0.25, field.at(0.4, 0), 1e-12);
  }

  @Test
  void intervalsHoldAsOftenAsTheySay() {
    TextbookLayout layout = triangle(1, 0.5);
    Landscape landscape = Landscape.of(layout);
    double truth = mean(landscape, 16_384, 999).value();
    int held = 0;
    int runs = 60;
    for (int seed = 1; seed <= runs; seed++) {
      Interval interval = mean(landscape, 64, seed).interval();
      held += interval.contains(truth) ? 1 : 0;
    }
    // of 60 at 95 % fewer than 52 come once in 350 times (binomial)
    assertTrue(held >= 52, held + " of " + runs);
  }

  private static lodeswing.core.statistics.Estimate mean(
      Landscape landscape, int releases, long seed) {
    OccupancySpec spec = new OccupancySpec(RADIUS, 4 * Math.PI, releases, seed);
    return new Occupancy(landscape, spec).run(done -> {}).meanStrength();
  }

  @Test
  void threadsDoNotChangeANumber() throws Exception {
    OccupancyResult here = run(triangle(1, 0.2), 64, 3);
    ForkJoinPool one = new ForkJoinPool(1);
    try {
      OccupancyResult there = one.submit(() -> run(triangle(1, 0.2), 64, 3)).get();
      assertArrayEquals(here.shares(), there.shares());
      assertEquals(here.change(), there.change());
    } finally {
      one.shutdown();
    }
    assertFalse(
        java.util.Arrays.equals(here.shares(), run(triangle(1, 0.2), 64, 4).shares()),
        "another seed");
  }

  @Test
  void progressCanEndIt() {
    OccupancySpec spec = new OccupancySpec(RADIUS, 100, 1_024, 1);
    Occupancy occupancy = new Occupancy(Landscape.of(triangle(1, 0.2)), spec);
    assertThrows(
        CancellationException.class,
        () ->
            occupancy.run(
                done -> {
                  if (done > 0.05) {
                    throw new CancellationException();
                  }
                }));
  }
}
