package lodeswing.core.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Box-counting dimension and uncertainty exponent of grids against known and published figures. */
class BoundaryDimensionTest {

  private static final double CANTOR_TIMES_LINE = 1 + Math.log(2) / Math.log(3);
  private static final double[] TURN = {0, 2 * Math.PI};
  private static final double[] HALF = {-0.5, 0.5};

  /**
   * Circle and sectors: smooth, 1. Cantor set times line: 1 + ln 2 / ln 3, exact. Map with two
   * fixed points: 1.8 (alpha 0.2), Grebogi, McDonald, Ott and Yorke, Phys. Lett. A 99 (1983) 415.
   * Henon map with a = 1.395, j = 0.3: 1.530 +- 0.006, Grebogi, Ott and Yorke, Phys. Rev. Lett. 56
   * (1986) 1011, from memory. Henon map with a = 1.4, j = -0.3: smooth (the stable manifold of a
   * saddle; same paper). Newton's method for z^3 = 1: 1.42, a published box count quoted in the
   * tests of the library Attractors.jl.
   */
  static Stream<Arguments> known() {
    double[] unit = {-1, 1};
    double[] bar = {-0.0123, 1.0345};
    return Stream.of(
        Arguments.of("circle", KnownBasins.CIRCLE.grid(unit, unit, 512), 1.0, 0.01, 0.01),
        Arguments.of("sectors", KnownBasins.SECTORS.grid(unit, unit, 512), 1.0, 0.02, 0.01),
        Arguments.of(
            "Cantor strips",
            KnownBasins.CANTOR_STRIPS.grid(bar, bar, 1024),
            CANTOR_TIMES_LINE,
            0.04,
            0.03),
        Arguments.of(
            "two fixed points",
            KnownBasins.TWO_FIXED_POINTS.grid(TURN, HALF, 512),
            1.8,
            0.02,
            0.02),
        Arguments.of(
            "Henon, fractal",
            KnownBasins.henon(1.395, 0.3).grid(new double[] {-3, 3}, new double[] {-3, 12}, 1024),
            1.530,
            0.05,
            0.01),
        Arguments.of(
            "Henon, smooth",
            KnownBasins.henon(1.4, -0.3).grid(new double[] {-2, 2}, new double[] {-6, 6}, 512),
            1.0,
            0.06,
            0.07),
        Arguments.of("Newton", KnownBasins.NEWTON.grid(unit, unit, 512), 1.42, 0.02, 0.02));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("known")
  void dimensionAndExponentAreThoseKnown(
      String name, LabelGrid grid, double dimension, double boxError, double pairError) {
    ScalingLaw boxes = BoxCount.of(grid).dimension().orElseThrow();
    ScalingLaw pairs = UncertainPairs.of(grid).exponent().orElseThrow();

    assertEquals(dimension, boxes.exponent().value(), boxError, boxes::toString);
    assertEquals(2 - dimension, pairs.exponent().value(), pairError, pairs::toString);
    assertTrue(boxes.exponent().interval().contains(dimension), boxes::toString);
  }

  @Test
  void straightLineIsMetByBoxesInProportionToTheirSide() {
    Plane halves = (x, y) -> x < 0.1 ? 0 : 1;
    BoxCount count = BoxCount.of(halves.grid(-1, 1, 128));

    for (int k = 1; k < count.scales(); k++) {
      assertEquals(count.fraction(0) * count.scale(k) / count.scale(0), count.fraction(k), 1e-12);
    }
    assertEquals(1, count.dimension().orElseThrow().exponent().value(), 1e-9);
  }

  @Test
  void gridOfOneLabelHasNoBoundary() {
    LabelGrid grid = LabelGrid.of(128, new int[128 * 128]);

    assertTrue(BoxCount.of(grid).dimension().isEmpty());
    assertTrue(UncertainPairs.of(grid).exponent().isEmpty());
  }

  @Test
  void nodesWithoutLabelAreNoBoundary() {
    Plane holed = (x, y) -> Math.hypot(x, y) < 0.5 ? LabelGrid.NO_LABEL : 3;
    LabelGrid grid = holed.grid(-1, 1, 128);

    assertTrue(BoxCount.of(grid).dimension().isEmpty());
    assertTrue(UncertainPairs.of(grid).exponent().isEmpty());
  }

  @Test
  void gridTooCoarseForItsLayersGivesNoDimension() {
    Plane checks = (x, y) -> ((int) Math.floor(64 * x) + (int) Math.floor(64 * y)) & 1;
    LabelGrid grid = checks.grid(0, 1, 128);

    assertTrue(BoxCount.of(grid).dimension().isEmpty());
    assertTrue(UncertainPairs.of(grid).exponent().isEmpty());
  }
}
