package lodeswing.store;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.sql.DataSource;
import lodeswing.StoppableDatabase;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DelegatingDataSource;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

class LeasedClaimsTest {

  private static final Duration LONG = Duration.ofMinutes(5);
  private static final Duration SHORT = Duration.ofMillis(300);

  @TempDir static Path folder;

  private static StoppableDatabase postgres;
  private static DataSource source;

  @BeforeAll
  static void start() throws IOException {
    postgres = new StoppableDatabase(folder.resolve("database"));
    source = new DriverManagerDataSource(postgres.url(), "postgres", "postgres");
    Flyway.configure()
        .dataSource(source)
        .locations("classpath:db/migration/postgresql")
        .load()
        .migrate();
  }

  @AfterAll
  static void stop() throws IOException {
    postgres.close();
  }

  private static LeasedClaims claims(String owner, Duration lease) {
    return new LeasedClaims(JdbcClient.create(source), owner, lease);
  }

  @Test
  void oneOfTwoHoldsAClaimUntilItIsGivenBack() {
    LeasedClaims one = claims("one", LONG);
    LeasedClaims other = claims("other", LONG);
    assertTrue(one.take("a"));
    assertFalse(other.take("a"));
    assertFalse(other.isFree("a"));
    assertTrue(one.isFree("a"));
    one.release("a");
    assertTrue(other.take("a"));
  }

  @Test
  void claimOfADeadProcessLapses() throws InterruptedException {
    assertTrue(claims("dead", SHORT).take("b"));
    Thread.sleep(2 * SHORT.toMillis());
    assertTrue(claims("other", LONG).take("b"));
  }

  @Test
  void renewedClaimDoesNotLapse() throws InterruptedException {
    LeasedClaims one = claims("one", SHORT);
    assertTrue(one.take("c"));
    for (int i = 0; i < 10; i++) {
      Thread.sleep(SHORT.toMillis() / 4);
      one.renew();
    }
    assertFalse(claims("other", LONG).take("c"));
  }

  @Test
  void claimThatCouldNotBeGivenBackIsNotRenewed() throws InterruptedException {
    var away = new AtomicBoolean();
    var shaky =
        new DelegatingDataSource(source) {
          @Override
          public Connection getConnection() throws SQLException {
            if (away.get()) {
              throw new SQLException("away", "08006");
            }
            return super.getConnection();
          }
        };
    var one = new LeasedClaims(JdbcClient.create(shaky), "one", SHORT);
    assertTrue(one.take("d"));
    away.set(true);
    assertThrows(DataAccessException.class, () -> one.release("d"));
    away.set(false);
    for (int i = 0; i < 10; i++) {
      Thread.sleep(SHORT.toMillis() / 4);
      one.renew();
    }
    assertTrue(claims("other", LONG).take("d"));
  }
}
