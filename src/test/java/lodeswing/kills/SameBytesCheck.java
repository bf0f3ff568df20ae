package lodeswing.kills;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lodeswing.StoppableDatabase;
import lodeswing.kills.Replica.Surroundings;

/**
 * Whether every analysis has the same bytes from a process of one thread, from one of two, and from
 * two replicas at one database that are asked at the same time. Argument: the packaged jar.
 */
public final class SameBytesCheck {

  private static final String MAGNET =
      "\"shape\":\"disc\",\"diameterMm\":25,\"heightMm\":5,\"grade\":\"Y30\",\"poleUp\":\"south\"";
  private static final String BENCH =
      "{\"model\":\"bench\",\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":420,\"bobMassG\":45},"
          + "\"bobMagnet\":{\"shape\":\"disc\",\"diameterMm\":15,\"heightMm\":5,\"grade\":\"N35\","
          + "\"poleDown\":\"north\"},\"gapMm\":25,\"magnets\":["
          + "{\"x\":45,\"y\":0,"
          + MAGNET
          + ",\"label\":\"Tide\"},{\"x\":-22.5,\"y\":38.97,"
          + MAGNET
          + ",\"label\":\"Dune\"},{\"x\":-22.5,\"y\":-38.97,"
          + MAGNET
          + ",\"label\":\"Reef\"}],\"damping\":{\"swingsToHalf\":25}}";
  private static final String HAND =
      ",\"release\":{\"x\":60,\"y\":0},\"spread\":{\"kind\":\"gaussian\",\"deviation\":3}";

  /** A post of each analysis, small enough for a minute. */
  private static final Map<String, String> POSTS = posts();

  /** What is asked of the layout, by address. */
  private static final List<String> GETS =
      List.of(
          "/occupancy?releases=256&durationS=5&wait=60",
          "/occupancy?releases=256&durationS=5&format=svg&wait=60",
          "/free-swing?x=60&y=20&within=20&wait=60",
          "/trace/glow?x=-70&y=30&wait=60",
          "/trace/animation?x=-70&y=30&format=gif&wait=60",
          "/rest-points?wait=60");

  private SameBytesCheck() {}

  private static Map<String, String> posts() {
    Map<String, String> posts = new LinkedHashMap<>();
    String layout = "{\"layout\":" + BENCH;
    posts.put("/v1/odds?wait=60", layout + HAND + "}");
    posts.put(
        "/v1/odds?wait=60&format=csv",
        layout + HAND + ",\"tolerances\":{\"gapMm\":0.5,\"placeMm\":0.5},\"rigs\":8}");
    posts.put(
        "/v1/twins?wait=60",
        layout + ",\"release\":{\"x\":-70,\"y\":30},\"shift\":{\"x\":1},\"thin\":0.1}");
    posts.put(
        "/v1/tunings?wait=60",
        layout + HAND + ",\"move\":{\"places\":{\"within\":5}},\"candidates\":40,\"width\":0.1}");
    posts.put(
        "/v1/sweeps?wait=60",
        layout
            + ",\"release\":{\"x\":60,\"y\":0},\"vary\":[{\"quantity\":\"gapMm\",\"from\":25,"
            + "\"to\":30,\"steps\":3},{\"quantity\":\"x\",\"from\":55,\"to\":65,\"steps\":5}],"
            + "\"measures\":[{\"measure\":\"outcome\"},{\"measure\":\"barrier\"}]}");
    return posts;
  }

  /** Ends with 1 where any two differ. */
  public static void main(String[] arguments) throws Exception {
    Path work = Files.createTempDirectory("same-");
    Path jar = Path.of(arguments[0]).toAbsolutePath();
    Map<String, byte[]> alone = ofOne(work.resolve("alone"), jar, 1);
    boolean same = compare("two threads", alone, ofOne(work.resolve("both"), jar, 2));
    try (var database = new StoppableDatabase(work.resolve("database"));
        var one = new Replica("one", jar, work.resolve("one"), database.settings());
        var two = new Replica("two", jar, work.resolve("two"), database.settings())) {
      one.awaitReady();
      two.awaitReady();
      List<Map<String, byte[]>> answers = atOnce(List.of(one, two));
      same &= compare("replica one of two", alone, answers.get(0));
      same &= compare("replica two of two", alone, answers.get(1));
    }
    System.out.println("same bytes: " + (same ? "all hold" : "some differ"));
    System.exit(same ? 0 : 1);
  }

  private static Map<String, byte[]> ofOne(Path folder, Path jar, int processors) throws Exception {
    var surroundings =
        new Surroundings(List.of(), List.of("-XX:ActiveProcessorCount=" + processors));
    try (var replica = new Replica("alone", jar, folder, List.of(), surroundings)) {
      replica.awaitReady();
      return answers(replica);
    }
  }

  private static List<Map<String, byte[]>> atOnce(List<Replica> replicas) throws Exception {
    ExecutorService clients = Executors.newFixedThreadPool(replicas.size());
    try {
      List<Callable<Map<String, byte[]>>> asked = new ArrayList<>();
      replicas.forEach(replica -> asked.add(() -> answers(replica)));
      List<Map<String, byte[]>> all = new ArrayList<>();
      for (Future<Map<String, byte[]>> done : clients.invokeAll(asked)) {
        all.add(done.get());
      }
      return all;
    } finally {
      clients.shutdown();
    }
  }

  private static Map<String, byte[]> answers(Replica replica) throws Exception {
    Map<String, byte[]> answers = new LinkedHashMap<>();
    for (Map.Entry<String, String> post : POSTS.entrySet()) {
      answers.put(
          post.getKey(), ready(() -> replica.post(post.getKey(), post.getValue()), post.getKey()));
    }
    String stored = new String(replica.post("/v1/layouts", BENCH).body(), StandardCharsets.UTF_8);
    String layout = stored.replaceFirst("(?s).*?\"layoutId\":\"([^\"]*)\".*", "$1");
    for (String get : GETS) {
      answers.put(get, ready(() -> replica.get("/v1/layouts/" + layout + get), get));
    }
    return answers;
  }

  /** The body of an answer that is asked for until it is there. */
  private static byte[] ready(Callable<HttpResponse<byte[]>> request, String name)
      throws Exception {
    for (int i = 0; i < 10; i++) {
      HttpResponse<byte[]> answer = request.call();
      if (answer.statusCode() == 200) {
        return answer.body();
      }
      if (answer.statusCode() != 202) {
        throw new IOException(name + ": " + new String(answer.body(), StandardCharsets.UTF_8));
      }
    }
    throw new IOException(name + " is not there after ten minutes");
  }

  private static boolean compare(
      String what, Map<String, byte[]> expected, Map<String, byte[]> found) {
    boolean same = true;
    for (Map.Entry<String, byte[]> one : expected.entrySet()) {
      if (!Arrays.equals(one.getValue(), found.get(one.getKey()))) {
        System.out.println(what + ": " + one.getKey() + " differs");
        same = false;
      }
    }
    System.out.println(what + ": " + found.size() + " answers compared");
    return same;
  }
}
