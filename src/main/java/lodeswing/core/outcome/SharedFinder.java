package lodeswing.core.outcome;

import java.util.Arrays;
import lodeswing.core.landscape.MirrorSymmetry;

/** Finds the ends of releases that several threads draw from one queue. */
public interface SharedFinder extends OutcomeFinder {

  /**
   * Finds the ends of what it draws, on the calling thread, until the queue is empty.
   *
   * @param releases plan x, y, vx, vy of each release side by side, four entries a release; folded
   *     by {@link #symmetry}
   * @param queue hands out the releases, perhaps to other threads too
   * @param ends receives the ends of the folded releases at the same indices
   */
  void find(double[] releases, ReleaseQueue queue, Ends ends);

  /** The mirrors that releases are to be folded by before, and ends unfolded by after. */
  MirrorSymmetry symmetry();

  @Override
  default void find(double[] releases, int from, int to, Ends ends) {
    double[] own = Arrays.copyOfRange(releases, 4 * from, 4 * to);
    byte[] turned = symmetry().fold(own);
    Ends found = new Ends(to - from);
    find(own, new ReleaseQueue(0, to - from, done -> {}), found);
    ends.take(found, from, symmetry(), turned);
  }
}
