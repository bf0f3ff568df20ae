package lodeswing.core.outcome;

import java.util.concurrent.ForkJoinPool;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;

/**
 * Finds the ends of a great many releases on all cores: the caller's thread and the common pool.
 *
 * <p>Threads draw on one queue, so that lanes stay filled until the last releases and all threads
 * end together; releases are written down in sections, so that a great many are not held at once.
 */
public final class ParallelOutcomes {

  /** Releases of one section at most: eight megabytes of them. */
  private static final int SECTION = 1 << 18;

  private final SharedFinder finder;

  /**
   * A machine of one core has a common pool of one thread, beside which the caller would be two.
   */
  private final int threads =
      Math.min(
          ForkJoinPool.getCommonPoolParallelism() + 1, Runtime.getRuntime().availableProcessors());

  /** Runs on a finder. */
  public ParallelOutcomes(SharedFinder finder) {
    this.finder = finder;
  }

  /**
   * Finds the ends of releases.
   *
   * @param count how many there are
   * @param source tells them
   * @param progress told the fraction handed out by several threads; may throw to end the work
   */
  public Ends find(int count, ReleaseSource source, DoubleConsumer progress) {
    Ends ends = new Ends(count);
    for (int from = 0; from < count; from += SECTION) {
      int begin = from;
      int size = Math.min(SECTION, count - from);
      double[] releases = new double[4 * size];
      source.write(from, from + size, releases);
      byte[] turned = finder.symmetry().fold(releases);
      Ends found = new Ends(size);
      ReleaseQueue queue =
          new ReleaseQueue(0, size, done -> progress.accept((begin + done * size) / count));
      IntStream.range(0, threads).parallel().forEach(thread -> finder.find(releases, queue, found));
      ends.take(found, from, finder.symmetry(), turned);
    }
    return ends;
  }
}
