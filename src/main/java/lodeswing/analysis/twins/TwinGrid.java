package lodeswing.analysis.twins;

/**
 * The even grid of times on which a pair is compared, whatever samples are asked for.
 *
 * @param interval between two times, above 0
 * @param count how many there are, the one at 0 included
 */
public record TwinGrid(double interval, int count) {

  /** Looks in a small swing. */
  private static final double LOOKS = 64;

  private static final int FEWEST = 2_000;
  private static final int MOST = 100_000;

  /**
   * The grid for a duration: 64 times in a small swing, but 2,000 to 100,000 in all.
   *
   * @param duration above 0
   * @param naturalRate of small swings, above 0
   */
  public static TwinGrid of(double duration, double naturalRate) {
    double wanted = duration * naturalRate * LOOKS / (2 * Math.PI);
    int pieces = (int) Math.ceil(Math.max(FEWEST, Math.min(MOST, wanted)));
    return new TwinGrid(duration / pieces, pieces + 1);
  }

  /** Time i. */
  public double t(int i) {
    return i * interval;
  }
}
