package lodeswing.store;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Supplier;
import lodeswing.job.BackgroundThread;
import lodeswing.job.StoredResult;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Keeps the weight of all stored results within a budget, on a thread of its own.
 *
 * <p>The worth of a result is the time it cost by its weight, and halves with each week since its
 * last use. Documents, whose revision is 0, are neither counted nor dropped: nothing could make
 * them again.
 */
public final class StoreBudget implements AutoCloseable {

  private static final Logger LOG = LoggerFactory.getLogger(StoreBudget.class);

  /** What a row takes beside its body and its request [byte]. */
  private static final int BYTES_PER_ROW = 256;

  private static final double KEPT_SHARE = 0.9;
  private static final int BATCH = 100;
  private static final Duration STAMPED_EVERY = Duration.ofHours(1);
  private static final int STAMPS_KNOWN = 100_000;
  private static final Duration GRACE = Duration.ofSeconds(2);

  private static final String TOTAL =
      "SELECT COALESCE(SUM(weight_bytes), 0) FROM stored_result WHERE engine_revision > 0";

  /** The logarithm of the worth, which does not run out of numbers; a millisecond is added. */
  private static final String LEAST_WORTH =
      "SELECT id, weight_bytes FROM stored_result WHERE engine_revision > 0 ORDER BY"
          + " LN(cost_s + 0.001) - LN(weight_bytes + 1.0)"
          + " + LN(2) * EXTRACT(EPOCH FROM last_used_at) / 604800.0, id"
          + " FETCH FIRST :count ROWS ONLY";

  private static final String DROP = "DELETE FROM stored_result WHERE id = :id";
  private static final String STAMP =
      "UPDATE stored_result SET last_used_at = :now WHERE id = :id AND last_used_at < :earlier";

  private final JdbcClient database;
  private final Clock clock;
  private final long budget;
  private final AtomicLong total;
  private final LongAdder dropped = new LongAdder();
  private final AtomicBoolean sweeping = new AtomicBoolean();
  private final Cache<String, Boolean> stamped =
      Caffeine.newBuilder().maximumSize(STAMPS_KNOWN).expireAfterWrite(STAMPED_EVERY).build();
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(new BackgroundThread("store-budget"));

  StoreBudget(JdbcClient database, Clock clock, long budget) {
    this.database = database;
    this.clock = clock;
    this.budget = budget;
    this.total = new AtomicLong(database.sql(TOTAL).query(Long.class).single());
  }

  /** What a result weighs [byte]. */
  static long weight(StoredResult result) {
    return (long) result.bytes().length + result.canonicalRequest().length() + BYTES_PER_ROW;
  }

  /** What all stored results weigh [byte]. */
  public long total() {
    return total.get();
  }

  /** How many results were dropped since the start. */
  public long dropped() {
    return dropped.sum();
  }

  void added(StoredResult result) {
    if (result.engineRevision() > 0) {
      total.addAndGet(weight(result));
    }
  }

  /** Stamps a result as used, at most once an hour. */
  void used(String id) {
    if (stamped.asMap().putIfAbsent(id, true) == null) {
      later(() -> stamp(id));
    }
  }

  private void stamp(String id) {
    Instant now = clock.instant();
    database
        .sql(STAMP)
        .param("id", id)
        .param("now", at(now))
        .param("earlier", at(now.minus(STAMPED_EVERY)))
        .update();
  }

  /**
   * Drops what is worth least, down to nine tenths of the budget, where it is exceeded; soon.
   *
   * @param needed ids that must stay, asked for each batch
   */
  void makeRoom(Supplier<Set<String>> needed) {
    if (total.get() > budget && sweeping.compareAndSet(false, true)) {
      later(
          () -> {
            try {
              sweep(needed);
            } finally {
              sweeping.set(false);
            }
          });
    }
  }

  private void sweep(Supplier<Set<String>> needed) {
    // Other processes may have stored and dropped results too.
    count();
    long before = dropped.sum();
    boolean more = true;
    while (more && total.get() > KEPT_SHARE * budget) {
      more = dropBatch(needed.get());
    }
    LOG.info("{} stored results were dropped to keep the budget", dropped.sum() - before);
  }

  /** Whether there was anything to drop. */
  private boolean dropBatch(Set<String> needed) {
    List<Candidate> candidates =
        database
            .sql(LEAST_WORTH)
            .param("count", BATCH + needed.size())
            .query((row, number) -> new Candidate(row.getString(1), row.getLong(2)))
            .list();
    long before = dropped.sum();
    for (Candidate candidate : candidates) {
      if (total.get() <= KEPT_SHARE * budget) {
        break;
      }
      if (!needed.contains(candidate.id())
          && database.sql(DROP).param("id", candidate.id()).update() > 0) {
        total.addAndGet(-candidate.weight());
        stamped.invalidate(candidate.id());
        dropped.increment();
      }
    }
    return dropped.sum() > before;
  }

  private static OffsetDateTime at(Instant instant) {
    return OffsetDateTime.ofInstant(instant, ZoneOffset.UTC);
  }

  /** Weighs what is kept anew. */
  void count() {
    total.set(database.sql(TOTAL).query(Long.class).single());
  }

  private void later(Runnable task) {
    try {
      thread.execute(
          () -> {
            try {
              task.run();
            } catch (RuntimeException e) {
              LOG.warn("The store's budget could not be kept: {}", e.getMessage());
            }
          });
    } catch (RejectedExecutionException e) {
      LOG.debug("The store is being closed");
    }
  }

  /** Lets begun work end; an interrupt would close the database's file. */
  @Override
  public void close() {
    thread.shutdown();
    try {
      if (!thread.awaitTermination(GRACE.toMillis(), TimeUnit.MILLISECONDS)) {
        LOG.info("The store's budget was left unfinished");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private record Candidate(String id, long weight) {}
}
