package lodeswing.kills;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Queue;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lodeswing.StoppableDatabase;
import lodeswing.kills.Replica.Surroundings;

/**
 * Time in which two replicas of one processor each compute all tiles of a map down to a zoom,
 * against the time of one of them; rounds take turns. Argument: the packaged jar.
 */
public final class PyramidCheck {

  private static final int DEEPEST_ZOOM = 3;
  private static final int ROUNDS = 5;

  /** Of one replica's time. */
  private static final double MOST = 0.6;

  /** Not its own mirror image, so that every tile is computed. */
  private static final String MAP =
      "{\"layout\":{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,"
          + "\"magnets\":[{\"x\":0.577,\"y\":0,\"strength\":1,\"label\":\"Tide\"},"
          + "{\"x\":-0.2885,\"y\":0.53,\"strength\":1,\"label\":\"Dune\"},"
          + "{\"x\":-0.2885,\"y\":-0.5,\"strength\":1,\"label\":\"Reef\"}]},"
          + "\"window\":{\"halfWidth\":";

  private final ObjectMapper json = new ObjectMapper();
  private int windows;

  private PyramidCheck() {}

  /** Ends with 1 where two replicas take more than 0.6 of one's time. */
  public static void main(String[] arguments) throws Exception {
    Path work = Files.createTempDirectory("pyramid-");
    Path jar = Path.of(arguments[0]).toAbsolutePath();
    double ratio;
    try (var database = new StoppableDatabase(work.resolve("database"))) {
      var alone = new Surroundings(List.of(), List.of("-XX:ActiveProcessorCount=1"));
      try (var one = new Replica("one", jar, work.resolve("one"), database.settings(), alone);
          var two = new Replica("two", jar, work.resolve("two"), database.settings(), alone)) {
        one.awaitReady();
        two.awaitReady();
        ratio = new PyramidCheck().ratio(one, two);
      }
    }
    System.out.printf(Locale.ROOT, "two replicas take %.2f of one's time (0.6 at most)%n", ratio);
    System.exit(ratio <= MOST ? 0 : 1);
  }

  private double ratio(Replica one, Replica two) throws Exception {
    // Until the compilers of both have seen the lanes at work.
    for (int i = 0; i < 3; i++) {
      seconds(List.of(one, two));
    }
    double[] ratios = new double[ROUNDS];
    for (int round = 0; round < ROUNDS; round++) {
      double alone = seconds(List.of(round % 2 == 0 ? one : two));
      double both = seconds(List.of(one, two));
      ratios[round] = both / alone;
      System.out.printf(Locale.ROOT, "one %.2f s, two %.2f s%n", alone, both);
    }
    Arrays.sort(ratios);
    return ratios[ROUNDS / 2];
  }

  /** Of all tiles of a map that nobody has asked for; each replica is asked for two at a time. */
  private double seconds(List<Replica> replicas) throws Exception {
    String map = MAP + (1.7 + 0.001 * windows++) + "}}";
    HttpResponse<byte[]> posted = replicas.get(0).post("/v1/basins?wait=60", map);
    String basin = "/v1/basins/" + json.readTree(posted.body()).get("basinId").asText();
    Queue<String> tiles = new ConcurrentLinkedQueue<>();
    for (int z = 0; z <= DEEPEST_ZOOM; z++) {
      for (int x = 0; x < 1 << z; x++) {
        for (int y = 0; y < 1 << z; y++) {
          tiles.add(basin + "/tiles/" + z + "/" + x + "/" + y + "?wait=60");
        }
      }
    }
    ExecutorService clients = Executors.newCachedThreadPool();
    try {
      long begun = System.nanoTime();
      List<Callable<Integer>> work = new ArrayList<>();
      for (Replica replica : replicas) {
        work.add(() -> fetch(replica, tiles));
        work.add(() -> fetch(replica, tiles));
      }
      for (Future<Integer> done : clients.invokeAll(work)) {
        done.get();
      }
      return (System.nanoTime() - begun) / 1e9;
    } finally {
      clients.shutdown();
    }
  }

  private static int fetch(Replica replica, Queue<String> tiles) throws IOException {
    int count = 0;
    for (String tile = tiles.poll(); tile != null; tile = tiles.poll()) {
      int status = replica.get(tile).statusCode();
      if (status != 200) {
        throw new IOException(tile + " is answered " + status);
      }
      count++;
    }
    return count;
  }
}
