package lodeswing.core.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {

  /**
   * R. G. Newcombe, Stat. Med. 17 (1998) 857, table I, methods 5 (exact) and 3 (score), 95 %:
   * figures from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2527, 0.3676, 0.2553, 0.3662",
    "15, 148, 0.0578, 0.1617, 0.0624, 0.1605",
    "0, 20, 0.0000, 0.1684, 0.0000, 0.1611",
    "1, 29, 0.0009, 0.1776, 0.0061, 0.1718"
  })
  void intervalsAgreeWithPublishedTable(
      int successes, int trials, double low, double high, double scoreLow, double scoreHigh) {
    Proportion proportion = new Proportion(successes, trials);

    Interval exact = proportion.clopperPearson(0.95);
    Interval score = proportion.wilson(0.95);

    assertEquals(low, exact.low(), 5.1e-5);
    assertEquals(high, exact.high(), 5.1e-5);
    assertEquals(scoreLow, score.low(), 5.1e-5);
    assertEquals(scoreHigh, score.high(), 5.1e-5);
  }

  /**
   * Closed forms 1 - (a/2)^(1/n) and (a/2)^(1/n); figures in statsmodels issue 9141, coffea 138.
   */
  @Test
  void noneOrAllSuccessesHaveTheClosedForm() {
    Interval none = new Proportion(0, 1000).clopperPearson(1 - 1e-7);
    Interval all = new Proportion(10, 10).clopperPearson(0.95);

    assertEquals(0, none.low());
    assertEquals(0.01667072243152068, none.high(), 1e-9);
    assertEquals(0.69150289, all.low(), 1e-8);
    assertEquals(1, all.high());
  }

  @Test
  void exactIntervalHoldsTheChanceAtLeastAsOftenAsStated() {
    int trials = 40;
    for (double chance = 0.02; chance < 1; chance += 0.04) {
      BinomialDistribution counts = new BinomialDistribution(null, trials, chance);
      double held = 0;
      for (int k = 0; k <= trials; k++) {
        boolean holds = new Proportion(k, trials).clopperPearson(0.95).contains(chance);
        held += holds ? counts.probability(k) : 0;
      }
      assertTrue(held >= 0.95, "chance " + chance + " held " + held);
    }
  }

  /**
   * A grid, one place a cell, is at least as exact as random places (W. G. Cochran, Sampling
   * Techniques, 3rd ed. 1977, section 5.6, from memory): a disc of known area, 100 shifted grids.
   */
  @Test
  void intervalOfCountsHoldsTheAreaWhereverTheGridLies() {
    double area = Math.PI * 0.6 * 0.6 / 4;
    int side = 64;
    int held = 0;
    for (int shift = 0; shift < 100; shift++) {
      double dx = 0.0003 * shift;
      double dy = 0.003 * (shift % 10);
      Plane disc = (x, y) -> Math.hypot(x - dx, y - dy) < 0.6 ? 1 : 0;
      Proportion share = new Proportion(disc.grid(-1, 1, side).count(1), side * side);
      held += share.clopperPearson(0.95).contains(area) ? 1 : 0;
    }
    assertEquals(100, held);
  }

  @Test
  void impossibleCountsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Proportion(3, 2));
    assertThrows(IllegalArgumentException.class, () -> new Proportion(0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Proportion(1, 2).wilson(1));
  }
}
