package lodeswing.config;

import static org.hamcrest.MatcherAssert.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.RestAssured;
import io.restassured.path.json.JsonPath;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lodeswing.LodeswingApplication;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A process of its own, since a process has one log. */
@Timeout(value = 5, unit = TimeUnit.MINUTES)
class JsonLogsTest {

  private static final String TRACE = "4bf92f3577b34da6a3ce929d0e0e4736";
  private static final Pattern PORT = Pattern.compile("Tomcat started on port (\\d+)");

  @Test
  void logTellsTheTraceOfARequestAndNotItsQuery(@TempDir Path folder) throws Exception {
    Process service = start(folder);
    try (BufferedReader log = service.inputReader()) {
      int port = port(log);
      ask(port, "/v1/limits?private=1", "00-" + TRACE + "-00f067aa0ba902b7-01");
      ask(port, "/v1/sample-layouts", "00-" + TRACE + "-0000000000000000-01");
      JsonPath good = answered(log, "/v1/limits");
      JsonPath malformed = answered(log, "/v1/sample-layouts");
      assertThat(good.get("'trace.id'"), equalTo(TRACE));
      assertThat(good.get("'span.id'"), matchesPattern("[0-9a-f]{16}"));
      assertThat(good.get("'span.id'"), not(equalTo("00f067aa0ba902b7")));
      assertThat(good.get("http.request.method"), equalTo("GET"));
      assertThat(good.get("service.name"), equalTo("lodeswing"));
      assertThat(good.prettify(), not(containsString("private")));
      assertThat(malformed.get("'trace.id'"), matchesPattern("[0-9a-f]{32}"));
      assertThat(malformed.get("'trace.id'"), not(equalTo(TRACE)));
      // The process object would close the log as well.
      assertTrue(service.toHandle().destroy());
      assertThat(messages(log), hasItem("Graceful shutdown complete"));
    } finally {
      service.destroyForcibly().waitFor();
    }
  }

  private static Process start(Path folder) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "--add-modules=jdk.incubator.vector",
            "-cp",
            System.getProperty("java.class.path"),
            LodeswingApplication.class.getName(),
            "--server.port=0",
            "--server.address=127.0.0.1",
            "--spring.profiles.active=json-logs",
            "--spring.main.banner-mode=off",
            "--lodeswing.warm-up=false",
            "--lodeswing.data-folder=" + folder)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private static void ask(int port, String path, String traceParent) {
    RestAssured.given()
        .baseUri("http://127.0.0.1")
        .port(port)
        .header("traceparent", traceParent)
        .get(path);
  }

  private static int port(BufferedReader log) throws IOException {
    while (true) {
      Matcher started = PORT.matcher(next(log).getString("message"));
      if (started.find()) {
        return Integer.parseInt(started.group(1));
      }
    }
  }

  private static JsonPath answered(BufferedReader log, String path) throws IOException {
    while (true) {
      JsonPath line = next(log);
      if (path.equals(line.get("url.path"))) {
        return line;
      }
    }
  }

  private static List<String> messages(BufferedReader log) throws IOException {
    var messages = new ArrayList<String>();
    for (String line = log.readLine(); line != null; line = log.readLine()) {
      messages.add(JsonPath.from(line).getString("message"));
    }
    return messages;
  }

  private static JsonPath next(BufferedReader log) throws IOException {
    String line = log.readLine();
    if (line == null) {
      throw new IOException("the log has ended");
    }
    return JsonPath.from(line);
  }
}
