package lodeswing.web.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.time.Duration;
import java.time.Instant;
import lodeswing.RunningService;

/** Maps whose previews take a while, and what is asked of their jobs. */
final class JobFixture {

  private JobFixture() {}

  /** The address of a map nobody has asked for yet. */
  static String map(RunningService service, double halfWidth) {
    Response answer =
        service
            .given()
            .contentType("application/json")
            .body(
                "{\"layout\":{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,"
                    + "\"magnets\":[{\"x\":0.577,\"y\":0,\"strength\":1,\"label\":\"Tide\"},"
                    + "{\"x\":-0.2885,\"y\":0.5,\"strength\":1,\"label\":\"Dune\"},"
                    + "{\"x\":-0.2885,\"y\":-0.5,\"strength\":1,\"label\":\"Reef\"}]},"
                    + "\"window\":{\"halfWidth\":"
                    + halfWidth
                    + "}}")
            .post("/v1/basins?wait=60");
    assertTrue(answer.statusCode() < 300, answer.asString());
    return "/v1/basins/" + answer.path("basinId");
  }

  /** Asks for a big picture without waiting. */
  static Response ask(RunningService service, String map, int side) {
    Response pending =
        service.given().get(map + "/preview?width=" + side + "&height=" + side + "&wait=0");
    assertEquals(202, pending.statusCode(), pending.asString());
    return pending;
  }

  static String state(RunningService service, String job) {
    return service.given().get(job).then().statusCode(200).extract().path("state");
  }

  /** Waits until a job has the state, which it must have before a minute is over. */
  static void awaitState(RunningService service, String job, String state)
      throws InterruptedException {
    Instant end = Instant.now().plus(Duration.ofMinutes(1));
    while (!state(service, job).equals(state)) {
      assertTrue(Instant.now().isBefore(end), () -> "still " + state(service, job));
      Thread.sleep(20);
    }
  }
}
