package lodeswing.core.chance;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleConsumer;
import java.util.function.IntSupplier;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.Release;
import lodeswing.core.statistics.IntervalRule;
import lodeswing.core.statistics.Proportion;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/**
 * How often the stated 95 % intervals hold the true chance, over 1,000 seeds: with adaptive
 * stopping and with tries that are more even than draws.
 *
 * <p>At a true coverage of 95 % fewer than 925 of 1,000 hold once in some 2,500 tests (binomial
 * standard deviation 6.9).
 */
class OddsCoverageTest {

  private static final int REPEATS = 1_000;
  private static final int LEAST = 925;
  private static final double WIDTH = 0.1;

  private static OddsSpec spec(HandSpread hand, IntervalRule rule, long seed) {
    return new OddsSpec(hand, WIDTH, rule, seed, 600);
  }

  /** Ends that are told by a rule for the place alone. */
  @FunctionalInterface
  private interface PlaceRule {
    int end(double x, double y);
  }

  private static AdaptiveCount.Lot lot(PlaceRule rule) {
    return (double[] releases, DoubleConsumer progress) -> {
      Map<Integer, Integer> counts = new TreeMap<>();
      for (int i = 0; i < releases.length; i += 4) {
        counts.merge(rule.end(releases[i], releases[i + 1]), 1, Integer::sum);
      }
      return counts;
    };
  }

  private static int held(PlaceRule rule, IntervalRule interval, double chance) {
    HandSpread hand = new HandSpread(new Release(0, 0, 0, 0), new NormalSpread(1), 0);
    int held = 0;
    for (int seed = 0; seed < REPEATS; seed++) {
      OddsSpec spec = spec(hand, interval, seed);
      EndCounts counts = new AdaptiveCount(spec).run(new Tries(hand, seed), lot(rule), part -> {});
      held += interval.of(new Proportion(counts.of(1), counts.total())).contains(chance) ? 1 : 0;
    }
    return held;
  }

  private static void assertHolds(IntSupplier held) {
    int count = held.getAsInt();
    assertTrue(count >= LEAST, "held " + count + " of " + REPEATS);
  }

  /** True chances by the normal distribution: smooth borders, where tries are most even. */
  @Test
  void intervalsHoldWhereBordersAreSmooth() {
    double far = new NormalDistribution(null, 0, 1).cumulativeProbability(-1.3);
    for (IntervalRule rule : IntervalRule.values()) {
      assertHolds(() -> held((x, y) -> x * 0.6 + y * 0.8 < -1.3 ? 1 : 0, rule, far));
      assertHolds(() -> held((x, y) -> Math.hypot(x, y) < 0.5 ? 1 : 0, rule, 1 - Math.exp(-0.125)));
    }
  }

  /** Stripes so narrow that neighbouring tries know nothing of each other: as if drawn. */
  @Test
  void intervalsHoldWhereEndsAreMixedBeyondAllTries() {
    PlaceRule stripes =
        (x, y) -> {
          double phase = 1e7 * x + 3.7e7 * y;
          return phase - Math.floor(phase) < 0.3 ? 1 : 0;
        };
    for (IntervalRule rule : IntervalRule.values()) {
      assertHolds(() -> held(stripes, rule, 0.3));
    }
  }

  /** The real thing; the true chances are those of 2^18 tries, known to 0.001. */
  @Test
  void intervalsHoldOnATriangleOfMagnets() {
    Landscape triangle = Landscape.of(TrialLayouts.triangle(0.5));
    OutcomeFinders finders = new OutcomeFinders(LaneProvider.choose());
    HandSpread hand = new HandSpread(new Release(0.9, 0.5, 0, 0), new NormalSpread(0.4), 0);
    Odds odds = new Odds(triangle, hand, finders, 600);
    EndCounts truth = odds.count(1 << 18, 987_654_321, part -> {});
    int[] held = new int[3];
    for (int seed = 0; seed < REPEATS; seed++) {
      EndCounts counts = odds.count(spec(hand, IntervalRule.WILSON, seed), part -> {});
      for (int end = 0; end < 3; end++) {
        double chance = (double) truth.of(end) / truth.total();
        held[end] +=
            new Proportion(counts.of(end), counts.total()).wilson(0.95).contains(chance) ? 1 : 0;
      }
    }
    for (int end = 0; end < 3; end++) {
      int count = held[end];
      assertTrue(truth.of(end) > truth.total() / 50, "an end that hardly comes shows nothing");
      assertHolds(() -> count);
    }
  }
}
