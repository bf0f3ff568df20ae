package lodeswing.store;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import lodeswing.job.BackgroundThread;
import lodeswing.job.ResultStore;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The flights whose results other processes compute; looked after by one thread. */
final class Elsewhere implements AutoCloseable {

  private static final long EVERY_MS = 50;
  private static final Logger LOG = LoggerFactory.getLogger(Elsewhere.class);

  private final ResultStore store;
  private final Claims claims;
  private final Set<Flight> flights = ConcurrentHashMap.newKeySet();
  private final AtomicInteger rescues = new AtomicInteger();
  private final ScheduledExecutorService thread =
      Executors.newSingleThreadScheduledExecutor(new BackgroundThread("elsewhere"));
  private final ScheduledFuture<?> looking;

  Elsewhere(ResultStore store, Claims claims) {
    this.store = store;
    this.claims = claims;
    this.looking =
        thread.scheduleWithFixedDelay(this::look, EVERY_MS, EVERY_MS, TimeUnit.MILLISECONDS);
  }

  /** Looks after a flight until another process has its result, or has given it up. */
  void watch(Flight flight) {
    flights.add(flight);
  }

  private void look() {
    try {
      flights.removeIf(flight -> flight.hasEnded() || arrived(flight));
    } catch (RuntimeException e) {
      LOG.warn("A result that another process computes is not within reach: {}", e.getMessage());
    }
  }

  private boolean arrived(Flight flight) {
    if (!claims.isFree(flight.resultId())) {
      return false;
    }
    // On a thread of its own: the computing threads may all be waiting for it.
    store
        .find(flight.resultId())
        .ifPresentOrElse(
            flight::land,
            () ->
                new ComputingThread(flight.again(), "taking-over-" + rescues.incrementAndGet())
                    .start());
    return true;
  }

  @Override
  public void close() {
    looking.cancel(false);
    thread.shutdown();
  }
}
