package lodeswing.core.outcome;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;

/**
 * Hands out releases by number, each once, to all threads that work on a run: who is done first
 * takes the next, so that all end together.
 */
public final class ReleaseQueue {

  /** What {@link #take} answers when all are handed out. */
  static final int EMPTY = -1;

  /** Releases between two reports, a power of two. */
  private static final int REPORTED_EVERY = 256;

  private final AtomicInteger next;
  private final AtomicInteger told;
  private final int from;
  private final int to;
  private final DoubleConsumer progress;

  /**
   * A queue of consecutive releases.
   *
   * @param from first release
   * @param to one past the last release
   * @param progress told the fraction handed out, by any of the threads; may throw to end the work
   */
  ReleaseQueue(int from, int to, DoubleConsumer progress) {
    this.next = new AtomicInteger(from);
    this.told = new AtomicInteger(from);
    this.from = from;
    this.to = to;
    this.progress = progress;
  }

  /**
   * The next release, or {@link #EMPTY}.
   *
   * <p>Whatever the progress throws is passed on, and nothing is handed out after it.
   */
  int take() {
    int release = next.get() < to ? next.getAndIncrement() : to;
    if (release >= to) {
      return EMPTY;
    }
    int done = release - from;
    if ((done & (REPORTED_EVERY - 1)) == 0) {
      report((double) done / (to - from));
    }
    return release;
  }

  /** How many were handed out since any thread last asked; all answers together are all of them. */
  int newlyTaken() {
    int taken = Math.min(next.get(), to);
    return Math.max(0, taken - told.getAndAccumulate(taken, Math::max));
  }

  private void report(double done) {
    try {
      progress.accept(done);
    } catch (RuntimeException | Error e) {
      next.set(to);
      throw e;
    }
  }
}
