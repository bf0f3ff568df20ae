package lodeswing.core.outcome;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;

/**
 * Finds the ends of a great many releases on all cores: the caller's thread and the common pool.
 *
 * <p>Work is cut into batches, whatever the number of threads, large enough that the lanes of a
 * finder stay filled.
 */
public final class ParallelOutcomes {

  /** Releases of one batch at most. */
  private static final int LARGEST = 4_096;

  /** Releases of one batch at least, where there are so many. */
  private static final int SMALLEST = 64;

  /** Batches that a run of middling size is cut into. */
  private static final int SHARES = 16;

  private final OutcomeFinder finder;

  /** Runs on a finder. */
  public ParallelOutcomes(OutcomeFinder finder) {
    this.finder = finder;
  }

  /**
   * Finds the ends of releases.
   *
   * @param count how many there are
   * @param source tells them; asked by several threads at once
   * @param progress told the fraction done; may throw to end the work
   */
  public Ends find(int count, ReleaseSource source, DoubleConsumer progress) {
    Ends ends = new Ends(count);
    int size = Math.min(LARGEST, Math.max(SMALLEST, count / SHARES));
    int batches = (count + size - 1) / size;
    AtomicInteger done = new AtomicInteger();
    IntStream.range(0, batches)
        .parallel()
        .forEach(
            batch -> {
              // A run that is ended begins no more batches.
              progress.accept((double) done.get() / batches);
              int from = batch * size;
              find(source, from, Math.min(count, from + size), ends);
              progress.accept((double) done.incrementAndGet() / batches);
            });
    return ends;
  }

  private void find(ReleaseSource source, int from, int to, Ends ends) {
    double[] releases = new double[4 * (to - from)];
    source.write(from, to, releases);
    Ends found = new Ends(to - from);
    finder.find(releases, 0, to - from, found);
    for (int i = from; i < to; i++) {
      ends.set(i, found.end(i - from), found.sealedAt(i - from));
    }
  }
}
