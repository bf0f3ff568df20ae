package lodeswing.core.chance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.Release;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.statistics.Interval;
import lodeswing.core.statistics.IntervalRule;
import lodeswing.core.statistics.Proportion;
import org.junit.jupiter.api.Test;

class OddsTest {

  private static final TextbookLayout LAYOUT = TrialLayouts.triangle(0.3);
  private static final Landscape TRIANGLE = Landscape.of(LAYOUT);
  private static final OutcomeFinders FINDERS = new OutcomeFinders(LaneProvider.choose());
  private static final double LONGEST = 600;

  private static OddsSpec spec(Spread spread, double x, double y, double width, long seed) {
    HandSpread hand = new HandSpread(new Release(x, y, 0, 0), spread, 0);
    return new OddsSpec(hand, width, IntervalRule.WILSON, seed, LONGEST);
  }

  private static EndCounts count(OddsSpec spec) {
    return new Odds(TRIANGLE, spec.hand(), FINDERS, LONGEST).count(spec, part -> {});
  }

  /** The layout is its own picture when turned by a third: so are its odds about the middle. */
  @Test
  void discAboutTheMiddleOfATriangleGivesEachMagnetAThird() {
    EndCounts counts = count(spec(new DiscSpread(1.5), 0, 0, 0.02, 4));

    assertEquals(3, counts.byEnd().size());
    for (int end = 0; end < 3; end++) {
      Interval interval = new Proportion(counts.of(end), counts.total()).wilson(0.99);
      assertTrue(interval.contains(1.0 / 3), end + ": " + interval);
    }
  }

  @Test
  void everyUnionOfEndsIsWithinTheAskedWidth() {
    for (double width : new double[] {0.2, 0.05, 0.02}) {
      EndCounts counts = count(spec(new NormalSpread(0.3), 1, 0.4, width, 1));
      for (int union = 1; union < 7; union++) {
        int all = 0;
        for (int end = 0; end < 3; end++) {
          all += (union >> end & 1) * counts.of(end);
        }
        double reached = new Proportion(all, counts.total()).wilson(0.95).width();
        assertTrue(reached <= width * (1 + 1e-9), union + " has " + reached);
      }
      assertTrue(counts.total() <= OddsSpec.mostReleases(width, IntervalRule.WILSON));
    }
  }

  @Test
  void sureHandNeedsNoMoreThanTheFirstLot() {
    EndCounts counts = count(spec(new NormalSpread(0.01), 0.577, 0, 0.02, 1));

    assertEquals(1_024, counts.total());
    assertEquals(1_024, counts.of(0));
  }

  /** Half-widths of 0.01 at a chance of a half: (1.96 / 0.02)^2 = 9,604 (Wilson's differs by 4). */
  @Test
  void releasesThatAWidthCanTakeAreThoseOfTheFormula() {
    assertEquals(9_604, OddsSpec.mostReleases(0.02, IntervalRule.WILSON), 64);
    assertTrue(OddsSpec.mostReleases(0.02, IntervalRule.CLOPPER_PEARSON) > 9_604);
    assertEquals(Integer.MAX_VALUE, OddsSpec.mostReleases(1e-5, IntervalRule.WILSON));
  }

  @Test
  void neitherThreadsNorLanesChangeACount() throws Exception {
    OddsSpec spec = spec(new NormalSpread(0.3), 1, 0.4, 0.05, 9);
    EndCounts usual = count(spec);
    for (int threads : new int[] {1, 3}) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      try {
        assertEquals(usual, pool.submit(() -> count(spec)).get());
      } finally {
        pool.shutdown();
      }
    }
    OutcomeFinders single = new OutcomeFinders(LaneProvider.scalar("a test"));
    assertEquals(usual, new Odds(TRIANGLE, spec.hand(), single, LONGEST).count(spec, part -> {}));
  }

  /** The same tries at a thousandth of the tolerance: single ends may differ, the odds do not. */
  @Test
  void toleranceIsFineEnoughForTheSpread() {
    Landscape bench = Landscape.of(TrialLayouts.bench("three-stations"));
    HandSpread hand = new HandSpread(new Release(-0.07, 0.03, 0, 0), new NormalSpread(0.003), 0);
    int tries = 2_048;
    Odds odds = new Odds(bench, hand, FINDERS, LONGEST);
    assertEquals(1e-5, odds.allowed().relative(), 1e-20);
    EndCounts usual = odds.count(tries, 1, part -> {});

    Ends fine = new Ends(tries);
    double[] releases = new Tries(hand, 1).next(tries);
    FINDERS.of(bench, new Tolerance(1e-10, 1e-8), LONGEST).find(releases, 0, tries, fine);
    int[] counts = new int[bench.restPoints().list().size()];
    int other = 0;
    for (int i = 0; i < tries; i++) {
      if (fine.end(i) >= 0) {
        counts[fine.end(i)]++;
      } else {
        other++;
      }
    }
    for (int end = 0; end < counts.length; end++) {
      double apart = Math.abs(counts[end] - usual.of(end));
      assertTrue(
          apart < 5 * Math.sqrt(tries / 4.0), end + ": " + counts[end] + " " + usual.of(end));
    }
    assertTrue(other < 0.01 * tries, "undecided " + other);
  }

  @Test
  void progressIsToldAndCanEndTheWork() {
    OddsSpec spec = spec(new NormalSpread(0.3), 1, 0.4, 0.05, 9);
    assertThrows(
        CancellationException.class,
        () ->
            new Odds(TRIANGLE, spec.hand(), FINDERS, LONGEST)
                .count(
                    spec,
                    part -> {
                      throw new CancellationException("enough");
                    }));
  }
}
