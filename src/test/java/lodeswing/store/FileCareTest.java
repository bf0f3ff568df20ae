package lodeswing.store;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

class FileCareTest {

  private static final int ROUNDS = 60;
  private static final int ROWS = 20;
  private static final int BYTES = 20_000;

  /**
   * Of each twenty rows one is kept, so that every chunk of the file is sparse, and none is free.
   */
  private static long sizeAfterWork(Path folder, boolean cared) throws IOException {
    var source = new JdbcDataSource();
    // Room is used again at once, and not after 45 s.
    source.setURL(
        new DataFolder(folder).prepared().databaseUrl() + ";RETENTION_TIME=0;DB_CLOSE_DELAY=-1");
    JdbcClient database = JdbcClient.create(source);
    database.sql("CREATE TABLE kept (id INT PRIMARY KEY, body BINARY VARYING)").update();
    var random = new Random(4);
    try (var care = new FileCare(source)) {
      for (int round = 0; round < ROUNDS; round++) {
        for (int row = 0; row < ROWS; row++) {
          byte[] body = new byte[BYTES];
          random.nextBytes(body);
          database
              .sql("INSERT INTO kept VALUES (:id, :body)")
              .param("id", round * ROWS + row)
              .param("body", body)
              .update();
        }
        database
            .sql("DELETE FROM kept WHERE id >= :from AND MOD(id, :rows) <> 0")
            .param("from", round * ROWS)
            .param("rows", ROWS)
            .update();
        if (cared) {
          care.round();
        }
      }
      return Files.size(folder.resolve("lodeswing.mv.db"));
    } finally {
      database.sql("SHUTDOWN").update();
    }
  }

  @Test
  void fileOfSparseChunksStaysSmaller(@TempDir Path one, @TempDir Path other) throws IOException {
    long cared = sizeAfterWork(one, true);
    long left = sizeAfterWork(other, false);
    assertTrue(3 * cared < 2 * left, cared + " bytes with care, " + left + " without");
  }
}
