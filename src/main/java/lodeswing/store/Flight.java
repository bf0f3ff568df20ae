package lodeswing.store;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import lodeswing.job.Computation;
import lodeswing.job.Job;
import lodeswing.job.JobCancelledException;
import lodeswing.job.JobNeededException;
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
  private final Airport airport;
  private final Clock clock;
  private final Instant submittedAt;
  private final Landing landing = new Landing(this);
  private final CountDownLatch offered = new CountDownLatch(1);
  private final AtomicBoolean claimed = new AtomicBoolean();
  private volatile @Nullable Instant startedAt;
  private volatile @Nullable Instant finishedAt;
  private volatile @Nullable Throwable failure;
  private volatile double progress;
  private final ProgressRate rate = new ProgressRate();
  private final Set<Flight> dependants = ConcurrentHashMap.newKeySet();
  private final Set<String> needs = ConcurrentHashMap.newKeySet();
  private volatile boolean asked;
  private int waiting;
  private volatile boolean cancelled;
  private boolean keeping;

  Flight(Computation computation, Airport airport, Clock clock) {
    this.computation = computation;
    this.airport = airport;
    this.clock = clock;
    this.submittedAt = now();
  }

  Landing landing() {
    return landing;
  }

  /**
   * Notes who wants the result, before it is waited for.
   *
   * @param passenger who will wait; it cannot be cancelled from then on until one who waits has got
   *     up
   * @return false where it is cancelled, so that it will have no result
   */
  synchronized boolean board(Passenger passenger) {
    if (cancelled) {
      return false;
    }
    passenger.asker().ifPresentOrElse(dependants::add, () -> asked = true);
    if (passenger.sits()) {
      waiting++;
    }
    return true;
  }

  /** Notes that a request waits no longer. */
  synchronized void standUp() {
    waiting--;
  }

  /**
   * Ends it without a result; nothing where it has ended or its result is being kept.
   *
   * @throws JobNeededException where a request, or a flight that goes on, waits for it
   */
  void cancel() {
    synchronized (this) {
      if (finishedAt != null || keeping) {
        return;
      }
      if (dependants.stream().anyMatch(Flight::isWanted)) {
        throw new JobNeededException();
      }
      if (waiting > 0) {
        throw new JobNeededException("Somebody waits for the result of this job");
      }
      cancelled = true;
    }
    crash(new JobCancelledException());
  }

  private boolean isWanted() {
    return finishedAt == null && !unwanted();
  }

  /** Whether it was cancelled, or every flight that needs it was and no request asked for it. */
  boolean unwanted() {
    return cancelled
        || (!asked && !dependants.isEmpty() && dependants.stream().allMatch(Flight::unwanted));
  }

  /** Notes that its work asks for a result. */
  void needs(String id) {
    needs.add(id);
  }

  /** The ids of its result and of those that its work has asked for; none once it has ended. */
  Set<String> needed() {
    if (finishedAt != null) {
      return Set.of();
    }
    var all = new HashSet<>(needs);
    all.add(computation.key().id());
    return all;
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

  /** What its work costs, about, in releases. */
  long releases() {
    return computation.releases();
  }

  String resultId() {
    return computation.key().id();
  }

  boolean hasEnded() {
    return finishedAt != null;
  }

  /** Whether nobody has begun its work. */
  boolean waits() {
    return !claimed.get() && !landing.isDone();
  }

  /** Whether its work has begun in this process. */
  boolean isHere() {
    return startedAt != null;
  }

  /** The same flight, to be begun once more: another process has given it up. */
  Flight again() {
    claimed.set(false);
    return this;
  }

  @Override
  public void run() {
    if (landing.isDone() || !claimed.compareAndSet(false, true)) {
      return;
    }
    try {
      if (!airport.mayStart(this)) {
        return;
      }
    } catch (RuntimeException | Error e) {
      crash(e);
      return;
    }
    try {
      airport.earlier(this).ifPresentOrElse(this::land, this::compute);
    } catch (RuntimeException | Error e) {
      crash(e);
    } finally {
      airport.leave(this);
    }
  }

  private void compute() {
    Instant started = now();
    startedAt = started;
    try {
      byte[] bytes = ComputingThread.compute(this, () -> computation.work().compute(this::report));
      StoredResult computed =
          StoredResult.computed(computation.key(), computation.kind(), bytes, clock.instant());
      if (!mayKeep()) {
        throw new JobCancelledException();
      }
      land(airport.keep(this, computed, Duration.between(started, clock.instant())));
    } catch (RuntimeException | Error e) {
      crash(e);
    }
  }

  private synchronized boolean mayKeep() {
    keeping = !cancelled;
    return keeping;
  }

  void land(StoredResult result) {
    progress = 1;
    finishedAt = now();
    airport.ended(this);
    landing.complete(result);
    dependants.clear();
    offer();
  }

  /** Ends it without a result; a cancelled one has ended so already. */
  void crash(Throwable e) {
    synchronized (this) {
      if (finishedAt != null) {
        return;
      }
      failure = e;
      finishedAt = now();
    }
    airport.ended(this);
    landing.completeExceptionally(e);
    dependants.clear();
    offer();
  }

  private void report(double fraction) {
    progress = Math.max(progress, Math.min(1, fraction));
    rate.told(elapsed(), progress);
    if (unwanted()) {
      endUnwanted();
    }
  }

  /** Ends the work, unless somebody has come to want it meanwhile. */
  private void endUnwanted() {
    synchronized (this) {
      if (!unwanted()) {
        return;
      }
      cancelled = true;
    }
    throw new JobCancelledException();
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
        finished == null && started != null
            ? rate.remaining(elapsed(), progress, airport.seconds(this))
            : Optional.empty(),
        waits() ? Optional.of(airport.queueSeconds()) : Optional.empty(),
        computation.resultUrl(),
        Optional.ofNullable(failed));
  }

  /** As exact as the rows keep it, so that a job tells the same times from either. */
  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }

  /** Since its work began [s]; 0 where it has not. */
  private double elapsed() {
    Instant started = startedAt;
    return started == null ? 0 : Duration.between(started, clock.instant()).toMillis() / 1000.0;
  }

  private static JobState ended(Throwable failed) {
    return failed instanceof JobCancelledException ? JobState.CANCELLED : JobState.FAILED;
  }

  private static JobState state(
      @Nullable Instant started, @Nullable Instant finished, @Nullable Throwable failed) {
    if (finished != null) {
      return failed == null ? JobState.DONE : ended(failed);
    }
    return started == null ? JobState.WAITING : JobState.RUNNING;
  }
}
