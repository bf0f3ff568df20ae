package lodeswing.load;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import lodeswing.load.Connection.Response;

/**
 * Three times the cold work that the service can do, together with reads of what is kept.
 *
 * <p>Cold work is a tile of a map that nobody has asked for: a window at a random place of a
 * textbook layout is posted and its outermost tile fetched.
 */
final class MixedLoad {

  private static final int CORES = Runtime.getRuntime().availableProcessors();
  private static final double SUSTAINED_S = 10;
  private static final double LOADED_S = 25;
  private static final double OVERLOAD = 3;
  private static final int READERS = 4;
  private static final long BETWEEN_READS_MS = 20;
  private static final int SENDERS = 8;

  private final LoadedService service;
  private final String layoutId;
  private final SplittableRandom random = new SplittableRandom(20_261);

  MixedLoad(LoadedService service, String layoutId) {
    this.service = service;
    this.layoutId = layoutId;
  }

  /** What a cold request can be answered with. */
  enum Cold {
    RESULT,
    ACCEPTED,
    CLIENT_REFUSED,
    SERVICE_REFUSED,
    WRONG
  }

  /**
   * What was measured.
   *
   * @param sustained cold tiles a second that come with nobody else asking
   * @param offered cold tiles a second that were asked for under load
   * @param answers to cold requests
   * @param firstWrong the first answer that is none of those allowed, or nothing
   * @param latencies of reads, in nanoseconds, sorted
   * @param failedReads reads that were not answered with 200
   */
  record Outcome(
      double sustained,
      double offered,
      Map<Cold, Integer> answers,
      String firstWrong,
      List<Long> latencies,
      int failedReads) {

    double latencyMs(double share) {
      return latencies.get((int) Math.min(latencies.size() - 1, share * latencies.size())) / 1e6;
    }
  }

  /**
   * Measures.
   *
   * @param kept path of a tile that is kept already
   */
  Outcome measure(String kept) throws Exception {
    double sustained = sustained();
    double offered = OVERLOAD * sustained;
    var answers = new EnumMap<Cold, AtomicInteger>(Cold.class);
    for (Cold cold : Cold.values()) {
      answers.put(cold, new AtomicInteger());
    }
    var wrong = new AtomicReference<>("");
    var failedReads = new AtomicInteger();
    long end = System.nanoTime() + (long) (LOADED_S * 1e9);
    BlockingQueue<String> work = new LinkedBlockingQueue<>();
    ExecutorService threads = Executors.newCachedThreadPool();
    try {
      List<Future<?>> senders = new ArrayList<>();
      for (int i = 0; i < SENDERS; i++) {
        senders.add(threads.submit(() -> send(work, end, answers, wrong)));
      }
      List<Future<List<Long>>> readers = new ArrayList<>();
      for (int i = 0; i < READERS; i++) {
        readers.add(threads.submit(() -> read(Connection.get(kept), end, failedReads)));
      }
      offer(work, offered, end);
      for (Future<?> sender : senders) {
        sender.get();
      }
      List<Long> latencies = new ArrayList<>();
      for (Future<List<Long>> reader : readers) {
        latencies.addAll(reader.get());
      }
      Map<Cold, Integer> counts = new EnumMap<>(Cold.class);
      answers.forEach((cold, count) -> counts.put(cold, count.get()));
      return new Outcome(
          sustained,
          offered,
          counts,
          wrong.get(),
          latencies.stream().sorted().toList(),
          failedReads.get());
    } finally {
      threads.shutdownNow();
    }
  }

  /** Puts windows into the queue at a steady pace, whatever becomes of them. */
  private void offer(BlockingQueue<String> work, double perSecond, long end)
      throws InterruptedException {
    long begun = System.nanoTime();
    for (int count = 0; System.nanoTime() < end; count++) {
      long due = begun + (long) (count / perSecond * 1e9);
      TimeUnit.NANOSECONDS.sleep(Math.max(0, Math.min(due, end) - System.nanoTime()));
      work.add(window());
    }
  }

