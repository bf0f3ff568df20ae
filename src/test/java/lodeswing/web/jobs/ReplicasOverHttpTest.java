package lodeswing.web.jobs;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lodeswing.RunningService;
import lodeswing.StoppableDatabase;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two processes' worth of service at one PostgreSQL. */
class ReplicasOverHttpTest {

  private static final int SOME = 300;
  private static final int BIG = 1024;
  private static final int CLIENTS = 100;

  @TempDir static Path folder;

  private static final List<AutoCloseable> OPEN = new ArrayList<>();
  private static StoppableDatabase postgres;
  private static RunningService one;
  private static RunningService other;

  @BeforeAll
  static void start() throws IOException {
    postgres = new StoppableDatabase(folder.resolve("database"));
    OPEN.add(postgres);
    one = replica("one");
    other = replica("other");
  }

  private static RunningService replica(String name) {
    var settings = new ArrayList<>(postgres.settings());
    settings.add("lodeswing.computing-threads=1");
    var replica =
        RunningService.onFolder(folder.resolve(name), settings.toArray(String[]::new)).start();
    OPEN.add(0, replica);
    return replica;
  }

  @AfterAll
  static void stop() throws Exception {
    for (AutoCloseable open : OPEN) {
      open.close();
    }
  }

  @Test
  void hundredClientsOfTwoReplicasHaveAColdTileComputedOnce() throws Exception {
    String map = JobFixture.map(one, 1.31);
    var threads = Executors.newFixedThreadPool(CLIENTS);
    try {
      List<Callable<Response>> calls = new ArrayList<>();
      for (int i = 0; i < CLIENTS; i++) {
        RunningService asked = i % 2 == 0 ? one : other;
        calls.add(() -> asked.given().get(map + "/tiles/1/0/1?format=binary&wait=60"));
      }
      int computed = 0;
      byte[] first = new byte[0];
      for (Future<Response> answer : threads.invokeAll(calls)) {
        Response tile = answer.get();
        assertEquals(200, tile.statusCode(), tile.asString());
        computed += tile.header("Cache-Status").contains("fwd=miss; stored") ? 1 : 0;
        first = first.length == 0 ? tile.asByteArray() : first;
        assertArrayEquals(first, tile.asByteArray());
      }
      assertEquals(1, computed);
    } finally {
      threads.shutdownNow();
    }
  }

  @Test
  void jobOfAReplicaThatStopsIsTakenUpByTheOther() throws Exception {
    String map = JobFixture.map(one, 1.32);
    RunningService third = replica("third");
    String job = JobFixture.ask(third, map, SOME).header("Location");
    third.close();
    JobFixture.awaitState(one, job, "done");
    one.given().get(map + "/preview?width=" + SOME + "&height=" + SOME).then().statusCode(200);
  }

  @Test
  void jobsAskedOfOneReplicaAreSharedByBoth() throws Exception {
    String map = JobFixture.map(one, 1.33);
    List<String> jobs = new ArrayList<>();
    for (int side = 200; side < 212; side++) {
      jobs.add(JobFixture.ask(one, map, side).header("Location"));
    }
    for (String job : jobs) {
      JobFixture.awaitState(other, job, "done");
      JobFixture.awaitState(one, job, "done");
    }
  }

  @Test
  void cancellingAtTheOtherReplicaEndsTheWork() throws Exception {
    String map = JobFixture.map(one, 1.34);
    String job = JobFixture.ask(one, map, BIG).header("Location");
    JobFixture.awaitState(one, job, "running");
    other.given().delete(job).then().statusCode(200).body("state", equalTo("cancelled"));
    JobFixture.awaitState(one, job, "cancelled");
  }
}
