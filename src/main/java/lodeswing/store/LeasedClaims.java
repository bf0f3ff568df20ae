package lodeswing.store;

import java.time.Duration;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Claims as leases in a PostgreSQL table; only the database's own clock is asked.
 *
 * <p>A process that was stopped for longer than its lease may compute a result beside another one:
 * both get the same bytes, and the first to store them wins.
 */
public final class LeasedClaims implements Claims {

  private static final String UNTIL = "clock_timestamp() + make_interval(secs => :lease)";
  private static final String TAKE =
      "INSERT INTO computation_claim AS held (result_id, owner, until_at) VALUES (:id, :owner, "
          + UNTIL
          + ") ON CONFLICT (result_id) DO UPDATE SET owner = EXCLUDED.owner,"
          + " until_at = EXCLUDED.until_at"
          + " WHERE held.until_at < clock_timestamp() OR held.owner = EXCLUDED.owner";
  private static final String RELEASE =
      "DELETE FROM computation_claim WHERE result_id = :id AND owner = :owner";
  private static final String HELD =
      "SELECT count(*) FROM computation_claim WHERE result_id = :id AND owner <> :owner"
          + " AND until_at >= clock_timestamp()";
  private static final String RENEW =
      "UPDATE computation_claim SET until_at = "
          + UNTIL
          + " WHERE owner = :owner AND result_id IN (:held)";

  private final JdbcClient database;
  private final String owner;
  private final double lease;

  /** What is computed here now: a claim that could not be given back is not renewed. */
  private final Set<String> held = ConcurrentHashMap.newKeySet();

  /**
   * Claims of a process.
   *
   * @param owner names this run of this process
   * @param lease after which a claim that was not renewed lapses
   */
  public LeasedClaims(JdbcClient database, String owner, Duration lease) {
    this.database = database;
    this.owner = owner;
    this.lease = lease.toMillis() / 1e3;
  }

  @Override
  public boolean take(String id) {
    boolean taken =
        database.sql(TAKE).param("id", id).param("owner", owner).param("lease", lease).update() > 0;
    if (taken) {
      held.add(id);
    }
    return taken;
  }

  @Override
  public void release(String id) {
    held.remove(id);
    database.sql(RELEASE).param("id", id).param("owner", owner).update();
  }

  @Override
  public boolean isFree(String id) {
    return database.sql(HELD).param("id", id).param("owner", owner).query(Long.class).single() == 0;
  }

  @Override
  public void renew() {
    Set<String> now = Set.copyOf(held);
    if (now.isEmpty()) {
      return;
    }
    database.sql(RENEW).param("held", now).param("owner", owner).param("lease", lease).update();
  }

  @Override
  public boolean shared() {
    return true;
  }
}
