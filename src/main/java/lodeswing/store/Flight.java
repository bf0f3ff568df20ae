package lodeswing.store;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.UnaryOperator;
import lodeswing.job.Computation;
import lodeswing.job.Job;
import lodeswing.job.JobState;
import lodeswing.job.StoredResult;
import org.jspecify.annotations.Nullable;

/**
 * One run of a computation; whoever claims it first computes it.
 *
 * <p>Its maker first looks in the store, or for a free place in the queue; only then is it offered
 * to others, so that nobody computes what is kept already.
 */
final class Flight implements Runnable {

  private final Computation computation;
  private final UnaryOperator<StoredResult> keep;
  private final Clock clock;
  private final Instant submittedAt;
  private final Landing landing = new Landing(this);
  private final CountDownLatch offered = new CountDownLatch(1);
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

  Landing landing() {
    return landing;
  }

  /** Lets others claim it. */
  void offer() {
    offered.countDown();
  }

  /** Waits until it may be claimed or has ended; its maker does not wait for anybody till then. */
  void awaitOffer() throws InterruptedException {
    offered.await();
  }

  String jobId() {
    return computation.jobId();
  }

  @Override
  public void run() {
    if (landing.isDone() || !claimed.compareAndSet(false, true)) {
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
    offer();
  }

  void crash(Throwable e) {
    failure = e;
    finishedAt = clock.instant();
    landing.completeExceptionally(e);
    offer();
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
