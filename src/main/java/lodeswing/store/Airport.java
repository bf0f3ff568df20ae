package lodeswing.store;

import java.time.Duration;
import java.util.Optional;
import lodeswing.job.ResultStore;
import lodeswing.job.StoredResult;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What all flights of a process share: who may start, where results go, who hears of the end. */
final class Airport implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(Airport.class);

  private final ResultStore store;
  private final Claims claims;
  private final JobDesk desk;
  private final ComputingThreads threads;
  private final Elsewhere elsewhere;

  Airport(ResultStore store, Claims claims, JobDesk desk, ComputingThreads threads) {
    this.threads = threads;
    this.store = store;
    this.claims = claims;
    this.desk = desk;
    this.elsewhere = new Elsewhere(store, claims);
  }

  /** Whether this process may compute a flight's result; else it is looked after. */
  boolean mayStart(Flight flight) {
    if (claims.take(flight.resultId())) {
      return true;
    }
    elsewhere.watch(flight);
    return false;
  }

  /** The result that another process has stored just before this one came to compute it. */
  Optional<StoredResult> earlier(Flight flight) {
    return claims.shared() ? store.find(flight.resultId()) : Optional.empty();
  }

  /** How long all that waits for a thread will take, by its cost [s]. */
  double queueSeconds() {
    return threads.waitingReleases() / threads.pace().releasesPerSecond();
  }

  /** How long a flight takes, by its cost and the pace, which may be a guess yet [s]. */
  double seconds(Flight flight) {
    return flight.releases() / threads.pace().releasesPerSecond();
  }

  StoredResult keep(Flight flight, StoredResult computed, Duration cost) {
    threads.learn(flight.releases(), cost);
    StoredResult kept = store.saveIfAbsent(computed, cost).result();
    store.makeRoom(desk::needed);
    return kept;
  }

  void leave(Flight flight) {
    try {
      claims.release(flight.resultId());
    } catch (RuntimeException e) {
      LOG.warn("A claim lapses by itself, for it could not be given back: {}", e.getMessage());
    }
  }

  void ended(Flight flight) {
    desk.ended(flight);
  }

  @Override
  public void close() {
    elsewhere.close();
  }
}
