package lodeswing.core.statistics;

import java.util.Arrays;

/**
 * Where the scatter of outcomes comes from: from trial to trial within a group, or from group to
 * group.
 *
 * <p>By the law of total variance, summed over the classes' indicators: the whole is 1 - A, with A
 * the chance that trials of two groups agree; the part within groups is 1 - W, with W the chance
 * that two trials of one group agree; so W - A is the part between groups. W is estimated as in
 * {@link Agreement}, A from all pairs of groups, both without bias; the share's error by the
 * jackknife over groups (B. Efron and C. Stein, Ann. Stat. 9 (1981) 586).
 *
 * @param within chance that two trials of one group agree
 * @param across chance that trials of two different groups agree
 * @param between share of the whole that lies between groups, 0 to 1, with its 95 % interval
 */
public record VarianceSplit(double within, double across, Estimate between) {

  /**
   * The split.
   *
   * @param counts for each group, two or more, the trials in each class: two trials or more
   */
  public static VarianceSplit of(int[][] counts) {
    int groups = counts.length;
    if (groups < 2) {
      throw new IllegalArgumentException("there is no between with one group");
    }
    double within = within(counts);
    double across = across(counts);
    double share = share(within, across);
    if (groups == 2) {
      return new VarianceSplit(within, across, new Estimate(share, 0, new Interval(0, 1)));
    }
    double[] left = new double[groups];
    for (int g = 0; g < groups; g++) {
      int[][] others = new int[groups - 1][];
      System.arraycopy(counts, 0, others, 0, g);
      System.arraycopy(counts, g + 1, others, g, groups - 1 - g);
      left[g] = share(within(others), across(others));
    }
    double error = Math.sqrt(Jackknife.variance(left, groups));
    Estimate between = Estimate.ofStudent(share, error, groups - 1.0).within(0, 1);
    return new VarianceSplit(within, across, clipped(between));
  }

  private static Estimate clipped(Estimate found) {
    double value = Math.min(1, Math.max(0, found.value()));
    return new Estimate(value, found.standardError(), found.interval());
  }

  /**
   * Spread of one class's chance from group to group: the standard deviation that is left when that
   * of counting is taken off, 0 where nothing is left.
   *
   * @param counts trials in the class by group
   * @param trials of each group, two or more
   */
  public static double deviation(int[] counts, int trials) {
    double mean = Arrays.stream(counts).average().orElseThrow() / trials;
    double squares = 0;
    double counting = 0;
    for (int count : counts) {
      double share = (double) count / trials;
      squares += (share - mean) * (share - mean) / (counts.length - 1);
      counting += share * (1 - share) / (trials - 1.0) / counts.length;
    }
    return Math.sqrt(Math.max(0, squares - counting));
  }

  private static double share(double within, double across) {
    return across < 1 ? (within - across) / (1 - across) : 0;
  }

  private static double within(int[][] counts) {
    return Arrays.stream(counts).mapToDouble(Agreement::value).average().orElseThrow();
  }

  private static double across(int[][] counts) {
    int groups = counts.length;
    double[] sum = new double[counts[0].length];
    double own = 0;
    for (int[] group : counts) {
      double all = Arrays.stream(group).asLongStream().sum();
      for (int k = 0; k < sum.length; k++) {
        double share = group[k] / all;
        sum[k] += share;
        own += share * share;
      }
    }
    double total = 0;
    for (double of : sum) {
      total += of * of;
    }
    return (total - own) / ((double) groups * (groups - 1));
  }
}
