package lodeswing.job;

import java.time.Duration;

/**
 * How fast this process computes, in releases of a textbook map a second on all its cores; what
 * waits in the queue is told in the same unit.
 */
public interface Pace {

  /**
   * Hears a measurement from beside the queue, with the machine to itself; it takes the place of a
   * guess.
   *
   * @param releases how many were computed, positive
   * @param took on all cores, positive
   */
  void measured(long releases, Duration took);

  /** Releases a second. */
  double releasesPerSecond();

  /** Whether nothing was measured yet. */
  boolean guessed();
}
