package lodeswing.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javax.sql.DataSource;
import lodeswing.job.StoredResult;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

/**
 * Flips one byte in a copy of a closed database file, opens it and reads every row, many times.
 *
 * <p>{@code main} does 1,000, or as many as its argument says, and prints what became of them.
 */
final class FlippedFileCheck {

  private static final Duration LONGEST = Duration.ofSeconds(30);
  private static final String FILE = "lodeswing.mv.db";

  private final Path folder;
  private final Random random;
  private final Map<String, StoredResult> rows = StoredRows.some();
  private byte[] file = {};
  private int refused;
  private int absent;
  private int equal;

  FlippedFileCheck(Path folder, long seed) {
    this.folder = folder;
    this.random = new Random(seed);
  }

  public static void main(String[] arguments) throws Exception {
    int tries = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000;
    var check = new FlippedFileCheck(Files.createTempDirectory("lodeswing-flips-"), 1);
    check.run(tries);
    System.out.println(check);
  }

  /** Databases that could not be opened or read, which said so. */
  int refused() {
    return refused;
  }

  @Override
  public String toString() {
    return refused + " refused, " + absent + " with absent rows, " + equal + " with all rows equal";
  }

  /**
   * Makes the tries.
   *
   * @throws AssertionError where another row than the saved one is served
   */
  void run(int tries) throws IOException, InterruptedException {
    write();
    ExecutorService opening = Executors.newCachedThreadPool(FlippedFileCheck::daemon);
    for (int i = 0; i < tries; i++) {
      int place = random.nextInt(file.length);
      int bit = random.nextInt(8);
      byte[] changed = file.clone();
      changed[place] ^= (byte) (1 << bit);
      Path copy = Files.createDirectory(folder.resolve("try-" + i));
      Files.write(copy.resolve(FILE), changed);
      String what = "bit " + bit + " of byte " + place;
      try {
        count(opening.submit(() -> readAll(copy, what)).get(LONGEST.toSeconds(), TimeUnit.SECONDS));
      } catch (ExecutionException e) {
        if (e.getCause() instanceof AssertionError wrong) {
          throw wrong;
        }
        refused++;
      } catch (TimeoutException e) {
        throw new AssertionError("opening does not end: " + what, e);
      }
      Files.deleteIfExists(copy.resolve(FILE));
    }
    opening.shutdown();
  }

  private static Thread daemon(Runnable task) {
    var thread = new Thread(task, "opening");
    thread.setDaemon(true);
    return thread;
  }

  private void count(boolean all) {
    if (all) {
      equal++;
    } else {
      absent++;
    }
  }

  private void write() throws IOException {
    Path whole = Files.createDirectories(folder.resolve("whole"));
    StoredRows.migrated(StoredRows.source(StoredRows.fileUrl(whole)));
    var source = new SingleConnectionDataSource(StoredRows.fileUrl(whole), "lodeswing", "", true);
    JdbcClient database = client(source);
    try (ResultTable table = StoredRows.table(database)) {
      StoredRows.saveSome(table);
    }
    database.sql("SHUTDOWN COMPACT").update();
    source.destroy();
    file = Files.readAllBytes(whole.resolve(FILE));
  }

  /** Whether every row is there; an exception where the database cannot be used. */
  private boolean readAll(Path copy, String what) {
    var source = new SingleConnectionDataSource(StoredRows.fileUrl(copy), "lodeswing", "", true);
    try (ResultTable table = StoredRows.table(client(source))) {
      boolean all = true;
      for (StoredResult row : rows.values()) {
        Optional<StoredResult> found = table.find(row.id());
        if (found.isPresent() && !StoredRows.same(row, found.get())) {
          throw new AssertionError("another " + row.id() + " is served after " + what);
        }
        all &= found.isPresent();
      }
      return all;
    } finally {
      source.destroy();
    }
  }

  private static JdbcClient client(DataSource source) {
    return JdbcClient.create(source);
  }
}
