package lodeswing.web.odds;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.nio.file.Path;
import java.time.Duration;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Odds with parts that are not exact, over HTTP. */
class PartsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  /** Two magnets: cheap to make ready, and two places to rest. */
  private static final String BENCH =
      "{\"model\":\"bench\",\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":420,\"bobMassG\":45},"
          + "\"bobMagnet\":{\"shape\":\"disc\",\"diameterMm\":15,\"heightMm\":5,\"grade\":\"N35\","
          + "\"poleDown\":\"north\"},\"gapMm\":28,\"magnets\":["
          + "{\"x\":40,\"y\":0,\"shape\":\"disc\",\"diameterMm\":25,\"heightMm\":5,"
          + "\"grade\":\"Y30\",\"poleUp\":\"south\",\"label\":\"Tide\"},"
          + "{\"x\":-40,\"y\":0,\"shape\":\"disc\",\"diameterMm\":25,\"heightMm\":5,"
          + "\"grade\":\"Y30\",\"poleUp\":\"south\",\"label\":\"Dune\"}],"
          + "\"damping\":{\"swingsToHalf\":3}";

  private static Response post(String layoutMore, String members, String query) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body(body(layoutMore, members))
        .post("/v1/odds?wait=60" + query);
  }

  private static String body(String layoutMore, String members) {
    return "{\"layout\":"
        + BENCH
        + layoutMore
        + "},\"release\":{\"x\":20,\"y\":45},\"width\":0.1,\"rigs\":4,"
        + "\"spread\":{\"kind\":\"gaussian\",\"deviation\":2}"
        + members
        + "}";
  }

  /** Waits for the answer, whatever it takes. */
  private static Response done(Response first) throws InterruptedException {
    Response answer = first;
    String url = first.header("Location");
    for (int i = 0; answer.statusCode() == 202 && i < 60; i++) {
      Thread.sleep(Duration.ofSeconds(1).toMillis());
      String result = SERVICE.given().get(url).path("resultUrl");
      answer = SERVICE.given().get(result + "?wait=60");
    }
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer;
  }

  private static double number(Response answer, String path) {
    return answer.<Number>path(path).doubleValue();
  }

  @Test
  void looseBuilderIsSeenInTheOddsAndATightOneIsNot() throws InterruptedException {
    Response loose =
        done(post("", ",\"tolerances\":{\"placeMm\":6,\"remanencePercent\":10,\"gapMm\":1}", ""));
    Response tight = done(post("", ",\"tolerances\":{\"placeMm\":0.001}", ""));

    loose
        .then()
        .body("parts.rigs", equalTo(4))
        .body("parts.tolerances.placeMm", equalTo(6))
        .body("parts.releasesPerRig", equalTo(1_024));
    assertTrue(number(tight, "parts.shareOfParts.value") < 0.02, tight.asString());
    tight.then().body("parts.robust", equalTo(true)).body("parts.source", equalTo("hand"));
    assertTrue(
        number(loose, "parts.shareOfParts.value") > number(tight, "parts.shareOfParts.value"),
        loose.asString());
    double within = number(loose, "parts.agreeSameRig");
    double across = number(loose, "parts.agreeOtherRig");
    assertEquals((within - across) / (1 - across), number(loose, "parts.shareOfParts.value"), 1e-6);
    double mean = number(loose, "outcomes[0].parts.mean");
    assertTrue(number(loose, "outcomes[0].parts.lowest") <= mean);
    assertTrue(number(loose, "outcomes[0].parts.highest") >= mean);
  }

  @Test
  void tolerancesThatTheLayoutCarriesServe() throws InterruptedException {
    String own = ",\"tolerances\":{\"lengthMm\":2,\"gapMm\":0.5}";
    Response answer = done(post(own, ",\"parts\":true", ""));
    answer.then().body("parts.tolerances.lengthMm", equalTo(2));

    String layout =
        SERVICE
            .given()
            .contentType("application/json")
            .body(BENCH + own + "}")
            .post("/v1/layouts")
            .path("layoutId");
    String cell =
        "/v1/layouts/" + layout + "/odds?x=20&y=45&spreadMm=2&width=0.1&rigs=4&parts=true&wait=60";
    String share = SERVICE.given().get(cell + "&value=shareOfParts").asString();
    assertEquals(number(answer, "parts.shareOfParts.value"), Double.parseDouble(share), 1e-5);
    SERVICE.given().get(cell + "&format=csv").then().body(containsString("rigs_deviation"));
    // The same layout without them, and one of them by address.
    SERVICE.given().get(cell.replace("lay-", "lay-x") + "&value=robust").then().statusCode(404);
    SERVICE
        .given()
        .get(cell + "&tolerances.lengthMm=1&value=source")
        .then()
        .statusCode(200)
        .body(startsWith("h"));
  }

  /** Another process makes the same bytes from the job's recipe. */
  @Test
  void jobGoesOnAfterARestartAndGivesTheSameBytes(@TempDir Path folder) throws Exception {
    String tolerances = ",\"tolerances\":{\"gapMm\":0.7}";
    Response undisturbed = done(post("", tolerances, ""));
    var own = RunningService.onFolder(folder).start();
    try {
      Response asked =
          own.given()
              .contentType("application/json")
              .header("Prefer", "respond-async")
              .body(body("", tolerances))
              .post("/v1/odds");
      assertEquals(202, asked.statusCode(), asked.asString());
      String job = asked.header("Location");
      own.restart();
      String state = "";
      for (int i = 0; i < 120 && !state.equals("done"); i++) {
        Thread.sleep(500);
        state = own.given().get(job).path("state");
      }
      assertEquals("done", state);
      Response answer = own.given().get(undisturbed.<String>path("links.self"));
      answer.then().statusCode(200).header("Cache-Status", containsString("hit"));
      assertArrayEquals(undisturbed.asByteArray(), answer.asByteArray());
    } finally {
      own.close();
    }
  }

  @Test
  void partsThatCannotBeVariedAreRefused() {
    post("", ",\"parts\":true", "")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/parts"))
        .body("errors[0].detail", containsString("it has none"));
    post("", ",\"tolerances\":{\"gapMm\":28,\"remanencePercent\":100}", "")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/tolerances/gapMm"))
        .body("errors[1].pointer", equalTo("/tolerances/remanencePercent"));
    post("", ",\"tolerances\":{\"gapMm\":1},\"seed\":-1", "").then().statusCode(400);
    SERVICE
        .given()
        .contentType("application/json")
        .body(
            "{\"layout\":"
                + BENCH
                + "},\"release\":{\"x\":20,\"y\":45},\"rigs\":65,\"tolerances\":{\"gapMm\":1},"
                + "\"spread\":{\"kind\":\"gaussian\",\"deviation\":2}}")
        .post("/v1/odds")
        .then()
        .statusCode(422)
        .body("errors[0].pointer", equalTo("/rigs"))
        .body("errors[0].detail", containsString("64"));
  }

  @Test
  void everyRigCostsItsOwnMakingReady() {
    double one = number(post("", "", "&dry-run=true"), "costReleases");
    double five =
        number(post("", ",\"tolerances\":{\"gapMm\":1}", "&dry-run=true"), "costReleases");
    assertTrue(five > 3 * one, one + " and " + five);
  }
}
