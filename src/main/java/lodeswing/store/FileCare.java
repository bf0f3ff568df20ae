package lodeswing.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import lodeswing.job.BackgroundThread;
import org.h2.engine.SessionLocal;
import org.h2.jdbc.JdbcConnection;
import org.h2.mvstore.MVStore;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps the file of the embedded database from growing: now and then what is left of sparse chunks
 * is written anew, so that their room can be used again.
 *
 * <p>The database has a thread of its own for that, but not where it writes each commit at once, as
 * it must here: a file that held 20 MB of results grew by 6 MB a minute.
 */
public final class FileCare implements AutoCloseable {

  private static final Duration PERIOD = Duration.ofSeconds(10);

  /** Chunks with less than this percentage in use are written anew. */
  private static final int SPARSE = 80;

  private static final int WRITTEN_AT_ONCE = 4 << 20;
  private static final int MOST_A_ROUND = 8;
  private static final Logger LOG = LoggerFactory.getLogger(FileCare.class);

  private final DataSource database;
  private final CountDownLatch closed = new CountDownLatch(1);

  /** Care for an embedded database, which does not begin yet. */
  public FileCare(DataSource database) {
    this.database = database;
  }

  /** Begins. */
  public void start() {
    new BackgroundThread("file-care").newThread(this::run).start();
  }

  private void run() {
    try {
      while (!closed.await(PERIOD.toMillis(), TimeUnit.MILLISECONDS)) {
        round();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Writes anew what is left of some sparse chunks. */
  void round() {
    try (Connection connection = database.getConnection()) {
      if (connection.unwrap(JdbcConnection.class).getSession() instanceof SessionLocal session) {
        MVStore store = session.getDatabase().getStore().getMvStore();
        for (int i = 0; i < MOST_A_ROUND && store.compact(SPARSE, WRITTEN_AT_ONCE); i++) {
          LOG.trace("Sparse chunks were written anew");
        }
      }
    } catch (SQLException | RuntimeException e) {
      // Whoever needs the database is told by itself, and so is the write probe.
      LOG.debug("The database's file is not cared for at the moment", e);
    }
  }

  @Override
  public void close() {
    closed.countDown();
  }
}
