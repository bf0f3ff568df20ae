package lodeswing.web.jobs;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

class DurableJobsOverHttpTest {

  private static final int SOME = 300;
  private static final int BIG = 1024;
  private static final long SOME_LOOKS_OF_THE_QUEUE_MS = 3500;

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  @Test
  void jobGoesOnAfterARestartWithoutBeingAskedAgain(@TempDir Path folder) throws Exception {
    byte[] undisturbed;
    String map = JobFixture.map(SERVICE, 1.21);
    undisturbed =
        SERVICE
            .given()
            .get(map + "/preview?width=" + SOME + "&height=" + SOME + "&wait=60")
            .then()
            .statusCode(200)
            .extract()
            .asByteArray();

    var own = RunningService.onFolder(folder).start();
    try {
      assertEquals(map, JobFixture.map(own, 1.21));
      Response asked = JobFixture.ask(own, map, SOME);
      String job = asked.header("Location");
      own.restart();
      assertEquals(submitted(asked), submitted(own.given().get(job)));
      JobFixture.awaitState(own, job, "done");
      assertEquals(submitted(asked), submitted(own.given().get(job)));
      Response picture = own.given().get(map + "/preview?width=" + SOME + "&height=" + SOME);
      picture.then().statusCode(200).header("Cache-Status", containsString("hit"));
      assertArrayEquals(undisturbed, picture.asByteArray());
    } finally {
      own.close();
    }
  }

  private static Instant submitted(Response job) {
    return Instant.parse(job.path("submittedAt"));
  }

  /** The queue, which has taken the job and looks after it, must not count as one who asked. */
  @Test
  void jobThatTheQueueHasBegunEndsWithItsOnlyAsking() throws Exception {
    String layout =
        SERVICE.given().get("/v1/sample-layouts/kitchen-drawer").then().extract().path("layoutId");
    Response asked =
        SERVICE
            .given()
            .get("/v1/layouts/" + layout + "/basin/summary?side=512&halfWidth=45.3&wait=0");
    assertEquals(202, asked.statusCode(), asked.asString());
    String job = asked.header("Location");
    JobFixture.awaitState(SERVICE, job, "running");
    Thread.sleep(SOME_LOOKS_OF_THE_QUEUE_MS);

    SERVICE
        .given()
        .delete(asked.<String>path("cancelUrl"))
        .then()
        .statusCode(200)
        .body("state", equalTo("cancelled"));
    Thread.sleep(SOME_LOOKS_OF_THE_QUEUE_MS);
    assertEquals("cancelled", JobFixture.state(SERVICE, job));
  }

  @Test
  void jobOfSeveralEndsWhenTheLastHasWithdrawn() throws Exception {
    String map = JobFixture.map(SERVICE, 1.22);
    Response one = JobFixture.ask(SERVICE, map, BIG);
    Response other = JobFixture.ask(SERVICE, map, BIG);
    String job = one.header("Location");
    assertEquals(job, other.header("Location"));
    assertNotEquals((String) one.path("cancelUrl"), other.path("cancelUrl"));

    SERVICE.given().delete(job).then().statusCode(409).body("code", equalTo("job-needed"));
    SERVICE
        .given()
        .delete(job + "?ask=ask-none")
        .then()
        .statusCode(404)
        .body("detail", containsString("no such asking"));
    SERVICE.given().delete(one.<String>path("cancelUrl")).then().statusCode(200);
    SERVICE.given().delete(one.<String>path("cancelUrl")).then().statusCode(404);
    assertNotEquals("cancelled", JobFixture.state(SERVICE, job));
    SERVICE
        .given()
        .delete(other.<String>path("cancelUrl"))
        .then()
        .statusCode(200)
        .body("state", equalTo("cancelled"))
        .body("problem.code", equalTo("job-cancelled"));
    assertEquals("cancelled", JobFixture.state(SERVICE, job));
  }

  @Test
  void askingAgainAfterCancellingBeginsAnew() throws Exception {
    String map = JobFixture.map(SERVICE, 1.23);
    String job = JobFixture.ask(SERVICE, map, SOME).header("Location");
    SERVICE.given().delete(job).then().statusCode(200);

    assertEquals(job, JobFixture.ask(SERVICE, map, SOME).header("Location"));
    JobFixture.awaitState(SERVICE, job, "done");
  }

  @Test
  void eventsTellTheJobToItsEndAndGoOnWhereTheyBroke() throws Exception {
    String map = JobFixture.map(SERVICE, 1.24);
    String job = JobFixture.ask(SERVICE, map, BIG).header("Location");

    List<String> told = events(job, "");
    List<String> ids = told.stream().filter(line -> line.startsWith("id:")).toList();
    assertTrue(ids.size() >= 2, told.toString());
    assertEquals(ids.size(), ids.stream().distinct().count());
    assertEquals("id:done-1000", ids.get(ids.size() - 1));
    assertTrue(told.contains("event:done"), told.toString());
    assertTrue(
        told.stream().anyMatch(line -> line.startsWith("data:{") && line.contains("\"resultUrl\"")),
        told.toString());

    assertFalse(events(job, "running-0100").isEmpty());
    SERVICE
        .given()
        .header("Last-Event-ID", "done-1000")
        .accept("text/event-stream")
        .get(job + "/events")
        .then()
        .statusCode(204);
    SERVICE.given().get("/v1/jobs/job-none/events").then().statusCode(404);
  }

  private static List<String> events(String job, String seen)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(SERVICE.uri() + job + "/events"))
            .header("Accept", "text/event-stream");
    if (!seen.isEmpty()) {
      request.header("Last-Event-ID", seen);
    }
    var answer = HttpClient.newHttpClient().send(request.build(), BodyHandlers.ofLines());
    assertEquals(200, answer.statusCode());
    assertTrue(
        answer.headers().firstValue("Content-Type").orElse("").startsWith("text/event-stream"));
    return answer.body().toList();
  }
}
