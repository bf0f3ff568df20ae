package lodeswing.core.outcome;

/** Finds where many releases end. Immutable and safe for several threads. */
public interface OutcomeFinder {

  /**
   * Finds the ends of releases on the calling thread; the bits of an end depend on its release
   * alone, not on its neighbours, their order or the thread.
   *
   * @param releases plan x, y, vx, vy of each release side by side, four entries a release
   * @param from first release
   * @param to one past the last release
   * @param ends receives the ends at the same indices
   */
  void find(double[] releases, int from, int to, Ends ends);
}
