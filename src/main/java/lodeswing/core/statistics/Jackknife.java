package lodeswing.core.statistics;

import java.util.Optional;

/**
 * The jackknife over blocks: the figure is found anew without each block in turn.
 *
 * <p>Source: B. Efron and C. Stein, Ann. Stat. 9 (1981) 586; over blocks, since neighbours depend
 * on each other, H. R. Kunsch, Ann. Stat. 17 (1989) 1217.
 */
public final class Jackknife {

  private Jackknife() {}

  /**
   * A total over a count, both given by block.
   *
   * @return empty where the count is 0; with one block in use the interval is the bare value
   */
  static Optional<Estimate> ratio(double[] sum, int[] count) {
    double allSum = 0;
    int allCount = 0;
    for (int b = 0; b < sum.length; b++) {
      allSum += sum[b];
      allCount += count[b];
    }
    if (allCount == 0) {
      return Optional.empty();
    }
    double[] left = new double[sum.length];
    int used = 0;
    for (int b = 0; b < sum.length; b++) {
      if (count[b] < allCount) {
        left[used++] = (allSum - sum[b]) / (allCount - count[b]);
      }
    }
    double error = used < 2 ? 0 : Math.sqrt(variance(left, used));
    return Optional.of(Estimate.ofStudent(allSum / allCount, error, Math.max(used - 1, 1)));
  }

  /**
   * A figure whose value without each block in turn is known, by Student's t.
   *
   * @param whole its value from all blocks
   * @param left its values without each block, two or more
   */
  public static Estimate estimate(double whole, double[] left) {
    return Estimate.ofStudent(whole, Math.sqrt(variance(left, left.length)), left.length - 1);
  }

  /** Variance of a figure from its values without each block. */
  static double variance(double[] left, int used) {
    double mean = 0;
    for (int b = 0; b < used; b++) {
      mean += left[b] / used;
    }
    double squares = 0;
    for (int b = 0; b < used; b++) {
      squares += (left[b] - mean) * (left[b] - mean);
    }
    return squares * (used - 1) / used;
  }
}
