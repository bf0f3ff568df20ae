package lodeswing;

import io.restassured.config.HttpClientConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.filter.Filter;
import io.restassured.filter.FilterContext;
import io.restassured.response.Response;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.FilterableResponseSpecification;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A proxy between the tests and the service that holds every answer against the contract, in a run
 * of its own ({@code src/test/contract/run}); what it finds goes to a file, a line each.
 *
 * <p>Set {@code contract.prism} to the proxy's program and {@code contract.report} to the file.
 */
final class ContractProxy implements AutoCloseable {

  private static final int LONGEST_START_S = 60;
  private static final int LONGEST_ANSWER_MS = 90_000;

  private final Process process;
  private final int port;

  private ContractProxy(Process process, int port) {
    this.process = process;
    this.port = port;
  }

  /** A proxy before a service, where this run has one. */
  static Optional<ContractProxy> before(int service) {
    return Optional.ofNullable(System.getProperty("contract.prism"))
        .map(program -> started(program, service));
  }

  private static ContractProxy started(String program, int service) {
    try {
      int port = freePort();
      Process process =
          new ProcessBuilder(
                  "node",
                  program,
                  "proxy",
                  "api/openapi.yaml",
                  "http://127.0.0.1:" + service,
                  "--host",
                  "127.0.0.1",
                  "--port",
                  Integer.toString(port),
                  "--verboseLevel",
                  "silent")
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      var proxy = new ContractProxy(process, port);
      proxy.awaitListening();
      return proxy;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static int freePort() throws IOException {
    try (var socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  private void awaitListening() throws IOException {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST_START_S);
    while (System.nanoTime() < end && process.isAlive()) {
      try {
        new Socket(InetAddress.getLoopbackAddress(), port).close();
        return;
      } catch (IOException e) {
        LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(50));
      }
    }
    throw new IOException("the proxy does not listen");
  }

  int port() {
    return port;
  }

  /**
   * Some bodies that are hostile to a service stop a proxy: such a test fails and the rest go on.
   */
  static RestAssuredConfig impatient() {
    return RestAssuredConfig.config()
        .httpClient(
            HttpClientConfig.httpClientConfig().setParam("http.socket.timeout", LONGEST_ANSWER_MS));
  }

  @Override
  public void close() {
    process.destroy();
  }

  /** Writes down what the proxy says of each answer. */
  static final class Report implements Filter {

    private static final String FIELD = "sl-violations";

    @Override
    public Response filter(
        FilterableRequestSpecification request,
        FilterableResponseSpecification expected,
        FilterContext context) {
      Response answer = context.next(request, expected);
      String said = Optional.ofNullable(answer.header(FIELD)).orElse("[]");
      String about = request.getMethod() + " " + request.getURI();
      write("answer " + answer.statusCode());
      if (judged(request, answer)) {
        for (JsonNode violation : JsonMapper.shared().readTree(said)) {
          String place = violation.path("location").toString();
          if (place.startsWith("[\"response\"")) {
            write("wrong " + about + " " + answer.statusCode() + ": " + violation);
          }
        }
      }
      return answer;
    }

    /**
     * CBOR is no text that a proxy reads; errors that a sheet asked for inline are no answers; what
     * has no body has none to hold against a schema, and a part of one is no document.
     */
    private static boolean judged(FilterableRequestSpecification request, Response answer) {
      String type = String.valueOf(answer.getContentType());
      return !type.startsWith("application/cbor")
          && !request.getURI().contains("errors=inline")
          && !request.getMethod().equals("HEAD")
          && answer.statusCode() != 304
          && answer.statusCode() != 206;
    }

    private static void write(String line) {
      try {
        Files.writeString(
            Path.of(System.getProperty("contract.report", "target/contract-report.txt")),
            line + "\n",
            StandardOpenOption.CREATE,
            StandardOpenOption.APPEND);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
