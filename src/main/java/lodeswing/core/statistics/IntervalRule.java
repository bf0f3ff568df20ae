package lodeswing.core.statistics;

/** How the interval of a chance is found from a count. */
public enum IntervalRule {

  /** {@link Proportion#wilson}: holds the chance as often as stated on average over chances. */
  WILSON {
    @Override
    public Interval of(Proportion proportion) {
      return proportion.wilson(Estimate.CONFIDENCE);
    }
  },

  /** {@link Proportion#clopperPearson}: holds the chance at least as often as stated. */
  CLOPPER_PEARSON {
    @Override
    public Interval of(Proportion proportion) {
      return proportion.clopperPearson(Estimate.CONFIDENCE);
    }
  };

  /** The 95 % interval of a chance. */
  public abstract Interval of(Proportion proportion);

  /**
   * How many trials make the interval of a chance no longer than asked, about.
   *
   * @param share the observed share of successes, 0 to 1
   * @param width the interval's length at most, above 0
   * @param most trials at most
   * @return {@code most} where that many or more are needed
   */
  public int trials(double share, double width, int most) {
    int few = 0;
    int many = most;
    while (many - few > 1) {
      int middle = few + (many - few) / 2;
      int successes = (int) Math.rint(share * middle);
      if (of(new Proportion(successes, middle)).width() <= width) {
        many = middle;
      } else {
        few = middle;
      }
    }
    return many;
  }
}
