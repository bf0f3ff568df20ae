package lodeswing.job;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * A piece of work as it stands.
 *
 * @param jobId names the job
 * @param kind the resource its result belongs to
 * @param state how far it has come
 * @param progress fraction done, 0 to 1
 * @param submittedAt when it was asked for
 * @param startedAt when work on it began
 * @param finishedAt when it ended, well or badly
 * @param resultUrl where the result can be fetched once it is there
 * @param failure why it failed, or that it was cancelled
 */
public record Job(
    String jobId,
    String kind,
    JobState state,
    double progress,
    Instant submittedAt,
    Optional<Instant> startedAt,
    Optional<Instant> finishedAt,
    String resultUrl,
    Optional<Throwable> failure) {

  private static final double LEAST_TOLD = 0.02;
  private static final long SHORTEST_WAIT_S = 1;
  private static final long LONGEST_WAIT_S = 120;

  /** Work that has just been asked for. */
  public static Job asked(Computation computation, Instant now) {
    return new Job(
        computation.jobId(),
        computation.kind(),
        JobState.WAITING,
        0,
        now,
        Optional.empty(),
        Optional.empty(),
        computation.resultUrl(),
        Optional.empty());
  }

  /**
   * The same job at its end.
   *
   * @param failed why it has no result; nothing where it has one
   */
  public Job ended(Optional<Throwable> failed, Instant now) {
    return new Job(
        jobId,
        kind,
        failed.isEmpty() ? JobState.DONE : JobState.FAILED,
        failed.isEmpty() ? 1 : progress,
        submittedAt,
        startedAt,
        Optional.of(now),
        resultUrl,
        failed);
  }

  /**
   * Seconds of work that remain, in proportion to the progress; nothing while too little is done to
   * tell.
   */
  public Optional<Double> remainingSeconds(Instant now) {
    if (state != JobState.RUNNING || startedAt.isEmpty() || progress < LEAST_TOLD) {
      return Optional.empty();
    }
    return Optional.of(remaining(elapsed(now)));
  }

  private double elapsed(Instant now) {
    return Duration.between(startedAt.orElse(submittedAt), now).toMillis() / 1000.0;
  }

  private double remaining(double elapsed) {
    return elapsed * (1 - progress) / progress;
  }

  /**
   * Whole seconds after which it is worth asking again, 1 to 120.
   *
   * <p>The remaining time in proportion to the progress; as long again as it has run where there is
   * no progress yet.
   */
  public long secondsToWait(Instant now) {
    double elapsed = elapsed(now);
    double remaining = progress > 0 ? remaining(elapsed) : elapsed;
    return Math.min(LONGEST_WAIT_S, Math.max(SHORTEST_WAIT_S, (long) Math.ceil(remaining)));
  }
}
