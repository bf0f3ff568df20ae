package lodeswing.store;

import java.time.Duration;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import lodeswing.job.Pace;
import lodeswing.job.TooMuchWorkException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The threads that compute, and what waits for them.
 *
 * <p>Work that somebody waits for has threads of its own, so that it never stands behind jobs that
 * nobody waits for; the processor's time is shared by the operating system. What waits is bounded
 * by its number and by its cost in releases; how soon there is room again is told by the {@link
 * LearnedPace}.
 */
final class ComputingThreads implements AutoCloseable {

  private static final Duration GRACE = Duration.ofSeconds(2);
  private static final Logger LOG = LoggerFactory.getLogger(ComputingThreads.class);

  private final AtomicInteger numbers = new AtomicInteger();
  private final AtomicInteger waiting = new AtomicInteger();
  private final AtomicLong waitingReleases = new AtomicLong();
  private final ThreadPoolExecutor waitedFor;
  private final ThreadPoolExecutor later;
  private final int most;
  private final long mostReleases;
  private final LearnedPace pace = new LearnedPace();

  ComputingThreads(ComputationCache.Size size) {
    this.waitedFor = pool(size.threads());
    this.later = pool(size.threads());
    this.most = size.waiting();
    this.mostReleases = size.waitingReleases();
  }

  private ThreadPoolExecutor pool(int threads) {
    return new ThreadPoolExecutor(
        threads,
        threads,
        0,
        TimeUnit.SECONDS,
        new LinkedBlockingQueue<>(),
        task -> new ComputingThread(task, "computing-" + numbers.incrementAndGet()));
  }

  /** How many computations wait for a thread. */
  int waiting() {
    return waiting.get();
  }

  /** What waits for a thread, in releases. */
  long waitingReleases() {
    return waitingReleases.get();
  }

  /**
   * Puts a flight into the queue.
   *
   * @param wanted whether somebody waits for it
   * @throws TooMuchWorkException where too much waits already; work that a free thread can begin is
   *     never refused
   */
  void submit(Flight flight, boolean wanted) {
    long cost = flight.releases();
    ThreadPoolExecutor pool = wanted ? waitedFor : later;
    boolean idle = pool.getActiveCount() < pool.getCorePoolSize();
    if (!idle
        && (waiting.get() >= most
            || (waiting.get() > 0 && waitingReleases.get() + cost > mostReleases))) {
      throw new TooMuchWorkException(waiting.get(), untilHalfDone());
    }
    waiting.incrementAndGet();
    waitingReleases.addAndGet(cost);
    pool.execute(new Queued(flight));
  }

  /** When half of what waits will have been done: then it is worth asking again. */
  private Duration untilHalfDone() {
    return Duration.ofMillis((long) (500 * waitingReleases.get() / pace.releasesPerSecond()));
  }

  /** Lets a flight that waits among the jobs be begun by the threads of those who wait. */
  void promote(Flight flight) {
    if (flight.waits()) {
      waitedFor.execute(flight);
    }
  }

  /** Drops a flight that waits. */
  void remove(Flight flight) {
    drop(waitedFor, flight);
    drop(later, flight);
  }

  private static void drop(ThreadPoolExecutor pool, Flight flight) {
    for (Runnable queued : pool.getQueue()) {
      if (queued instanceof Queued one && one.flight == flight && pool.remove(queued)) {
        one.leave();
      }
    }
  }

  /** How fast they compute. */
  Pace pace() {
    return pace;
  }

  /** Hears how long a thread took for how many releases. */
  void learn(long releases, Duration took) {
    pace.learn(releases, took, Math.max(1, waitedFor.getActiveCount() + later.getActiveCount()));
  }

  /** Never interrupts: an interrupt during a write closes the embedded database's file. */
  @Override
  public void close() {
    waitedFor.getQueue().clear();
    later.getQueue().clear();
    waitedFor.shutdown();
    later.shutdown();
    try {
      if (!waitedFor.awaitTermination(GRACE.toMillis(), TimeUnit.MILLISECONDS)
          || !later.awaitTermination(GRACE.toMillis(), TimeUnit.MILLISECONDS)) {
        LOG.info(
            "{} computations were left unfinished",
            waitedFor.getActiveCount() + later.getActiveCount());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** A flight in the queue. */
  private final class Queued implements Runnable {

    private final Flight flight;

    Queued(Flight flight) {
      this.flight = flight;
    }

    void leave() {
      waiting.decrementAndGet();
      waitingReleases.addAndGet(-flight.releases());
    }

    @Override
    public void run() {
      leave();
      flight.run();
    }
  }
}
