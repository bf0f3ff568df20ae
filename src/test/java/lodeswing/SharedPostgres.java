package lodeswing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** A real PostgreSQL of the test's own. */
public final class SharedPostgres implements AutoCloseable {

  private final EmbeddedPostgres server;

  private SharedPostgres(EmbeddedPostgres server) {
    this.server = server;
  }

  /** Starts one on a free port, in a folder that goes with it. */
  public static SharedPostgres start() {
    try {
      return new SharedPostgres(EmbeddedPostgres.start());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What a service needs to be told to use it. */
  public List<String> settings() {
    return List.of(
        "spring.profiles.active=postgres",
        "spring.datasource.url=" + server.getJdbcUrl("postgres", "postgres"),
        "spring.datasource.username=postgres",
        "spring.datasource.password=postgres");
  }

  @Override
  public void close() throws IOException {
    server.close();
  }
}
