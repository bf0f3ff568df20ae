package lodeswing.kills;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** One process of the packaged service, to be killed, paused and started again. */
final class Replica implements AutoCloseable {

  private static final HttpClient CLIENT =
      HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(2)).build();

  private final String name;
  private final Path jar;
  private final Path folder;
  private final List<String> settings;
  private final Surroundings surroundings;
  private final int port;
  private Process process;

  Replica(String name, Path jar, Path folder, List<String> settings) throws IOException {
    this(name, jar, folder, settings, Surroundings.USUAL);
  }

  Replica(String name, Path jar, Path folder, List<String> settings, Surroundings surroundings)
      throws IOException {
    this.name = name;
    this.jar = jar;
    this.folder = folder;
    this.settings = settings;
    this.surroundings = surroundings;
    try (var socket = new ServerSocket(0)) {
      this.port = socket.getLocalPort();
    }
    Files.createDirectories(folder);
    this.process = begin();
  }

  /**
   * What a process runs in.
   *
   * @param shell a command that runs the words after it, or none
   * @param machine settings of the virtual machine
   */
  record Surroundings(List<String> shell, List<String> machine) {

    static final Surroundings USUAL = new Surroundings(List.of(), List.of());
  }

  private Process begin() throws IOException {
    List<String> command = new ArrayList<>(surroundings.shell());
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("--add-modules=jdk.incubator.vector");
    command.add("-Xmx512m");
    command.addAll(surroundings.machine());
    command.addAll(
        List.of(
            "-jar",
            jar.toString(),
            "--server.port=" + port,
            "--lodeswing.data-folder=" + folder.resolve("data"),
            "--lodeswing.warm-up=false",
            "--logging.level.root=WARN"));
    settings.forEach(setting -> command.add("--" + setting));
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.appendTo(folder.resolve("log").toFile()))
        .start();
  }

  String name() {
    return name;
  }

  void kill() throws InterruptedException {
    process.destroyForcibly();
    process.waitFor();
  }

  void start() throws IOException {
    process = begin();
  }

  void signal(String signal) throws IOException, InterruptedException {
    new ProcessBuilder("kill", "-" + signal, Long.toString(process.pid()))
        .inheritIO()
        .start()
        .waitFor();
  }

  long pid() {
    return process.pid();
  }

  boolean ready() {
    try {
      return get("/actuator/health/readiness").statusCode() == 200;
    } catch (IOException e) {
      return false;
    }
  }

  void awaitReady() throws InterruptedException {
    for (int i = 0; !ready(); i++) {
      if (i > 1200) {
        throw new IllegalStateException(name + " does not become ready");
      }
      Thread.sleep(100);
    }
  }

  HttpResponse<byte[]> get(String path) throws IOException {
    return send(request(path).GET().build());
  }

  HttpResponse<byte[]> post(String path, String json) throws IOException {
    return send(
        request(path)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(json))
            .build());
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
        .timeout(Duration.ofSeconds(70));
  }

  private static HttpResponse<byte[]> send(HttpRequest request) throws IOException {
    try {
      return CLIENT.send(request, BodyHandlers.ofByteArray());
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public void close() {
    process.destroyForcibly().onExit().join();
  }
}
