package lodeswing.kills;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.StoppableDatabase;

/**
 * Jobs while processes are killed, paused and cut off from their database: none may be lost, none
 * stored twice, and all results must be those of an undisturbed run, to the bit.
 *
 * <p>Arguments: the packaged jar and what happens, {@code kill}, {@code pause}, {@code database} or
 * {@code embedded}.
 */
public final class KillCheck {

  private static final int JOBS = 50;
  private static final int KILLS = 20;
  private static final int LEAST_SIDE = 250;
  private static final String MAP =
      "{\"layout\":{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,"
          + "\"magnets\":[{\"x\":0.577,\"y\":0,\"strength\":1,\"label\":\"Tide\"},"
          + "{\"x\":-0.2885,\"y\":0.5,\"strength\":1,\"label\":\"Dune\"},"
          + "{\"x\":-0.2885,\"y\":-0.5,\"strength\":1,\"label\":\"Reef\"}]},"
          + "\"window\":{\"halfWidth\":1.75}}";

  private final Path jar;
  private final Path work;
  private final String happening;
  private final ObjectMapper json = new ObjectMapper();

  private KillCheck(Path jar, Path work, String happening) {
    this.jar = jar;
    this.work = work;
    this.happening = happening;
  }

  /** Runs one happening and ends with 1 where anything is lost or differs. */
  public static void main(String[] arguments) throws Exception {
    Path work = Files.createTempDirectory("kills-");
    boolean holds =
        new KillCheck(Path.of(arguments[0]).toAbsolutePath(), work, arguments[1]).holds();
    System.out.println(arguments[1] + (holds ? ": all hold" : ": FAILED, see " + work));
    System.exit(holds ? 0 : 1);
  }

  private boolean holds() throws Exception {
    Map<String, byte[]> undisturbed = undisturbed();
    boolean embedded = happening.equals("embedded");
    try (var database = embedded ? null : new StoppableDatabase(work.resolve("database"))) {
      List<String> settings = embedded ? List.of() : database.settings();
      var replicas = new ArrayList<Replica>();
      replicas.add(new Replica("one", jar, work.resolve("one"), settings));
      if (!embedded) {
        replicas.add(new Replica("two", jar, work.resolve("two"), settings));
      }
      try {
        for (Replica replica : replicas) {
          replica.awaitReady();
        }
        map(replicas.get(0));
        Map<String, String> jobs = disturb(replicas, List.copyOf(undisturbed.keySet()), database);
        boolean same = compare(replicas, jobs, undisturbed);
        for (Replica replica : replicas) {
          replica.kill();
        }
        String url = embedded ? fileUrl() : database.url();
        String user = embedded ? "lodeswing" : "postgres";
        boolean once = storedOnce(url, user);
        return same && once;
      } finally {
        for (Replica replica : replicas) {
          replica.close();
        }
      }
    }
  }

  private String fileUrl() {
    return "jdbc:h2:file:" + work.resolve("one/data/lodeswing") + ";FILE_LOCK=FS";
  }

  private Map<String, byte[]> undisturbed() throws Exception {
    var pictures = new LinkedHashMap<String, byte[]>();
    try (var calm = new Replica("calm", jar, work.resolve("calm"), List.of())) {
      calm.awaitReady();
      String map = map(calm);
      for (int side = LEAST_SIDE; side < LEAST_SIDE + JOBS; side++) {
        String path = map + "/preview?width=" + side + "&height=" + side;
        HttpResponse<byte[]> answer = calm.get(path + "&wait=60");
        if (answer.statusCode() != 200) {
          throw new IllegalStateException(path + " answers " + answer.statusCode());
        }
        pictures.put(path, answer.body());
      }
    }
    return pictures;
  }

  private String map(Replica replica) throws IOException {
    HttpResponse<byte[]> answer = replica.post("/v1/basins?wait=60", MAP);
    return "/v1/basins/" + json.readTree(answer.body()).get("basinId").asText();
  }

  /** The job of each picture. */
  private static Map<String, String> ask(Replica replica, Iterable<String> paths)
      throws IOException {
    var jobs = new LinkedHashMap<String, String>();
    for (String path : paths) {
      HttpResponse<byte[]> answer = replica.get(path + "&wait=0");
      if (answer.statusCode() != 202) {
        throw new IllegalStateException(
            path + ": " + new String(answer.body(), StandardCharsets.UTF_8));
      }
      jobs.put(path, answer.headers().firstValue("Location").orElseThrow());
    }
    return jobs;
  }

