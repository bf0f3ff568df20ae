package lodeswing.store;

import java.time.Duration;
import lodeswing.job.Pace;

/**
 * The pace of the queue: a guess, then what the warm-up measured, then more and more what the queue
 * itself has computed. It is releases by seconds, both summed, so that long work counts for more
 * than short; what is older than half a minute of computing is forgotten little by little. The
 * guess counts as a second of computing.
 */
final class LearnedPace implements Pace {

  /** Releases a second; a guess, and a low one, so that nobody is told to come back too soon. */
  static final double GUESS = 20_000;

  private static final double REMEMBERED_S = 30;

  private double releases = GUESS;
  private double seconds = 1;
  private boolean guessed = true;

  @Override
  public synchronized void measured(long count, Duration took) {
    if (guessed && count > 0 && !took.isZero()) {
      releases = 0;
      seconds = 0;
    }
    learn(count, took, 1);
  }

  /**
   * Hears how long a thread took.
   *
   * @param count what it computed, in releases
   * @param took its time
   * @param busy how many threads shared the cores, itself included
   */
  synchronized void learn(long count, Duration took, int busy) {
    double time = took.toNanos() / 1e9;
    if (count <= 0 || time <= 0) {
      return;
    }
    double kept = REMEMBERED_S / (REMEMBERED_S + time);
    releases = kept * releases + (double) count * busy;
    seconds = kept * seconds + time;
    guessed = false;
  }

  @Override
  public synchronized double releasesPerSecond() {
    return releases / seconds;
  }

  @Override
  public synchronized boolean guessed() {
    return guessed;
  }
}
