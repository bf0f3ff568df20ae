package lodeswing.analysis.basin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinder;
import lodeswing.core.statistics.ScalingLaw;
import lodeswing.core.statistics.UncertaintySampling;
import lodeswing.core.statistics.WadaTest;
import org.junit.jupiter.api.Test;

class BasinSummaryTest {

  private static final int SIDE = 256;

  /** Newton's method for z^3 = 1 on a disc: three ends alike by symmetry, no start outside. */
  private static int newton(double x, double y) {
    if (Math.hypot(x, y) > 1) {
      return Ends.CANNOT_START;
    }
    double a = x;
    double b = y;
    for (int n = 0; n < 60; n++) {
      double re = a * a - b * b;
      double im = 2 * a * b;
      double size = 3 * (re * re + im * im);
      a = 2 * a / 3 + re / size;
      b = 2 * b / 3 - im / size;
    }
    return a > 0 ? 0 : b > 0 ? 1 : 2;
  }

  private static int[] map() {
    int[] ends = new int[SIDE * SIDE];
    DoubleUnaryOperator place = n -> 2 * (n + 0.5) / SIDE - 1;
    for (int n = 0; n < ends.length; n++) {
      int row = n / SIDE;
      ends[n] = newton(place.applyAsDouble(n % SIDE), place.applyAsDouble(row));
    }
    return ends;
  }

  @Test
  void sharesOfSymmetricEndsAreAlikeWithinTheirIntervals() {
    BasinSummary summary = BasinSummary.of(SIDE, map());

    assertEquals(4, summary.shares().size());
    assertEquals(1, summary.shares().stream().mapToDouble(OutcomeShare::share).sum(), 1e-12);
    for (OutcomeShare share : summary.shares()) {
      double area = share.end() < 0 ? 1 - Math.PI / 4 : Math.PI / 12;
      assertTrue(share.low() <= area && area <= share.high(), share::toString);
    }
  }

  /**
   * Box count 1.42 for Newton's method, a published figure quoted in the tests of Attractors.jl.
   */
  @Test
  void figuresOfAKnownMapAreThosePublished() {
    BasinSummary summary = BasinSummary.of(SIDE, map());

    SummaryFigure dimension = summary.boxDimension().orElseThrow();
    SummaryFigure exponent = summary.uncertaintyExponent().orElseThrow();
    assertEquals(1.42, dimension.value(), 0.05);
    assertTrue(dimension.low() < 1.42 && 1.42 < dimension.high(), dimension::toString);
    assertEquals(0.58, exponent.value(), 0.04);
    assertTrue(summary.boundaryBasinEntropy().orElseThrow().low() > Math.log(2));
    assertEquals(WadaTest.Verdict.WADA, summary.wada().verdict());
    assertEquals(List.of(0, 1, 2), summary.wada().ends());
  }

  @Test
  void edgeOfTheRegionWhereTheBobCanStartIsNoBorder() {
    int[] ends = map();
    for (int n = 0; n < ends.length; n++) {
      ends[n] = ends[n] < 0 ? ends[n] : 0;
    }

    BasinSummary summary = BasinSummary.of(SIDE, ends);

    assertTrue(summary.boxDimension().isEmpty());
    assertTrue(summary.uncertaintyExponent().isEmpty());
    assertTrue(summary.boundaryBasinEntropy().isEmpty());
    assertEquals(0, summary.basinEntropy().orElseThrow().value());
    assertEquals(WadaTest.Verdict.TOO_FEW_LABELS, summary.wada().verdict());
    assertTrue(summary.sentence().startsWith("Every release"));
  }

  @Test
  void contactIsAnOutcomeWithABorder() {
    int[] ends = new int[SIDE * SIDE];
    for (int n = 0; n < ends.length; n++) {
      int row = n / SIDE;
      boolean inside = Math.hypot(n % SIDE - 127.5, row - 127.5) < 80;
      ends[n] = inside ? Ends.MAGNET_CONTACT : 2;
    }

    BasinSummary summary = BasinSummary.of(SIDE, ends);

    assertEquals(1, summary.boxDimension().orElseThrow().value(), 0.02);
    assertTrue(summary.sentence().contains("as good as smooth"), summary.sentence());
  }

  @Test
  void mapWithoutAKnownEndStillHasShares() {
    int[] ends = new int[SIDE * SIDE];
    Arrays.fill(ends, Ends.UNSETTLED);

    BasinSummary summary = BasinSummary.of(SIDE, ends);

    assertEquals(1, summary.shares().get(0).share());
    assertTrue(summary.basinEntropy().isEmpty());
    assertFalse(summary.sentence().isBlank());
  }

  @Test
  void everyFigureHasIntervalSourceAndSentence() {
    BasinSummary summary = BasinSummary.of(SIDE, map());

    Stream.of(
            summary.boxDimension(),
            summary.uncertaintyExponent(),
            summary.basinEntropy(),
            summary.boundaryBasinEntropy(),
            summary.wada().share())
        .map(Optional::orElseThrow)
        .forEach(
            figure -> {
              assertTrue(figure.low() <= figure.value() && figure.value() <= figure.high());
              assertTrue(figure.source().matches(".*\\(\\d{4}\\) \\d+"), figure.source());
              assertTrue(figure.sentence().endsWith("."), figure.sentence());
            });
  }

  @Test
  void releasesBelowThePixelsGiveTheSameExponent() {
    OutcomeFinder finder =
        (releases, from, to, ends) -> {
          for (int n = from; n < to; n++) {
            ends.set(n, newton(releases[4 * n], releases[4 * n + 1]), 0);
          }
        };
    UncertaintySampling sampling = new UncertaintySampling(0, 0, 0.7, 1e-5, 1e-2, 8, 6000);

    ScalingLaw law = sampling.run(new ReleasePlane(finder), new SplittableRandom(4)).orElseThrow();

    assertEquals(0.58, law.exponent().value(), 0.05);
  }

  @Test
  void mapTooSmallToMeasureIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> BasinSummary.of(32, new int[1024]));
    assertThrows(IllegalArgumentException.class, () -> BasinSummary.of(64, new int[10]));
  }
}
