package lodeswing.kills;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lodeswing.kills.Replica.Surroundings;

/**
 * A service whose files may grow no further, as on a full disk, and then may again: it must refuse
 * with a clear problem, tell that it is not ready, and go on by itself with all that it had stored.
 *
 * <p>The limit of a process for the size of its files stands for the disk: a write beyond it fails
 * as one to a full disk does, and it can be lifted from outside. Argument: the packaged jar.
 */
public final class FullDiskCheck {

  private static final int LIMIT_KIB = 6000;
  private static final int MOST_TRACES = 60;
  private static final int WITHIN_S = 60;

  private final ObjectMapper json = new ObjectMapper();
  private final Replica replica;

  private FullDiskCheck(Replica replica) {
    this.replica = replica;
  }

  /** Ends with 1 where something does not hold. */
  public static void main(String[] arguments) throws Exception {
    Path work = Files.createTempDirectory("full-disk-");
    List<String> limited =
        List.of("bash", "-c", "ulimit -S -f " + LIMIT_KIB + "; exec \"$@\"", "-");
    try (var replica =
        new Replica(
            "full",
            Path.of(arguments[0]).toAbsolutePath(),
            work,
            List.of(),
            new Surroundings(limited, List.of("-XX:-UsePerfData")))) {
      replica.awaitReady();
      new FullDiskCheck(replica).run();
    }
    System.out.println("full disk: all hold");
  }

  private void run() throws IOException, InterruptedException {
    JsonNode layout = read(replica.get("/v1/sample-layouts/paper-triangle"));
    Map<String, byte[]> kept = fill(layout.get("layoutId").asText());
    await("is not ready", () -> !replica.ready());
    lift();
    await("is ready again", replica::ready);
    for (var trace : kept.entrySet()) {
      HttpResponse<byte[]> again = replica.get(trace.getKey());
      demand(
          again.statusCode() == 200 && Arrays.equals(again.body(), trace.getValue()),
          trace.getKey() + " as it was answered before");
    }
    demand(kept.size() > 3, kept.size() + " traces from before are the same");
    int status = trace(layout.get("layoutId").asText(), 0.95).statusCode();
    demand(status == 200, "a new trace is answered " + status);
  }

  /** Asks for traces until one is refused. */
  private Map<String, byte[]> fill(String layoutId) throws IOException {
    var kept = new LinkedHashMap<String, byte[]>();
    for (int i = 0; i < MOST_TRACES; i++) {
      HttpResponse<byte[]> answer = trace(layoutId, 0.1 + 0.01 * i);
      if (answer.statusCode() != 200) {
        JsonNode problem = read(answer);
        demand(
            answer.statusCode() == 503
                && problem.path("code").asText().equals("store-away")
                && answer.headers().firstValue("Retry-After").isPresent(),
            "trace " + i + " is refused: " + problem.path("detail").asText());
        return kept;
      }
      kept.put("/v1/traces/" + read(answer).get("traceId").asText(), answer.body());
    }
    throw new IllegalStateException("the files never became too large");
  }

  private HttpResponse<byte[]> trace(String layoutId, double x) throws IOException {
    String body =
        String.format(
            Locale.ROOT, "{\"layoutId\":\"%s\",\"release\":{\"x\":%.2f,\"y\":0.5}}", layoutId, x);
    return replica.post("/v1/traces?wait=60", body);
  }

  private void lift() throws IOException, InterruptedException {
    int status =
        new ProcessBuilder("prlimit", "--pid", Long.toString(replica.pid()), "--fsize=unlimited")
            .inheritIO()
            .start()
            .waitFor();
    demand(status == 0, "there is room again");
  }

  /** Something that comes to hold. */
  @FunctionalInterface
  private interface State {
    boolean holds();
  }

  private static void await(String what, State state) throws InterruptedException {
    long end = System.nanoTime() + WITHIN_S * 1_000_000_000L;
    while (!state.holds() && System.nanoTime() < end) {
      Thread.sleep(50);
    }
    demand(state.holds(), what);
  }

  private JsonNode read(HttpResponse<byte[]> answer) throws IOException {
    return json.readTree(answer.body());
  }

  private static void demand(boolean holds, String what) {
    System.out.println((holds ? "holds: " : "DOES NOT HOLD: ") + what);
    if (!holds) {
      System.exit(1);
    }
  }
}
