package lodeswing.core.outcome;

import java.util.function.LongConsumer;
import lodeswing.core.landscape.MirrorSymmetry;

/**
 * A finder that tells how many releases were drawn by it.
 *
 * @param finder finds the ends
 * @param drawn told a number of further releases when a thread has come to its end, well or badly
 */
record CountedFinder(SharedFinder finder, LongConsumer drawn) implements SharedFinder {

  @Override
  public void find(double[] releases, ReleaseQueue queue, Ends ends) {
    try {
      finder.find(releases, queue, ends);
    } finally {
      drawn.accept(queue.newlyTaken());
    }
  }

  @Override
  public MirrorSymmetry symmetry() {
    return finder.symmetry();
  }
}
