package lodeswing.core.outcome;

/** Finds where many releases end and when each has settled. Immutable, safe for several threads. */
public interface SettlingFinder {

  /**
   * Finds ends and settling times on the calling thread.
   *
   * @param releases plan x, y, vx, vy of each release side by side, four entries a release
   * @param from first release
   * @param to one past the last release
   * @param ends receives the ends at the same indices
   * @param settledAt receives when the bob had settled, sticking included; NaN where it never did
   */
  void findSettled(double[] releases, int from, int to, Ends ends, double[] settledAt);
}
