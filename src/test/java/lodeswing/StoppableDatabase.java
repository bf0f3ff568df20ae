package lodeswing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.List;

/** A PostgreSQL that can be stopped and started again on the same data and port. */
public final class StoppableDatabase implements AutoCloseable {

  private final Path folder;
  private final int port;
  private EmbeddedPostgres server;

  /** Starts one on a free port, with its data in a folder. */
  public StoppableDatabase(Path folder) throws IOException {
    this.folder = folder;
    try (var socket = new ServerSocket(0)) {
      this.port = socket.getLocalPort();
    }
    this.server = started();
  }

  private EmbeddedPostgres started() throws IOException {
    return EmbeddedPostgres.builder()
        .setDataDirectory(folder.toFile())
        .setCleanDataDirectory(false)
        .setPort(port)
        .start();
  }

  /** Stops it; its data stay. */
  public void stop() throws IOException {
    server.close();
  }

  /** Starts it again. */
  public void start() throws IOException {
    server = started();
  }

  /** Its address for JDBC. */
  public String url() {
    return "jdbc:postgresql://localhost:" + port + "/postgres";
  }

  /** What a service needs to be told to use it. */
  public List<String> settings() {
    return List.of(
        "spring.profiles.active=postgres",
        "spring.datasource.url=" + url(),
        "spring.datasource.username=postgres",
        "spring.datasource.password=postgres");
  }

  @Override
  public void close() throws IOException {
    server.close();
  }
}