  private Map<String, String> disturb(
      List<Replica> replicas, List<String> paths, StoppableDatabase database) throws Exception {
    boolean killed = happening.equals("kill") || happening.equals("embedded");
    Map<String, String> jobs = killed ? new LinkedHashMap<>() : ask(replicas.get(0), paths);
    switch (happening) {
      case "kill", "embedded" -> {
        for (int kill = 0; kill < KILLS; kill++) {
          Replica victim = replicas.get(kill % replicas.size());
          victim.awaitReady();
          // Some more each time, so that none of the kills finds nothing to spoil.
          jobs.putAll(ask(victim, paths.subList(kill * JOBS / KILLS, (kill + 1) * JOBS / KILLS)));
          Thread.sleep(1000);
          System.out.println(
              "kill " + (kill + 1) + ": " + victim.name() + ", open " + open(replicas, jobs));
          victim.kill();
          victim.start();
        }
      }
      case "pause" -> {
        Thread.sleep(3000);
        System.out.println("paused for 60 s, open " + open(replicas, jobs));
        replicas.get(0).signal("STOP");
        Thread.sleep(60_000);
        System.out.println("goes on, open " + open(List.of(replicas.get(1)), jobs));
        replicas.get(0).signal("CONT");
      }
      case "database" -> {
        for (int stop = 0; stop < 3; stop++) {
          Thread.sleep(3000);
          System.out.println("database stopped, open " + open(replicas, jobs));
          database.stop();
          Thread.sleep(8000);
          if (replicas.stream().anyMatch(Replica::ready)) {
            throw new IllegalStateException("a replica says that it is ready without a database");
          }
          database.start();
          for (Replica replica : replicas) {
            replica.awaitReady();
          }
        }
      }
      default -> throw new IllegalArgumentException(happening);
    }
    return jobs;
  }

  /** How many jobs have not ended; -1 where nobody can tell at the moment. */
  private long open(List<Replica> replicas, Map<String, String> jobs) {
    for (Replica replica : replicas) {
      try {
        long open = 0;
        for (String job : jobs.values()) {
          open += List.of("waiting", "running").contains(state(replica, job)) ? 1 : 0;
        }
        return open;
      } catch (IOException e) {
        // The next one may know.
      }
    }
    return -1;
  }

  private String state(Replica replica, String job) throws IOException {
    HttpResponse<byte[]> answer = replica.get(job);
    if (answer.statusCode() != 200) {
      return "status " + answer.statusCode();
    }
    return json.readTree(answer.body()).get("state").asText();
  }

  private boolean compare(
      List<Replica> replicas, Map<String, String> jobs, Map<String, byte[]> undisturbed)
      throws Exception {
    boolean holds = true;
    long end = System.nanoTime() + 240_000_000_000L;
    Replica asked = replicas.get(replicas.size() - 1);
    asked.awaitReady();
    for (var job : jobs.entrySet()) {
      String state = state(asked, job.getValue());
      while (!state.equals("done") && System.nanoTime() < end) {
        Thread.sleep(100);
        state = state(asked, job.getValue());
      }
      byte[] stored = asked.get(job.getKey() + "&wait=0").body();
      boolean same = Arrays.equals(stored, undisturbed.get(job.getKey()));
      if (!state.equals("done") || !same) {
        System.out.println(job + " is " + state + (same ? "" : " and differs"));
        holds = false;
      }
    }
    return holds;
  }

  private static boolean storedOnce(String url, String user) throws SQLException {
    String password = user.equals("postgres") ? "postgres" : "";
    try (Connection connection = DriverManager.getConnection(url, user, password);
        ResultSet row =
            connection
                .createStatement()
                .executeQuery(
                    "SELECT COUNT(*), COUNT(DISTINCT request) FROM stored_result WHERE kind ="
                        + " 'basin-preview'")) {
      row.next();
      System.out.println("results: " + row.getInt(1) + ", requests: " + row.getInt(2));
      return row.getInt(1) == JOBS && row.getInt(2) == JOBS;
    }
  }
}
