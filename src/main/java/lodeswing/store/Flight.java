package lodeswing.store;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.UnaryOperator;
import lodeswing.job.Computation;
import lodeswing.job.Job;
import lodeswing.job.JobState;
import lodeswing.job.StoredResult;
import org.jspecify.annotations.Nullable;

/** One run of a computation; whoever claims it first computes it. */
final class Flight implements Runnable {

  private final Computation computation;
  private final UnaryOperator<StoredResult> keep;
  private final Clock clock;
  private final Instant submittedAt;
  private final CompletableFuture<StoredResult> landing = new CompletableFuture<>();
  private final AtomicBoolean claimed = new AtomicBoolean();
  private volatile @Nullable Instant startedAt;
  private volatile @Nullable Instant finishedAt;
  private volatile @Nullable Throwable failure;
  private volatile double progress;

  Flight(Computation computation, UnaryOperator<StoredResult> keep, Clock clock) {
    this.computation = computation;
    this.keep = keep;
    this.clock = clock;
    this.submittedAt = clock.instant();
  }

  CompletableFuture<StoredResult> landing() {
    return landing;
  }

  String jobId() {
    return computation.jobId();
  }

  @Override
  public void run() {
    if (!claimed.compareAndSet(false, true)) {
      return;
    }
    startedAt = clock.instant();
    try {
      byte[] bytes = computation.work().compute(this::report);
      StoredResult computed =
          StoredResult.computed(computation.key(), computation.kind(), bytes, clock.instant());
      land(keep.apply(computed));
    } catch (RuntimeException | Error e) {
      crash(e);
    }
  }

  void land(StoredResult result) {
    progress = 1;
    finishedAt = clock.instant();
    landing.complete(result);
  }

  void crash(Throwable e) {
    failure = e;
    finishedAt = clock.instant();
    landing.completeExceptionally(e);
  }

  private void report(double fraction) {
    progress = Math.max(progress, Math.min(1, fraction));
  }

  Job snapshot() {
    Instant started = startedAt;
    Instant finished = finishedAt;
    Throwable failed = failure;
    return new Job(
        jobId(),
        computation.kind(),
        state(started, finished, failed),
        progress,
        submittedAt,
        Optional.ofNullable(started),
        Optional.ofNullable(finished),
        computation.resultUrl(),
        Optional.ofNullable(failed));
  }

  private static JobState state(
      @Nullable Instant started, @Nullable Instant finished, @Nullable Throwable failed) {
    if (finished != null) {
      return failed == null ? JobState.DONE : JobState.FAILED;
    }
    return started == null ? JobState.WAITING : JobState.RUNNING;
  }
}
