package lodeswing.web.jobs;

import static org.hamcrest.MatcherAssert.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.Response;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import lodeswing.RunningService;
import lodeswing.store.ResultTable;
import lodeswing.web.probe.ProbeController;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

class ComputedAnswersOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared("probe=true");

  @Test
  void secondRequestIsAnsweredFromMemory() {
    Response first = SERVICE.given().get("/probe/work?name=once");
    Response second = SERVICE.given().get("/probe/work?name=once&cb=9");
    assertThat(first.header("Cache-Status"), equalTo("lodeswing; fwd=miss; stored"));
    assertThat(second.header("Cache-Status"), equalTo("lodeswing; hit; detail=memory"));
    assertThat(second.asString(), equalTo(first.asString()));
    assertThat(second.header("ETag"), equalTo(first.header("ETag")));
  }

  @Test
  void longWorkIsAnsweredWithAJobThatLeadsToTheResult() {
    ProbeController probe = SERVICE.bean(ProbeController.class);
    probe.shut("long");
    Response pending =
        SERVICE.given().header("Prefer", "respond-async").get("/probe/work?name=long");
    pending
        .then()
        .statusCode(202)
        .header("Preference-Applied", "respond-async")
        .header("Retry-After", matchesPattern("[1-9][0-9]?|1[01][0-9]|120"))
        .header("Cache-Control", "no-store")
        .body("resultUrl", equalTo("/probe/work?name=long"));
    String job = pending.header("Location");
    assertThat(job, matchesPattern("/v1/jobs/job-[a-z2-7]{26}"));
    SERVICE.given().get(job).then().statusCode(200).body("kind", equalTo("probe"));

    SERVICE
        .given()
        .get("/probe/work?name=long&wait=0&format=text")
        .then()
        .statusCode(202)
        .contentType("text/plain;charset=UTF-8")
        .body(matchesPattern("PENDING [0-9]+"));
    SERVICE
        .given()
        .get("/probe/work?name=long&wait=0&errors=inline")
        .then()
        .statusCode(200)
        .body(matchesPattern("PENDING [0-9]+"));

    probe.open("long");
    SERVICE
        .given()
        .header("Prefer", "wait=30")
        .get("/probe/work?name=long")
        .then()
        .statusCode(200)
        .header("Preference-Applied", "wait=30")
        .body("name", equalTo("long"));
    SERVICE
        .given()
        .get(job)
        .then()
        .statusCode(200)
        .body("state", equalTo("done"))
        .body("progress", equalTo(1.0f))
        .body("problem", nullValue());
  }

  @Test
  void failedWorkIsAProblemAndIsTriedAgain() {
    ProbeController probe = SERVICE.bean(ProbeController.class);
    probe.shut("failing");
    String job =
        SERVICE.given().get("/probe/work?name=failing&wait=0").then().extract().header("Location");
    probe.open("failing");
    for (int i = 0; i < 2; i++) {
      SERVICE
          .given()
          .get("/probe/work?name=failing")
          .then()
          .statusCode(422)
          .body("code", equalTo("too-costly"));
    }
    SERVICE
        .given()
        .get(job)
        .then()
        .body("state", equalTo("failed"))
        .body("problem.code", equalTo("too-costly"));
  }

  @Test
  void unknownJobIsNotFound() {
    SERVICE.given().get("/v1/jobs/job-none").then().statusCode(404);
  }

  @Test
  void resultOutlivesTheServiceAndADamagedOneIsComputedAgain(@TempDir Path folder) {
    try (RunningService own = RunningService.onFolder(folder, "probe=true").start()) {
      Response before = own.given().get("/probe/work?name=kept");
      own.restart();
      Response after = own.given().get("/probe/work?name=kept");
      assertThat(after.header("Cache-Status"), equalTo("lodeswing; hit; detail=store"));
      assertThat(after.asString(), equalTo(before.asString()));
      assertThat(after.header("ETag"), equalTo(before.header("ETag")));
      assertThat(own.bean(ProbeController.class).computed(), equalTo(0));

      own.bean(JdbcClient.class)
          .sql("UPDATE stored_result SET body = :body WHERE engine_revision > 0")
          .param("body", new byte[] {'{', '}'})
          .update();
      own.restart();
      Response mended = own.given().get("/probe/work?name=kept");
      assertThat(mended.header("Cache-Status"), equalTo("lodeswing; fwd=miss; stored"));
      assertThat(mended.asString(), equalTo(before.asString()));
      assertThat(own.bean(ResultTable.class).damaged().count(), not(equalTo(0L)));
      assertThat(
          own.bean(ResultTable.class).find(idIn(own)).orElseThrow().bytes(),
          equalTo(before.asByteArray()));
    }
  }

  private static String idIn(RunningService service) {
    return service
        .bean(JdbcClient.class)
        .sql("SELECT id FROM stored_result WHERE engine_revision > 0")
        .query(String.class)
        .single();
  }

  @Test
  void limitsAreStatedWithUnitAndMeaning() {
    SERVICE
        .given()
        .get("/v1/limits")
        .then()
        .statusCode(200)
        .header("ETag", matchesPattern("\".+\""))
        .body("limits.find { it.name == 'magnets' }.value", equalTo(200))
        .body("limits.find { it.name == 'bodyBytes' }.unit", equalTo("byte"))
        .body("limits.find { it.name == 'durationS' }.meaning", containsString("trace"));
  }

  @Test
  void onlyHealthIsShownOfTheInside() {
    SERVICE
        .given()
        .get("/actuator/health/readiness")
        .then()
        .statusCode(200)
        .body("status", equalTo("UP"));
    SERVICE.given().get("/actuator/health/liveness").then().statusCode(200);
    SERVICE.given().get("/actuator/env").then().statusCode(404);
  }

  @Test
  void jobThatARequestWaitsForGoesOn() throws Exception {
    ProbeController probe = SERVICE.bean(ProbeController.class);
    probe.shut("waited-for");
    String url = "/probe/work?name=waited-for";
    String job = SERVICE.given().get(url + "&wait=0").header("Location");
    var answer = new CompletableFuture<Response>();
    new Thread(() -> answer.complete(SERVICE.given().get(url + "&wait=60"))).start();

    int status = 200;
    for (int tries = 0; status != 409 && tries < 1_000; tries++) {
      // Before the other request has come this ends the job, which is then made anew.
      status = SERVICE.given().delete(job).statusCode();
    }
    assertThat(status, equalTo(409));
    SERVICE.given().delete(job).then().body("code", equalTo("job-needed"));
    probe.open("waited-for");
    assertThat(answer.get().statusCode(), equalTo(200));
  }

  @Test
  void cancelledJobHasNoResult() {
    String url = "/probe/work?name=endless";
    String job = SERVICE.given().get(url + "&wait=0").header("Location");

    SERVICE
        .given()
        .delete(job)
        .then()
        .statusCode(200)
        .header("Retry-After", nullValue())
        .body("state", equalTo("cancelled"))
        .body("problem.code", equalTo("job-cancelled"));
    SERVICE.given().get(job).then().body("state", equalTo("cancelled"));
  }

  @Test
  void jobThatHasEndedStaysAsItIs() {
    ProbeController probe = SERVICE.bean(ProbeController.class);
    probe.shut("ended");
    String job = SERVICE.given().get("/probe/work?name=ended&wait=0").header("Location");
    probe.open("ended");
    SERVICE.given().get("/probe/work?name=ended&wait=30").then().statusCode(200);

    SERVICE.given().delete(job).then().statusCode(200).body("state", equalTo("done"));
    SERVICE.given().delete("/v1/jobs/job-none").then().statusCode(404);
  }
}
