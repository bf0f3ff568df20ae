package lodeswing.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import lodeswing.job.Realm;
import lodeswing.job.ResultStore;
import lodeswing.job.StoredResult;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Results in the database's one table.
 *
 * <p>A row that cannot be read, or whose digest does not fit its content, is never handed out: it
 * counts as absent, so that the result is computed again and the row replaced.
 */
public final class ResultTable implements ResultStore, AutoCloseable {

  private static final int WRITING_TRIES = 10;

  /** H2's error codes for a broken file and for what it did not foresee when reading one. */
  private static final Set<Integer> DAMAGE = Set.of(90030, 50000);

  /** PostgreSQL's SQLSTATE for damaged data and damaged indexes (its manual, appendix A). */
  private static final Set<String> DAMAGED_STATES = Set.of("XX001", "XX002");

  private static final String FIND =
      "SELECT id, kind, request, body, digest, engine_revision, created_at"
          + " FROM stored_result WHERE id = :id";
  private static final String INSERT =
      "INSERT INTO stored_result (id, kind, request, body, digest, engine_revision, created_at,"
          + " cost_s, weight_bytes, last_used_at, realm)"
          + " VALUES (:id, :kind, :request, :body, :digest, :revision, :created,"
          + " :cost, :weight, :used, :realm)";

  private static final String REPLACE =
      "UPDATE stored_result SET kind = :kind, request = :request, body = :body, digest = :digest,"
          + " engine_revision = :revision, created_at = :created,"
          + " cost_s = :cost, weight_bytes = :weight, last_used_at = :used WHERE id = :id";

  private static final String OWNED =
      "SELECT id, kind, request, body, digest, engine_revision, created_at FROM stored_result"
          + " WHERE realm LIKE :beginning AND realm = id ORDER BY created_at DESC, id";

  private final JdbcClient database;
  private final Clock clock;
  private final DamagedResults damaged = new DamagedResults();
  private final StoreBudget budget;

  /**
   * The table behind a database client.
   *
   * @param database with the migrations applied
   * @param clock tells when a result was last used
   * @param budget weight of results above which those of least worth go [byte]
   */
  public ResultTable(JdbcClient database, Clock clock, long budget) {
    this.database = database;
    this.clock = clock;
    this.budget = new StoreBudget(database, clock, budget);
  }

  /** What was found damaged since the start. */
  public DamagedResults damaged() {
    return damaged;
  }

  /** What its results may weigh, and what had to go. */
  public StoreBudget budget() {
    return budget;
  }

  @Override
  public Optional<StoredResult> find(String id) {
    Optional<StoredResult> found = read(id);
    found.ifPresent(this::used);
    return found;
  }

  @Override
  public void used(StoredResult result) {
    if (result.engineRevision() > 0) {
      budget.used(result.id());
    }
  }

  @Override
  public void makeRoom(Supplier<Set<String>> needed) {
    budget.makeRoom(needed);
  }

  @Override
  public Saved saveIfAbsent(StoredResult result, Duration cost) {
    for (int tries = 0; tries < WRITING_TRIES; tries++) {
      Optional<Saved> saved = trySave(result, cost);
      if (saved.isPresent()) {
        return saved.get();
      }
    }
    throw new IllegalStateException("a row came and went " + WRITING_TRIES + " times");
  }

  @Override
  public List<StoredResult> ownedBy(String owner) {
    return database
        .sql(OWNED)
        .param("beginning", Realm.beginningOf(owner) + "%")
        .query(ResultTable::row)
        .list()
        .stream()
        .flatMap(row -> row.whole().stream())
        .toList();
  }

  @Override
  public boolean delete(Realm realm) {
    // The layout first: from then on nothing more stays that is saved within it.
    boolean there = drop(realm.text());
    deleteWithin(realm);
    return there;
  }

  private boolean isThere(Realm realm) {
    return database
            .sql("SELECT COUNT(*) FROM stored_result WHERE id = :id")
            .param("id", realm.text())
            .query(Long.class)
            .single()
        > 0;
  }

