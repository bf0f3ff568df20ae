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
 * @param remainingS seconds of work that remain, by its progress and what it costs
 * @param queueS seconds that all takes that waits here with it, where it waits
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
    Optional<Double> remainingS,
    Optional<Double> queueS,
    String resultUrl,
    Optional<Throwable> failure) {

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
        Optional.empty(),
        Optional.empty(),
        resultUrl,
        failed);
  }

  /** The same job, first asked for at another time. */
  public Job submitted(Instant first) {
    return new Job(
        jobId,
        kind,
        state,
        progress,
        first,
        startedAt,
        finishedAt,
        remainingS,
        queueS,
        resultUrl,
        failure);
  }

  /**
   * Whole seconds after which it is worth asking again, 1 to 120: until its end, as far as that can
   * be told, or else as long again as it has taken so far.
   */
  public long secondsToWait(Instant now) {
    double soFar = Duration.between(startedAt.orElse(submittedAt), now).toMillis() / 1000.0;
    double wait = remainingS.or(() -> queueS).orElse(soFar);
    return Math.min(LONGEST_WAIT_S, Math.max(SHORTEST_WAIT_S, (long) Math.ceil(wait)));
  }
}
