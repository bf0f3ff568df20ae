package lodeswing.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import javax.sql.DataSource;
import lodeswing.job.ComputationKey;
import lodeswing.job.StoredResult;
import org.flywaydb.core.Flyway;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/** Some results and documents, in a database of a test's own. */
final class StoredRows {

  private static final Instant STORED = Instant.parse("2026-03-01T12:30:45.678Z");

  private StoredRows() {}

  static String fileUrl(Path folder) {
    return new DataFolder(folder).databaseUrl();
  }

  static DataSource source(String url) {
    return new DriverManagerDataSource(url, "lodeswing", "");
  }

  /** The migrated tables behind an address. */
  static JdbcClient migrated(DataSource source) {
    Flyway.configure().dataSource(source).locations("classpath:db/migration/h2").load().migrate();
    return JdbcClient.create(source);
  }

  /** The address of a database in memory, which ends with the tests. */
  static String memoryUrl(String name) {
    return "jdbc:h2:mem:" + name + ";DB_CLOSE_DELAY=-1";
  }

  static ResultTable table(JdbcClient database) {
    return new ResultTable(database, Clock.systemUTC(), Long.MAX_VALUE);
  }

  /** A result of every size a column stores in another way, and a document. */
  static Map<String, StoredResult> some() {
    var random = new Random(7);
    Map<String, StoredResult> rows = new LinkedHashMap<>();
    for (int length : new int[] {1, 40, 200, 3_000, 20_000}) {
      byte[] bytes = new byte[length];
      random.nextBytes(bytes);
      StoredResult result =
          StoredResult.computed(
              new ComputationKey(
                  "tst", "request of " + length + " bytes, Düne".repeat(1 + length % 9)),
              "trace",
              bytes,
              STORED.plusMillis(length));
      rows.put(result.id(), result);
    }
    byte[] layout = "{\"model\":\"textbook\"}".getBytes(StandardCharsets.UTF_8);
    StoredResult document =
        StoredResult.document("lay-document", "layout", "{\"model\":\"textbook\"}", layout, STORED);
    rows.put(document.id(), document);
    return rows;
  }

  static void saveSome(ResultTable table) {
    some().values().forEach(row -> table.saveIfAbsent(row, Duration.ofMillis(1_500)));
  }

  /** Whether two results are the same in everything that is answered from. */
  static boolean same(StoredResult one, StoredResult other) {
    return one.digest().equals(other.digest());
  }
}