  private boolean drop(String id) {
    return database.sql("DELETE FROM stored_result WHERE id = :id").param("id", id).update() > 0;
  }

  private void deleteWithin(Realm realm) {
    int deleted =
        database
            .sql("DELETE FROM stored_result WHERE realm = :realm AND id <> :realm")
            .param("realm", realm.text())
            .update();
    if (deleted > 0) {
      budget.count();
    }
  }

  /** Empty where the row went between two statements. */
  private Optional<Saved> trySave(StoredResult result, Duration cost) {
    Optional<Realm> within =
        Realm.in(result.id()).filter(realm -> !realm.text().equals(result.id()));
    try {
      write(INSERT, result, cost);
      // Looked up after it was written, so that a deletion in between leaves nothing behind.
      if (within.filter(realm -> !isThere(realm)).isPresent()) {
        drop(result.id());
        return Optional.of(new Saved(result, false));
      }
      budget.added(result);
      return Optional.of(new Saved(result, true));
    } catch (DuplicateKeyException e) {
      Optional<StoredResult> earlier = read(result.id());
      if (earlier.isPresent()) {
        return Optional.of(new Saved(earlier.get(), false));
      }
    }
    if (write(REPLACE, result, cost) == 0) {
      return Optional.empty();
    }
    damaged.replaced(result.id());
    return Optional.of(new Saved(result, true));
  }

  @Override
  public void close() {
    budget.close();
  }

  private int write(String statement, StoredResult result, Duration cost) {
    JdbcClient.StatementSpec prepared = database.sql(statement);
    if (!statement.equals(REPLACE)) {
      prepared =
          prepared.param(
              "realm", Realm.in(result.id()).map(Realm::text).orElse(null), Types.VARCHAR);
    }
    return prepared
        .param("id", result.id())
        .param("kind", result.kind())
        .param("request", result.canonicalRequest())
        .param("body", result.bytes())
        .param("digest", result.digest())
        .param("revision", result.engineRevision())
        .param("created", OffsetDateTime.ofInstant(result.createdAt(), ZoneOffset.UTC))
        .param("cost", cost.toMillis() / 1e3)
        .param("weight", StoreBudget.weight(result))
        .param("used", OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
        .update();
  }

  private Optional<StoredResult> read(String id) {
    Optional<Row> row;
    try {
      row = database.sql(FIND).param("id", id).query(ResultTable::row).optional();
    } catch (DataAccessException e) {
      if (!isDamage(e)) {
        throw e;
      }
      row = Optional.of(new Row("", Optional.empty()));
    }
    if (row.isEmpty()) {
      return Optional.empty();
    }
    Optional<StoredResult> whole = row.get().whole();
    if (whole.isEmpty()) {
      damaged.meet(id, row.get().kind());
    }
    return whole;
  }

  /** Whether a page of the file is broken; anything else is a failure of the database itself. */
  private static boolean isDamage(DataAccessException failure) {
    return failure.getMostSpecificCause() instanceof SQLException cause
        && (DAMAGE.contains(cause.getErrorCode())
            || DAMAGED_STATES.contains(String.valueOf(cause.getSQLState())));
  }

  private static Row row(ResultSet row, int number) throws SQLException {
    String kind = "";
    try {
      kind = row.getString("kind");
      StoredResult result =
          StoredResult.readBack(
              row.getString("id"),
              kind,
              row.getString("request"),
              row.getBytes("body"),
              row.getInt("engine_revision"),
              row.getObject("created_at", OffsetDateTime.class).toInstant());
      boolean whole = result.digest().equals(row.getString("digest"));
      return new Row(kind, whole ? Optional.of(result) : Optional.empty());
    } catch (SQLException | RuntimeException e) {
      // Whatever a broken page makes of a column: there is no result to be had from this row.
      return new Row(kind, Optional.empty());
    }
  }

  private record Row(String kind, Optional<StoredResult> whole) {}
}
