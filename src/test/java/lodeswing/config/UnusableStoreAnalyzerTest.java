package lodeswing.config;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.core.env.MapPropertySource;
import org.springframework.core.env.StandardEnvironment;

class UnusableStoreAnalyzerTest {

  /** The lock is the one that another process would hold: on the database's file. */
  @Test
  void folderInUseIsNamed(@TempDir Path folder) throws IOException {
    try (FileChannel database =
            FileChannel.open(
                folder.resolve("lodeswing.mv.db"),
                StandardOpenOption.CREATE,
                StandardOpenOption.WRITE);
        FileLock held = database.lock()) {
      String told = told(folder);
      assertTrue(held.isValid());
      assertTrue(told.contains("in use"), told);
      assertTrue(told.contains(folder.toString()), told);
    }
  }

  @Test
  void folderThatCannotBeMadeIsNamed(@TempDir Path folder) throws IOException {
    Path file = Files.createFile(folder.resolve("file"));
    String told = told(file.resolve("data"));
    assertTrue(told.contains("cannot be written"), told);
    assertTrue(told.contains(file.toString()), told);
  }

  @Test
  void databaseThatDoesNotAnswerIsNamed(@TempDir Path folder) throws IOException {
    String url;
    try (var socket = new ServerSocket(0)) {
      url = "jdbc:postgresql://127.0.0.1:" + socket.getLocalPort() + "/none";
    }
    String told =
        told(
            folder,
            "spring.profiles.active=postgres",
            "spring.datasource.url=" + url,
            "spring.datasource.username=club",
            "spring.datasource.password=club");
    assertTrue(told.contains("cannot be reached"), told);
  }

  private static String told(Path folder, String... settings) {
    RunningService second =
        RunningService.onFolder(
            folder,
            Stream.concat(Stream.of("logging.level.root=OFF"), Stream.of(settings))
                .toArray(String[]::new));
    Throwable failure = assertThrows(RuntimeException.class, second::start);
    var environment = new StandardEnvironment();
    environment
        .getPropertySources()
        .addFirst(
            new MapPropertySource("given", Map.of("lodeswing.data-folder", folder.toString())));
    return Objects.requireNonNull(new UnusableStoreAnalyzer(environment).analyze(failure))
        .getDescription();
  }
}
