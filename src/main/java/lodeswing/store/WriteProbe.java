package lodeswing.store;

import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import lodeswing.job.BackgroundThread;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Writes a row now and then, to know whether anything can be written: a full disk or a folder that
 * has become read-only is not seen by reading.
 *
 * <p>An embedded database that could not write stays closed for as long as one connection to it is
 * open; all of them are therefore given up while nothing can be written, so that the next opens it
 * anew.
 */
public final class WriteProbe implements AutoCloseable {

  /** Between two probes. */
  public static final Duration PERIOD = Duration.ofSeconds(3);

  private static final Logger LOG = LoggerFactory.getLogger(WriteProbe.class);

  private final JdbcClient database;
  private final Clock clock;
  private final Runnable giveUpConnections;
  private final CountDownLatch closed = new CountDownLatch(1);
  private volatile boolean writes = true;

  /**
   * A probe that does not run yet.
   *
   * @param giveUpConnections closes the pool's connections, as soon as they are free
   */
  public WriteProbe(JdbcClient database, Clock clock, Runnable giveUpConnections) {
    this.database = database;
    this.clock = clock;
    this.giveUpConnections = giveUpConnections;
  }

  /** Begins to probe. */
  public void start() {
    new BackgroundThread("write-probe").newThread(this::run).start();
  }

  private void run() {
    try {
      do {
        probe();
      } while (!closed.await(PERIOD.toMillis(), TimeUnit.MILLISECONDS));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Whether the last probe could write. */
  public boolean writes() {
    return writes;
  }

  private void probe() {
    try {
      database
          .sql("UPDATE write_probe SET written_at = :now WHERE id = 1")
          .param("now", clock.instant().atOffset(ZoneOffset.UTC))
          .update();
      if (!writes) {
        LOG.info("The database can be written to again");
      }
      writes = true;
    } catch (DataAccessException e) {
      if (writes) {
        LOG.error("The database cannot be written to: {}", String.valueOf(e.getMessage()));
      }
      writes = false;
      giveUpConnections.run();
    }
  }

  @Override
  public void close() {
    closed.countDown();
  }
}
