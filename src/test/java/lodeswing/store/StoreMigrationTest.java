package lodeswing.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import javax.sql.DataSource;
import lodeswing.job.StoredResult;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class StoreMigrationTest {

  @Test
  void rowsOfTheFirstTableAreReadAndWeighed() {
    DataSource source = StoredRows.source(StoredRows.memoryUrl("first-table"));
    Flyway.configure()
        .dataSource(source)
        .locations("classpath:db/migration/h2")
        .target("1")
        .load()
        .migrate();
    JdbcClient database = JdbcClient.create(source);
    long weight = 0;
    for (StoredResult row : StoredRows.some().values()) {
      database
          .sql(
              "INSERT INTO stored_result (id, kind, request, body, digest, engine_revision,"
                  + " created_at) VALUES (?, ?, ?, ?, ?, ?, ?)")
          .params(
              row.id(),
              row.kind(),
              row.canonicalRequest(),
              row.bytes(),
              row.digest(),
              row.engineRevision(),
              OffsetDateTime.ofInstant(row.createdAt(), ZoneOffset.UTC))
          .update();
      weight += row.engineRevision() > 0 ? StoreBudget.weight(row) : 0;
    }
    try (ResultTable table = StoredRows.table(StoredRows.migrated(source))) {
      for (StoredResult row : StoredRows.some().values()) {
        assertTrue(StoredRows.same(row, table.find(row.id()).orElseThrow()), row.id());
      }
      assertEquals(weight, table.budget().total());
    }
  }
}
