package lodeswing.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;
import lodeswing.job.ResultStore;
import lodeswing.job.StoredResult;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Results in the database's one table.
 *
 * <p>A row whose digest does not fit its content is never handed out: it counts as absent, so that
 * the result is computed again and the row replaced.
 */
public final class ResultTable implements ResultStore {

  private static final Logger LOG = LoggerFactory.getLogger(ResultTable.class);

  private static final String FIND =
      "SELECT id, kind, request, body, digest, engine_revision, created_at"
          + " FROM stored_result WHERE id = :id";
  private static final String INSERT =
      "INSERT INTO stored_result (id, kind, request, body, digest, engine_revision, created_at)"
          + " VALUES (:id, :kind, :request, :body, :digest, :revision, :created)";
  private static final String REPLACE =
      "UPDATE stored_result SET kind = :kind, request = :request, body = :body, digest = :digest,"
          + " engine_revision = :revision, created_at = :created WHERE id = :id";

  private final JdbcClient database;
  private final LongAdder damaged = new LongAdder();

  /**
   * The table behind a database client.
   *
   * @param database with the migrations applied
   */
  public ResultTable(JdbcClient database) {
    this.database = database;
  }

  /** How many damaged rows were met since the start. */
  public long damagedRows() {
    return damaged.sum();
  }

  @Override
  public Optional<StoredResult> find(String id) {
    return database
        .sql(FIND)
        .param("id", id)
        .query(ResultTable::row)
        .optional()
        .flatMap(this::whole);
  }

  @Override
  public Saved saveIfAbsent(StoredResult result) {
    try {
      write(INSERT, result);
      return new Saved(result, true);
    } catch (DuplicateKeyException e) {
      Optional<StoredResult> earlier = find(result.id());
      if (earlier.isPresent()) {
        return new Saved(earlier.get(), false);
      }
      write(REPLACE, result);
      return new Saved(result, true);
    }
  }

  private void write(String statement, StoredResult result) {
    database
        .sql(statement)
        .param("id", result.id())
        .param("kind", result.kind())
        .param("request", result.canonicalRequest())
        .param("body", result.bytes())
        .param("digest", result.digest())
        .param("revision", result.engineRevision())
        .param("created", OffsetDateTime.ofInstant(result.createdAt(), ZoneOffset.UTC))
        .update();
  }

  private Optional<StoredResult> whole(Row row) {
    if (row.digest().equals(row.result().digest())) {
      return Optional.of(row.result());
    }
    damaged.increment();
    LOG.warn("The stored {} {} is damaged and is not used", row.result().kind(), row.result().id());
    return Optional.empty();
  }

  private static Row row(ResultSet row, int number) throws SQLException {
    return new Row(
        StoredResult.readBack(
            row.getString("id"),
            row.getString("kind"),
            row.getString("request"),
            row.getBytes("body"),
            row.getInt("engine_revision"),
            row.getObject("created_at", OffsetDateTime.class).toInstant()),
        row.getString("digest"));
  }

  private record Row(StoredResult result, String digest) {}
}