  /** Cold tiles a second, as many asked for at once as there are cores. */
  private double sustained() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(CORES);
    try {
      long begun = System.nanoTime();
      long end = begun + (long) (SUSTAINED_S * 1e9);
      List<Callable<Integer>> clients = new ArrayList<>();
      for (int i = 0; i < CORES; i++) {
        clients.add(() -> computeUntil(end));
      }
      int count = 0;
      for (Future<Integer> client : threads.invokeAll(clients)) {
        count += client.get();
      }
      return Math.max(1, count) / ((System.nanoTime() - begun) / 1e9);
    } catch (ExecutionException e) {
      throw e.getCause() instanceof Exception cause ? cause : e;
    } finally {
      threads.shutdown();
    }
  }

  private int computeUntil(long end) throws IOException {
    int count = 0;
    try (Connection connection = service.connect()) {
      while (System.nanoTime() < end) {
        String tile = tileOf(connection, window(), 60);
        Response answer = connection.ask(Connection.get(tile + "?wait=60"));
        if (answer.status() != 200) {
          throw new IOException("alone, a cold tile was answered " + answer.text());
        }
        count++;
      }
    }
    return count;
  }

  /** Posts a window; the path of its outermost tile. */
  private static String tileOf(Connection connection, String window, int wait) throws IOException {
    Response posted = connection.ask(Connection.post("/v1/basins?wait=" + wait, window));
    if (posted.status() != 200 && posted.status() != 201) {
      throw new IOException("alone, a window was answered " + posted.text());
    }
    return "/v1/basins/" + posted.member("basinId") + "/tiles/0/0/0";
  }

  /** A window at a random place, of a random size, in the layout's own unit. */
  private synchronized String window() {
    return String.format(
        Locale.ROOT,
        "{\"layoutId\":\"%s\",\"window\":{\"x\":%.6f,\"y\":%.6f,\"halfWidth\":%.6f}}",
        layoutId,
        random.nextDouble(-1, 1),
        random.nextDouble(-1, 1),
        random.nextDouble(0.1, 1));
  }

  private Void send(
      BlockingQueue<String> work,
      long end,
      Map<Cold, AtomicInteger> answers,
      AtomicReference<String> wrong)
      throws IOException, InterruptedException {
    try (Connection connection = service.connect()) {
      while (System.nanoTime() < end) {
        String window = work.poll(100, TimeUnit.MILLISECONDS);
        if (window != null) {
          for (Response answer : cold(connection, window)) {
            Cold kind = kind(answer);
            answers.get(kind).incrementAndGet();
            if (kind == Cold.WRONG) {
              wrong.compareAndSet("", answer.status() + " " + answer.fields() + answer.text());
            }
          }
        }
      }
    }
    return null;
  }

  /** The answers to a window and, unless that was refused, to its tile; waits for neither. */
  private static List<Response> cold(Connection connection, String window) throws IOException {
    Response named = connection.ask(Connection.post("/v1/basins?dry-run=true", window));
    Response posted = connection.ask(Connection.post("/v1/basins?wait=0", window));
    if (named.status() != 200) {
      return List.of(named, posted);
    }
    String tile = "/v1/basins/" + named.member("basinId") + "/tiles/0/0/0?wait=0";
    return posted.status() < 300
        ? List.of(posted, connection.ask(Connection.get(tile)))
        : List.of(posted);
  }

  private static Cold kind(Response answer) {
    boolean says = answer.fields().getOrDefault("Retry-After", "").matches("[1-9][0-9]*");
    return switch (answer.status()) {
      case 200, 201 -> Cold.RESULT;
      case 202 -> Cold.ACCEPTED;
      case 429 -> says ? Cold.CLIENT_REFUSED : Cold.WRONG;
      case 503 -> says ? Cold.SERVICE_REFUSED : Cold.WRONG;
      default -> Cold.WRONG;
    };
  }

  private List<Long> read(byte[] request, long end, AtomicInteger failed)
      throws IOException, InterruptedException {
    List<Long> latencies = new ArrayList<>();
    try (Connection connection = service.connect()) {
      while (System.nanoTime() < end) {
        long begun = System.nanoTime();
        Response answer = connection.ask(request);
        latencies.add(System.nanoTime() - begun);
        if (answer.status() != 200) {
          failed.incrementAndGet();
        }
        TimeUnit.MILLISECONDS.sleep(BETWEEN_READS_MS);
      }
    }
    return latencies;
  }
}
