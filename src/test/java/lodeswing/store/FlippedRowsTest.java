package lodeswing.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.sql.Timestamp;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import lodeswing.job.ResultStore.Saved;
import lodeswing.job.StoredResult;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A byte flipped in a row: the row is absent until it is written again, never another. */
class FlippedRowsTest {

  private static final int TRIES = 1_000;
  private static final List<String> COLUMNS =
      List.of("id", "kind", "request", "body", "digest", "engine_revision", "created_at");

  private final Map<String, StoredResult> rows = StoredRows.some();
  private final Random random = new Random(20_260_301);
  private final JdbcClient database =
      StoredRows.migrated(StoredRows.source(StoredRows.memoryUrl("rows-" + System.nanoTime())));
  private final ResultTable table = StoredRows.table(database);

  @BeforeEach
  void fill() {
    StoredRows.saveSome(table);
  }

  @AfterEach
  void close() {
    table.close();
  }

  @Test
  void everyFlipIsFoundAndReplaced() {
    List<StoredResult> all = List.copyOf(rows.values());
    int found = 0;
    for (int i = 0; i < TRIES; i++) {
      StoredResult whole = all.get(i % all.size());
      String column = COLUMNS.get(i / all.size() % COLUMNS.size());
      String idNow = flip(whole, column);
      if (idNow.isEmpty()) {
        // The database itself refuses what the flip made: it never gets into a row.
        found++;
        continue;
      }
      String what = column + " of " + whole.id() + ", try " + i;
      assertEquals(Optional.empty(), table.find(whole.id()), what);
      assertEquals(Optional.empty(), table.find(idNow), what);
      found++;
      assertTrue(table.saveIfAbsent(whole, Duration.ofSeconds(2)).created(), what);
      assertTrue(StoredRows.same(whole, table.find(whole.id()).orElseThrow()), what);
      if (!idNow.equals(whole.id())) {
        database.sql("DELETE FROM stored_result WHERE id = :id").param("id", idNow).update();
      }
    }
    assertEquals(TRIES, found);
    for (StoredResult row : all) {
      assertTrue(StoredRows.same(row, table.find(row.id()).orElseThrow()), row.id());
    }
  }

  /** Flips one bit of one byte; the id that the row has then, empty where it is refused. */
  private String flip(StoredResult row, String column) {
    Object value =
        switch (column) {
          case "id" -> flipped(row.id());
          case "kind" -> flipped(row.kind());
          case "request" -> flipped(row.canonicalRequest());
          case "body" -> flipped(row.bytes());
          case "digest" -> flipped(row.digest());
          case "engine_revision" -> row.engineRevision() ^ 1 << random.nextInt(32);
          default ->
              // Some thousand years are what the column holds.
              Timestamp.from(
                  Instant.ofEpochMilli(row.createdAt().toEpochMilli() ^ 1L << random.nextInt(44)));
        };
    try {
      database
          .sql("UPDATE stored_result SET " + column + " = :value WHERE id = :id")
          .param("value", value)
          .param("id", row.id())
          .update();
    } catch (DataAccessException e) {
      return "";
    }
    return column.equals("id") ? (String) value : row.id();
  }

  private byte[] flipped(byte[] bytes) {
    byte[] changed = bytes.clone();
    changed[random.nextInt(changed.length)] ^= (byte) (1 << random.nextInt(8));
    return changed;
  }

  /** As one byte to a character, so that every flip is a text again. */
  private String flipped(String text) {
    byte[] bytes = flipped(text.getBytes(StandardCharsets.ISO_8859_1));
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  @Test
  void aDamagedRowIsCountedOnceUntilItIsReplaced() {
    StoredResult row = rows.values().iterator().next();
    damage(row);
    for (int i = 0; i < 5; i++) {
      assertFalse(table.find(row.id()).isPresent());
    }
    assertEquals(1, table.damaged().count());
    assertTrue(table.saveIfAbsent(row, Duration.ofSeconds(1)).created());
    damage(row);
    assertFalse(table.find(row.id()).isPresent());
    assertEquals(2, table.damaged().count());
  }

  @Test
  void aWholeRowIsKept() {
    StoredResult row = rows.values().iterator().next();
    StoredResult later =
        StoredResult.readBack(
            row.id(), row.kind(), row.canonicalRequest(), new byte[] {9}, 3, row.createdAt());
    Saved saved = table.saveIfAbsent(later, Duration.ofSeconds(1));
    assertFalse(saved.created());
    assertTrue(StoredRows.same(row, saved.result()));
  }

  private void damage(StoredResult row) {
    database
        .sql("UPDATE stored_result SET body = :body WHERE id = :id")
        .param("body", flipped(row.bytes()))
        .param("id", row.id())
        .update();
  }
}
