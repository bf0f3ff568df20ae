package lodeswing.load;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.ToLongFunction;
import lodeswing.load.Connection.Response;

/**
 * The packaged service under steady work of all kinds for a while: live heap, open files and
 * threads must stay level once its memories are full.
 */
public final class SoakRun {

  private static final int READINGS = 12;
  private static final double MOST_HEAP_GROWTH = 1.1;
  private static final long MOST_MORE_FILES = 10;
  private static final long MOST_MORE_THREADS = 5;
  private static final long PAUSE_MS = 1000;
  private static final int CLIENTS = 3;

  private final LoadedService service;
  private final String layoutId;
  private final long end;

  private SoakRun(LoadedService service, String layoutId, long end) {
    this.service = service;
    this.layoutId = layoutId;
    this.end = end;
  }

  /**
   * Runs.
   *
   * @param arguments the packaged service, and for how many minutes
   */
  public static void main(String[] arguments) throws Exception {
    double minutes = Double.parseDouble(arguments[1]);
    boolean level;
    // Small memories are full soon, so that a leak is not taken for their filling.
    try (var service =
        LoadedService.start(
            Path.of(arguments[0]),
            "lodeswing.limits.memory-bytes=4000000",
            "lodeswing.limits.reply-bytes=2000000",
            "lodeswing.limits.stored-bytes=20000000")) {
      String layoutId;
      try (Connection connection = service.connect()) {
        layoutId =
            connection.ask(Connection.get("/v1/sample-layouts/paper-triangle")).member("layoutId");
      }
      long end = System.nanoTime() + (long) (minutes * 60e9);
      level = new SoakRun(service, layoutId, end).run(minutes);
    }
    System.exit(level ? 0 : 1);
  }

