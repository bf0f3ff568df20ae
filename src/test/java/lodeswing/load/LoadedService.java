package lodeswing.load;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The packaged service as a process of its own on loopback, with a temporary data folder. */
final class LoadedService implements AutoCloseable {

  private static final int STARTS_WITHIN_S = 60;

  private final Path folder;
  private final int port;
  private final Process process;

  private LoadedService(Path folder, int port, Process process) {
    this.folder = folder;
    this.port = port;
    this.process = process;
  }

  /**
   * Starts the service and waits until it answers.
   *
   * @param jar the packaged service
   * @param settings Spring properties as {@code name=value}
   */
  static LoadedService start(Path jar, String... settings)
      throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("lodeswing-load-");
    Files.createDirectory(folder.resolve("static"));
    int port = freePort();
    List<String> command =
        new ArrayList<>(
            List.of(
                tool("java"),
                "--add-modules",
                "jdk.incubator.vector",
                "-jar",
                jar.toString(),
                "--server.address=127.0.0.1",
                "--server.port=" + port,
                "--lodeswing.data-folder=" + folder.resolve("data"),
                "--spring.web.resources.add-mappings=true",
                "--spring.web.resources.static-locations=file:" + folder.resolve("static") + "/"));
    Stream.of(settings).map(setting -> "--" + setting).forEach(command::add);
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log").toFile())
            .start();
    // Also where this run is ended from outside.
    Runtime.getRuntime().addShutdownHook(new Thread(process::destroy));
    var service = new LoadedService(folder, port, process);
    service.awaitAnswer();
    return service;
  }

  private static int freePort() throws IOException {
    try (var socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  private static String tool(String name) {
    return Path.of(System.getProperty("java.home"), "bin", name).toString();
  }

  private void awaitAnswer() throws IOException, InterruptedException {
    for (int second = 0; second < 2 * STARTS_WITHIN_S; second++) {
      try (Connection connection = connect()) {
        if (connection.ask(Connection.get("/v1/limits")).status() == 200) {
          return;
        }
      } catch (IOException e) {
        if (!process.isAlive()) {
          throw new IOException(Files.readString(folder.resolve("log")), e);
        }
      }
      TimeUnit.MILLISECONDS.sleep(500);
    }
    close();
    throw new IOException("the service did not answer within " + STARTS_WITHIN_S + " s");
  }

  Connection connect() throws IOException {
    return new Connection(port);
  }

  /** Puts a file where the embedded server serves it as it is; returns its path. */
  String serve(String name, byte[] content) throws IOException {
    Files.write(folder.resolve("static").resolve(name), content);
    return "/" + name;
  }

  /** Files and sockets that the process holds open, as the kernel lists them. */
  long openFiles() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("/proc", Long.toString(process.pid()), "fd"))) {
      return files.count();
    }
  }

  /** Threads of the process, as the kernel lists them. */
  long threads() throws IOException {
    try (Stream<Path> tasks = Files.list(Path.of("/proc", Long.toString(process.pid()), "task"))) {
      return tasks.count();
    }
  }

  /** Bytes of live objects after a full collection, by the JDK's own tool. */
  long liveBytes() throws IOException, InterruptedException {
    Process histogram =
        new ProcessBuilder(tool("jcmd"), Long.toString(process.pid()), "GC.class_histogram")
            .redirectErrorStream(true)
            .start();
    String last = "";
    try (var lines =
        new BufferedReader(
            new InputStreamReader(histogram.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        last = line.isBlank() ? last : line;
      }
    }
    histogram.waitFor();
    String[] total = last.strip().split("\\s+");
    if (total.length < 3 || !total[0].equals("Total")) {
      throw new IOException("no histogram: " + last);
    }
    return Long.parseLong(total[2]);
  }

  @Override
  public void close() {
    process.destroy();
    try {
      if (!process.waitFor(20, TimeUnit.SECONDS)) {
        process.destroyForcibly();
      }
    } catch (InterruptedException e) {
      process.destroyForcibly();
      Thread.currentThread().interrupt();
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
