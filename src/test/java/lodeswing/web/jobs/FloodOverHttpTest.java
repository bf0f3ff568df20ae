package lodeswing.web.jobs;

import static org.hamcrest.MatcherAssert.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.startsWith;

import lodeswing.RunningService;
import lodeswing.web.probe.ProbeController;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** One client that asks for more than can be done is told when to come back. */
class FloodOverHttpTest {

  @RegisterExtension
  static final RunningService SERVICE =
      RunningService.shared(
          "probe=true", "lodeswing.computing-threads=1", "lodeswing.limits.waiting-computations=3");

  private static final int ASKED = 12;

  @Test
  void floodIsRefusedWithATimeAndWhatIsKeptIsStillAnswered() throws InterruptedException {
    ProbeController probe = SERVICE.bean(ProbeController.class);
    SERVICE.given().get("/probe/work?name=kept").then().statusCode(200);
    probe.shut("flood-0");
    String first =
        SERVICE
            .given()
            .get("/probe/work?name=flood-0&wait=0")
            .then()
            .statusCode(202)
            .extract()
            .header("Location");
    JobFixture.awaitState(SERVICE, first, "running");
    int refused = 0;
    for (int i = 1; i <= ASKED; i++) {
      var answer = SERVICE.given().get("/probe/work?wait=0&name=flood-" + i);
      if (answer.statusCode() != 202) {
        answer
            .then()
            .statusCode(503)
            .header("Retry-After", matchesPattern("[1-9][0-9]?|1[01][0-9]|120"))
            .header("Cache-Control", "no-store")
            .body("code", equalTo("service-busy"));
        refused++;
      }
    }
    assertThat(refused, equalTo(ASKED - 3));
    SERVICE.given().get("/probe/work?name=kept").then().statusCode(200);
    SERVICE
        .given()
        .get("/probe/work?wait=0&name=flood-99&errors=inline")
        .then()
        .statusCode(200)
        .body(startsWith("ERROR service-busy: "));

    probe.open("flood-0");
    SERVICE.given().get("/probe/work?wait=60&name=flood-0").then().statusCode(200);
    SERVICE.given().get("/probe/work?wait=60&name=flood-" + ASKED).then().statusCode(200);
    assertThat(probe.computed(), greaterThan(1));
  }
}
