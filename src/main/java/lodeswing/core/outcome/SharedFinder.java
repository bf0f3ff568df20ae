package lodeswing.core.outcome;

/** Finds the ends of releases that several threads draw from one queue. */
public interface SharedFinder extends OutcomeFinder {

  /**
   * Finds the ends of what it draws, on the calling thread, until the queue is empty.
   *
   * @param releases plan x, y, vx, vy of each release side by side, four entries a release
   * @param queue hands out the releases, perhaps to other threads too
   * @param ends receives the ends at the same indices
   */
  void find(double[] releases, ReleaseQueue queue, Ends ends);

  @Override
  default void find(double[] releases, int from, int to, Ends ends) {
    find(releases, new ReleaseQueue(from, to, done -> {}), ends);
  }
}
