package lodeswing.web.twins;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.config.JsonPathConfig;
import io.restassured.path.json.config.JsonPathConfig.NumberReturnType;
import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** Twins over HTTP, as a course site and a spreadsheet ask for them. */
@Timeout(300)
class TwinsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final JsonPathConfig DOUBLES = new JsonPathConfig(NumberReturnType.DOUBLE);

  /** Three magnets, a time unit of its own. */
  private static final String TRIANGLE =
      "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,\"magnets\":["
          + "{\"x\":0.57735,\"y\":0,\"label\":\"Tide\"},"
          + "{\"x\":-0.28868,\"y\":0.5,\"label\":\"Dune\"},"
          + "{\"x\":-0.28868,\"y\":-0.5,\"label\":\"Reef\"}]}";

  private static final String BARE =
      "{\"model\":\"textbook\",\"omega0\":1,\"drag\":0.02,\"height\":0.3,\"magnets\":[]}";

  private static Response get(String path) {
    return SERVICE.given().get(path);
  }

  private static Response post(String body) {
    return SERVICE.given().contentType("application/json").body(body).post("/v1/twins?wait=60");
  }

  private static Response twins(String layout, String release, String shift, String more) {
    return post(
        "{\"layout\":" + layout + ",\"release\":" + release + ",\"shift\":" + shift + more + "}");
  }

  private static String layout(String name) {
    return "/v1/layouts/" + get("/v1/sample-layouts/" + name + "?format=text").asString();
  }

  private static double number(Response answer, String path) {
    return answer.jsonPath(DOUBLES).getDouble(path);
  }

  private static List<Double> column(Response answer, String path) {
    return answer.jsonPath(DOUBLES).getList(path, Double.class);
  }

  private static Object part(Response answer, String path) {
    return answer.path(path);
  }

  @Test
  void aSmallPairIsFollowedUntilItParts() {
    Response answer =
        twins(TRIANGLE, "{\"x\":1.25,\"y\":0.5}", "{\"x\":0.001}", ",\"durationS\":40");
    answer
        .then()
        .statusCode(200)
        .body("twinsId", startsWith("twn-"))
        .body("units.time", equalTo("1"))
        .body("outcomes", hasSize(2))
        .body("outcomes.kind", hasItem("rest-point"))
        .body("paths", hasSize(2))
        .body("shift.vx", equalTo(0))
        .body("growthRate.method", containsString("Least squares"))
        .body("growthRate.source", containsString("Newey"))
        .body("finiteTimeExponent.source", containsString("Benettin"))
        .body("sentence", startsWith("Let go 0.001 apart"));
    double rate = number(answer, "growthRatePerS");
    assertEquals(rate, number(answer, "growthRate.perS"), 0);
    assertTrue(number(answer, "growthRate.lowPerS") < rate);
    assertTrue(number(answer, "growthRate.highPerS") > rate);
    assertEquals(0.001, column(answer, "separation.distance").get(0), 1e-9);
    String self = answer.path("links.self");
    assertEquals(answer.asString(), get(self).asString());
    for (String link : List.of("csv", "paths", "separation", "layout")) {
      assertEquals(200, get(answer.path("links." + link)).statusCode(), link);
    }
  }

  /** The pair's paths are the two traces' own, and partedAtS lies where their distance says. */
  @Test
  void partingAgreesWithTwoTraces() {
    Response answer =
        get(layout("three-stations") + "/twins?x=-70&y=30&shiftX=1&durationS=4&wait=60");
    answer.then().statusCode(200);
    Response first = get(answer.path("links.firstTrace") + "&wait=60");
    Response second = get(answer.path("links.secondTrace") + "&wait=60");
    List<Double> t = column(first, "samples.t");
    List<Double> x1 = column(first, "samples.x");
    List<Double> y1 = column(first, "samples.y");
    List<Double> x2 = column(second, "samples.x");
    List<Double> y2 = column(second, "samples.y");
    double spacing = number(answer, "partedDistance");
    double parted = number(answer, "partedAtS");
    List<Double> distance = column(answer, "separation.distance");
    boolean before = true;
    for (int i = 0; i < distance.size(); i++) {
      double apart = Math.hypot(x2.get(i) - x1.get(i), y2.get(i) - y1.get(i));
      assertEquals(apart, distance.get(i), 3e-6 + 1e-6 * apart, "at " + t.get(i));
      if (before && apart >= spacing) {
        before = false;
        assertTrue(parted <= t.get(i) && parted > t.get(i - 1), parted + " and " + t.get(i));
      }
    }
    assertFalse(before);
    assertEquals(
        List.of(first.path("outcome.name"), second.path("outcome.name")),
        answer.path("outcomes.name"));
    assertEquals(x1, column(answer, "paths[0].samples.x"));
    assertEquals(y2, column(answer, "paths[1].samples.y"));
  }

  /** A separation is shown only as far as both paths are trusted. */
  @Test
  void nothingIsToldBeyondTrust() {
    Response answer =
        get(layout("three-stations") + "/twins?x=-70&y=30&shiftX=0.001&durationS=30&wait=60");
    double trusted =
        Math.min(
            number(answer, "paths[0].trustedUntilS"), number(answer, "paths[1].trustedUntilS"));
    assertEquals(trusted, number(answer, "shownUntilS"), 1e-9);
    List<Double> t = column(answer, "separation.t");
    assertTrue(t.get(t.size() - 1) <= trusted && t.get(t.size() - 1) > trusted - 0.02);
    answer
        .then()
        .body("shownEnd", equalTo("trust"))
        .body("notes", hasItem(containsString("not to be trusted")));
    assertTrue(number(answer, "growthRatePerS") > 0);
  }

  /** r'' = -r - 0.02 r': every difference dies as e^(-0.01 t). */
  @Test
  void withoutMagnetsTheRateIsHalfTheDrag() {
    Response answer = twins(BARE, "{\"x\":1,\"y\":0}", "{\"y\":0.01}", ",\"durationS\":300");
    answer
        .then()
        .statusCode(200)
        .body("alike", equalTo(true))
        .body("growthRate.endedBy", equalTo("duration"))
        .body("partedAtS", nullValue())
        .body("notReached", hasItem("partedAtS"))
        .body("sentence", containsString("halves every t = 69.3"));
    assertEquals(-0.01, number(answer, "growthRatePerS"), 1e-5);
    assertEquals(-0.01, number(answer, "finiteTimeExponent.perS"), 1e-4);
  }

  @Test
  void exchangedReleasesAnswerMirrored() {
    Response one =
        twins(TRIANGLE, "{\"x\":1.25,\"y\":0.5}", "{\"x\":0.03125}", ",\"durationS\":40");
    Response other =
        twins(TRIANGLE, "{\"x\":1.28125,\"y\":0.5}", "{\"x\":-0.03125}", ",\"durationS\":40");
    for (String same :
        List.of("growthRate", "separation", "shownUntilS", "alike", "sure", "partedDistance")) {
      assertEquals(part(one, same), part(other, same), same);
    }
    assertEquals(part(one, "partedAtS"), part(other, "partedAtS"));
    assertEquals(part(one, "outcomes[0]"), part(other, "outcomes[1]"));
    assertEquals(part(one, "outcomes[1]"), part(other, "outcomes[0]"));
    assertEquals(
        part(one, "finiteTimeExponent.perS"), part(other, "finiteTimeExponent.secondPerS"));
    assertEquals(part(one, "paths[0]"), part(other, "paths[1]"));
  }

  @Test
  void spreadsheetsReadCellsAndTables() {
    String address =
        layout("paper-triangle") + "/twins?x=1.25&y=0.5&shiftX=0.001&durationS=20&wait=60";
    Response document = get(address);
    String rate = get(address + "&value=growthRatePerS").asString();
    assertEquals(number(document, "growthRatePerS"), Double.parseDouble(rate), 0);
    assertEquals(
        rate.replace('.', ','), get(address + "&value=growthRatePerS&decimal=comma").asString());
    String near = address.replace("durationS=20", "durationS=0.5");
    assertEquals("not reached", get(near + "&value=partedAtS").asString());
    assertEquals(
        document.path("outcomes[1].name"), get(address + "&value=secondOutcome").asString());
    assertTrue(get(address + "&format=text").asString().startsWith("Let go 0.001 apart"));
    String[] lines = get(address + "&format=csv").asString().split("\r?\n");
    assertEquals("t,x1,y1,x2,y2,distance,phase_distance", lines[0]);
    assertEquals(column(document, "separation.t").size() + 1, lines.length);
    assertEquals("0,1.25,0.5,1.251,0.5,0.001,0.001", lines[1]);
  }

  @Test
  void aPushMayBeTheShift() {
    Response answer =
        twins(TRIANGLE, "{\"x\":1.25,\"y\":0.5}", "{\"vy\":0.01}", ",\"durationS\":20");
    answer.then().statusCode(200).body("sentence", containsString("pushes that differ by 0.01"));
    assertEquals(0, column(answer, "separation.distance").get(0), 0);
    // over the rate of small swings, 0.5
    assertEquals(0.02, column(answer, "separation.phaseDistance").get(0), 1e-9);
  }

  @Test
  void picturesShowBothPathsAndTheSeparation() throws Exception {
    String address =
        layout("paper-triangle") + "/twins?x=1.25&y=0.5&shiftX=0.001&durationS=40&wait=60";
    for (String picture : List.of("paths", "separation")) {
      Element svg =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(
                  new ByteArrayInputStream(
                      get(address + "&format=svg&picture=" + picture).asByteArray()))
              .getDocumentElement();
      assertEquals("svg", svg.getTagName());
      String text = svg.getElementsByTagName("desc").item(0).getTextContent();
      assertTrue(text.startsWith("Let go 0.001 apart"), text);
      byte[] png = get(address + "&format=png&pixels=640&picture=" + picture).asByteArray();
      assertEquals(640, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
    }
    String svg = get(address + "&format=svg&picture=separation").asString();
    assertTrue(svg.contains("fitted growth") && svg.contains("spacing"), svg);
  }

  @Test
  void faultsAreTold() {
    twins(TRIANGLE, "{\"x\":1,\"y\":0}", "{}", "")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/shift"))
        .body("errors[0].detail", containsString("moves the release by nothing"));
    twins(TRIANGLE, "{\"x\":1,\"y\":0}", "{\"x\":1e-12}", "")
        .then()
        .statusCode(400)
        .body("errors[0].detail", containsString("at least 1e-8"));
    twins(TRIANGLE, "{\"x\":1,\"y\":0}", "{\"z\":1}", "")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/shift/z"));
    post("{\"layout\":" + TRIANGLE + ",\"release\":{\"x\":1,\"y\":0}}")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/shift"));
    twins(TRIANGLE, "{\"x\":1,\"y\":0}", "{\"x\":0.1}", ",\"durationS\":1e5")
        .then()
        .statusCode(422)
        .body("errors[0].pointer", equalTo("/durationS"));
    get(layout("three-stations") + "/twins?x=10&y=10")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("?shiftX"));
    get(layout("three-stations") + "/twins?x=10&y=10&shiftX=5000")
        .then()
        .statusCode(422)
        .body("type", containsString("impossible-release"))
        .body("errors[0].pointer", equalTo("?shiftX"));
    get("/v1/twins/twn-nothing").then().statusCode(404).body("detail", containsString("/v1/twins"));
  }

  @Test
  void aDryRunTellsTheCostAndStoresNothing() {
    String body =
        "{\"layout\":" + TRIANGLE + ",\"release\":{\"x\":0.75,\"y\":0},\"shift\":{\"y\":0.002}}";
    Response dry =
        SERVICE.given().contentType("application/json").body(body).post("/v1/twins?dry-run=true");
    dry.then().statusCode(200).body("dryRun", equalTo(true)).body("samples", equalTo(2001));
    assertTrue(number(dry, "costReleases") > 1_000);
    get("/v1/twins/" + dry.path("twinsId")).then().statusCode(404);
  }

  @Test
  void layoutsLeadHere() {
    get(layout("three-stations"))
        .then()
        .body("links.twins", equalTo(layout("three-stations") + "/twins"));
  }

  /** Both bobs meet the magnet in their way; the pair's separation ends with the first of them. */
  @Test
  void aTouchEndsThePair() {
    String rig =
        "{\"model\":\"bench\","
            + "\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":400,\"bobMassG\":20},"
            + "\"bobMagnet\":{\"shape\":\"sphere\",\"diameterMm\":10,\"grade\":\"N35\","
            + "\"poleDown\":\"north\"},\"gapMm\":10,"
            + "\"magnets\":[{\"shape\":\"sphere\",\"grade\":\"N35\",\"diameterMm\":12,"
            + "\"x\":60,\"y\":0,\"bottomMm\":13,\"poleUp\":\"north\"}],"
            + "\"damping\":{\"swingsToHalf\":30}}";
    Response answer = twins(rig, "{\"x\":-280,\"y\":0}", "{\"x\":2}", ",\"durationS\":5");
    answer
        .then()
        .statusCode(200)
        .body("shownEnd", equalTo("model"))
        .body("outcomes[0].kind", equalTo("magnet-contact"))
        .body("outcomes[1].kind", equalTo("magnet-contact"))
        .body("alike", equalTo(true))
        .body("sentence", containsString("both bobs end alike: the bob touches a magnet"))
        .body("notes", hasItem(containsString("the model of one of them ends")));
    double ended =
        Math.min(
            number(answer, "paths[0].followedUntilS"), number(answer, "paths[1].followedUntilS"));
    // to a step of the grid on which the pair is compared
    assertEquals(ended, number(answer, "shownUntilS"), 5.0 / 2_000);
  }

  @Test
  void aJobIsTakenUpAfterARestart(@TempDir Path folder) {
    try (RunningService own = RunningService.onFolder(folder).start()) {
      String id = own.given().get("/v1/sample-layouts/three-stations?format=text").asString();
      Response pending =
          own.given()
              .contentType("application/json")
              .body(
                  "{\"layoutId\":\""
                      + id
                      + "\",\"release\":{\"x\":-70,\"y\":30},\"shift\":{\"x\":0.5},\"durationS\":10}")
              .post("/v1/twins?wait=0");
      pending.then().statusCode(202);
      String result = pending.path("resultUrl");
      String job = "/v1/jobs/" + pending.path("jobId");
      own.restart();
      // nobody asks for the result: the job alone must come to it, by its recipe
      while (!List.of("done", "failed").contains(own.given().get(job).path("state").toString())) {
        LockSupport.parkNanos(200_000_000);
      }
      own.given().get(job).then().body("state", equalTo("done"));
      Response answer = own.given().get(result);
      answer.then().header("Cache-Status", containsString("hit"));
      answer.then().statusCode(200).body("links.self", equalTo(result));
    }
  }
}
