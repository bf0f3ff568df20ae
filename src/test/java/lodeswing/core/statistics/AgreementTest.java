package lodeswing.core.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;

/** Agreement, tries to tell apart and the split of scatter, each against draws or exact sums. */
class AgreementTest {

  private static int[] drawn(SplittableRandom random, int trials, double... upTo) {
    int[] counts = new int[upTo.length];
    for (int i = 0; i < trials; i++) {
      double u = random.nextDouble();
      int k = 0;
      while (u > upTo[k]) {
        k++;
      }
      counts[k]++;
    }
    return counts;
  }

  /** The sum of the squared chances 0.5, 0.3 and 0.2 is 0.38. */
  @Test
  void agreementAndItsErrorAreThoseOfDraws() {
    var random = new SplittableRandom(11);
    int series = 4_000;
    double mean = 0;
    double squares = 0;
    double stated = 0;
    int held = 0;
    for (int i = 0; i < series; i++) {
      Estimate found = Agreement.of(drawn(random, 200, 0.5, 0.8, 1));
      mean += found.value() / series;
      squares += (found.value() - 0.38) * (found.value() - 0.38) / series;
      stated += found.standardError() * found.standardError() / series;
      held += found.interval().contains(0.38) ? 1 : 0;
    }
    assertEquals(0.38, mean, 5 * Math.sqrt(squares / series));
    assertEquals(squares, stated, 0.1 * squares);
    assertTrue(held > 0.93 * series, "held " + held);
  }

  @Test
  void allAlikeAgreeAlways() {
    Estimate found = Agreement.of(new int[] {50});
    assertEquals(1, found.value());
    assertEquals(1, found.interval().low());
  }

  /**
   * Of the stated number of trials 80 % show the likelier class at 5 %: the power of the normal
   * test of the two counts, summed exactly over how many trials fall into either class and into the
   * first of them.
   */
  @Test
  void statedTrialsHaveTheirPower() {
    for (double[] pair : new double[][] {{0.45, 0.35}, {0.5, 0.2}, {0.3, 0.2}}) {
      int trials = (int) TellingApart.trials(pair[0], pair[1]).orElseThrow();
      double either = pair[0] + pair[1];
      BinomialDistribution decided = new BinomialDistribution(null, trials, either);
      double power = 0;
      for (int n = 1; n <= trials; n++) {
        double weight = decided.probability(n);
        if (weight < 1e-9) {
          continue;
        }
        BinomialDistribution first = new BinomialDistribution(null, n, pair[0] / either);
        // McNemar's test: (first - second)^2 / (first + second) above 1.96^2.
        int least = (int) Math.floor((n + 1.959964 * Math.sqrt(n)) / 2) + 1;
        power += weight * (1 - first.cumulativeProbability(least - 1));
      }
      assertEquals(0.8, power, 0.02, "for " + pair[0] + " and " + pair[1]);
    }
  }

  @Test
  void alikeClassesAreNeverToldApart() {
    assertTrue(TellingApart.trials(0.3, 0.3).isEmpty());
    assertTrue(TellingApart.doubtful(3_000, 3_040, 9_000));
    assertTrue(!TellingApart.doubtful(3_000, 3_400, 9_000));
  }

  /**
   * Half of the groups have chances 0.8 and 0.2, half 0.2 and 0.8: the whole variance is 0.5,
   * within a group 0.32, so 0.36 of it lies between groups (law of total variance, by hand).
   */
  @Test
  void scatterIsSplitByTheLawOfTotalVariance() {
    var random = new SplittableRandom(5);
    int groups = 200;
    int[][] counts = new int[groups][];
    int[] first = new int[groups];
    for (int g = 0; g < groups; g++) {
      counts[g] = drawn(random, 300, random.nextBoolean() ? 0.8 : 0.2, 1);
      first[g] = counts[g][0];
    }
    VarianceSplit split = VarianceSplit.of(counts);

    assertEquals(0.68, split.within(), 0.01);
    assertEquals(0.36, split.between().value(), 0.02);
    assertTrue(split.between().interval().contains(0.36));
    assertEquals(0.3, VarianceSplit.deviation(first, 300), 0.01);
  }

  @Test
  void groupsThatAreAlikeHaveNothingBetweenThem() {
    var random = new SplittableRandom(6);
    int[][] counts = new int[40][];
    for (int g = 0; g < counts.length; g++) {
      counts[g] = drawn(random, 500, 0.5, 0.8, 1);
    }
    VarianceSplit split = VarianceSplit.of(counts);

    assertEquals(0, split.between().value(), 0.002);
    assertEquals(0.38, split.across(), 0.01);
  }

  /** Three groups that end each in its own class: all scatter lies between them. */
  @Test
  void groupsThatNeverAgreeHaveItAllBetweenThem() {
    VarianceSplit split = VarianceSplit.of(new int[][] {{9, 0, 0}, {0, 9, 0}, {0, 0, 9}});

    assertEquals(1, split.within());
    assertEquals(0, split.across());
    assertEquals(1, split.between().value());
  }
}