  private boolean run(double minutes) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(CLIENTS);
    List<Future<Integer>> clients = new ArrayList<>();
    List<Reading> readings = new ArrayList<>();
    try {
      for (int i = 0; i < CLIENTS; i++) {
        var random = new SplittableRandom(i);
        clients.add(threads.submit(() -> work(random)));
      }
      for (int i = 1; i <= READINGS; i++) {
        TimeUnit.MILLISECONDS.sleep((long) (minutes * 60_000 / READINGS));
        readings.add(read());
        for (Future<Integer> client : clients) {
          if (client.isDone()) {
            client.get();
          }
        }
      }
      int answers = 0;
      for (Future<Integer> client : clients) {
        answers += client.get();
      }
      System.out.println(answers + " answers, none wrong");
    } finally {
      threads.shutdownNow();
    }
    boolean heap = level("live heap", readings, Reading::heap, MOST_HEAP_GROWTH, 0);
    boolean files = level("open files", readings, Reading::files, 1, MOST_MORE_FILES);
    boolean tasks = level("threads", readings, Reading::threads, 1, MOST_MORE_THREADS);
    return heap && files && tasks;
  }

  /**
   * A look at the process.
   *
   * @param heap bytes of live objects after a full collection
   * @param files that it holds open
   * @param threads that it has
   */
  private record Reading(long heap, long files, long threads) {}

  private Reading read() throws IOException, InterruptedException {
    var reading = new Reading(service.liveBytes(), service.openFiles(), service.threads());
    System.out.printf(
        Locale.ROOT,
        "live heap %.1f MB, open files %d, threads %d%n",
        reading.heap() / 1e6,
        reading.files(),
        reading.threads());
    return reading;
  }

  /** The last third against the one before; the first is for filling what is to be filled. */
  private static boolean level(
      String name,
      List<Reading> readings,
      ToLongFunction<Reading> measure,
      double factor,
      long more) {
    int third = READINGS / 3;
    double middle =
        readings.subList(third, 2 * third).stream().mapToLong(measure).average().orElseThrow();
    double last =
        readings.subList(2 * third, READINGS).stream().mapToLong(measure).average().orElseThrow();
    boolean level = last <= factor * middle + more;
    System.out.printf(
        Locale.ROOT,
        "%s: %.0f in the middle third, %.0f in the last: %s%n",
        name,
        middle,
        last,
        level ? "level" : "GROWS");
    return level;
  }

  /** Asks for all kinds of work by turns; an answer that none of them allows ends the run. */
  private int work(SplittableRandom random) throws IOException, InterruptedException {
    int answers = 0;
    try (Connection connection = service.connect()) {
      for (int i = 0; System.nanoTime() < end; i++) {
        answers += ask(connection, random, i % 8);
        TimeUnit.MILLISECONDS.sleep(PAUSE_MS);
      }
    }
    return answers;
  }

  private int ask(Connection connection, SplittableRandom random, int kind) throws IOException {
    return switch (kind) {
      case 0 -> expect(connection, Connection.post("/v1/traces?wait=60", release(random)), 200);
      case 1 -> map(connection, random);
      case 2 -> expect(connection, Connection.post("/v1/traces", "{\"release\":"), 400);
      case 3 -> expect(connection, Connection.get("/v1/layouts/lay-nothing"), 404);
      case 4 -> job(connection, random);
      case 5 -> expect(connection, Connection.get("/v1/sample-layouts"), 200);
      case 6 -> expect(connection, Connection.get("/v1/limits"), 200);
      default ->
          expect(connection, Connection.get("/v1/layouts/" + layoutId + "/rest-points"), 200);
    };
  }

  /** A window and a small picture of it, twice: computed and kept. */
  private int map(Connection connection, SplittableRandom random) throws IOException {
    Response posted = answered(connection, Connection.post("/v1/basins?wait=60", window(random)));
    byte[] picture =
        Connection.get(
            "/v1/basins/" + posted.member("basinId") + "/preview?width=48&height=48&wait=60");
    return 1 + expect(connection, picture, 200) + expect(connection, picture, 200);
  }

  /** A job that is asked for, looked at and cancelled. */
  private int job(Connection connection, SplittableRandom random) throws IOException {
    Response posted = connection.ask(Connection.post("/v1/basins?wait=0", window(random)));
    if (posted.status() == 200 || posted.status() == 201) {
      return 1;
    }
    if (posted.status() != 202) {
      throw new IOException("a job is answered " + posted.status() + " " + posted.text());
    }
    String job = posted.fields().get("Location");
    expect(connection, Connection.get(job), 200);
    Response cancelled = connection.ask(Connection.delete(job));
    if (cancelled.status() >= 500) {
      throw new IOException("cancelling is answered " + cancelled.status());
    }
    return 3;
  }

  private static int expect(Connection connection, byte[] request, int status) throws IOException {
    Response answer = connection.ask(request);
    if (answer.status() != status && !(status == 200 && answer.status() == 201)) {
      throw new IOException("answered " + answer.status() + " " + answer.text());
    }
    return 1;
  }

  private static Response answered(Connection connection, byte[] request) throws IOException {
    Response answer = connection.ask(request);
    if (answer.status() != 200 && answer.status() != 201) {
      throw new IOException("answered " + answer.status() + " " + answer.text());
    }
    return answer;
  }

  private String release(SplittableRandom random) {
    return String.format(
        Locale.ROOT,
        "{\"layoutId\":\"%s\",\"release\":{\"x\":%.6f,\"y\":%.6f}}",
        layoutId,
        random.nextDouble(-1, 1),
        random.nextDouble(-1, 1));
  }

  private String window(SplittableRandom random) {
    return String.format(
        Locale.ROOT,
        "{\"layoutId\":\"%s\",\"window\":{\"x\":%.6f,\"y\":%.6f,\"halfWidth\":%.6f}}",
        layoutId,
        random.nextDouble(-1, 1),
        random.nextDouble(-1, 1),
        random.nextDouble(0.1, 1));
  }
}
