package lodeswing.web.trace;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

/** Traces as clients see them, on the plainest rig that has a magnet. */
class TracesOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String RIG =
      "{\"model\":\"bench\",\"title\":\"T\","
          + "\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":400,\"bobMassG\":40},"
          + "\"bobMagnet\":{\"shape\":\"disc\",\"diameterMm\":15,\"heightMm\":5,\"grade\":\"N35\","
          + "\"poleDown\":\"north\"},\"gapMm\":28,"
          + "\"magnets\":[{\"x\":35,\"y\":0,\"shape\":\"disc\",\"diameterMm\":25,\"heightMm\":5,"
          + "\"grade\":\"Y30\",\"poleUp\":\"south\",\"label\":\"Grove\"}],"
          + "\"damping\":{\"swingsToHalf\":30}}";
  private static final String TEXTBOOK =
      "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,\"magnets\":["
          + "{\"x\":1,\"y\":0,\"strength\":1,\"label\":\"A\"},"
          + "{\"x\":-1,\"y\":0,\"strength\":1,\"label\":\"B\"}]}";

  private static String body(String layout, String rest) {
    return "{\"layout\":" + layout + "," + rest + "}";
  }

  private static final String SHORT = "\"release\":{\"x\":60,\"y\":20},\"durationS\":4";

  private static Response post(String body) {
    return given().contentType("application/json").body(body).post("/v1/traces");
  }

  private static String sample(String name) {
    return given().queryParam("format", "text").get("/v1/sample-layouts/" + name).asString();
  }

  @Test
  void documentHoldsThePathOnAUniformGrid() {
    Response answer = post(body(RIG, SHORT + ",\"sampleIntervalS\":0.05"));

    answer
        .then()
        .statusCode(200)
        .body("outcome.label", equalTo("Grove"))
        .body("outcome.restPointId", equalTo("rest-1"))
        .body("sure", equalTo(true))
        .body("sealedAtS", notNullValue())
        .body("settledAtS", notNullValue())
        .body("notReached", notNullValue())
        .body("units.length", equalTo("mm"))
        .body("links.path", notNullValue())
        .body("engineRevision", notNullValue());
    List<Number> t = answer.path("samples.t");
    assertEquals(81, t.size());
    for (int i = 0; i < t.size(); i++) {
      assertEquals(0.05 * i, t.get(i).doubleValue(), 1e-9);
    }
    for (String column : List.of("x", "y", "vx", "vy", "energyJ")) {
      assertEquals(81, answer.<List<?>>path("samples." + column).size(), column);
    }
    assertEquals(60, answer.<Number>path("samples.x[0]").doubleValue(), 1e-6);
    List<Number> when = answer.path("events.tS");
    for (int i = 1; i < when.size(); i++) {
      assertTrue(when.get(i).doubleValue() >= when.get(i - 1).doubleValue());
    }
    assertEquals("/v1/traces/" + answer.path("traceId"), answer.header("Location"));
  }

  @Test
  void storedLayoutAndWholeLayoutGiveTheSameTrace() {
    String layoutId =
        given().contentType("application/json").body(RIG).post("/v1/layouts").path("layoutId");

    Response whole = post(body(RIG, SHORT));
    Response stored = post("{\"layoutId\":\"" + layoutId + "\"," + SHORT + "}");

    assertArrayEquals(whole.asByteArray(), stored.asByteArray());
    given()
        .queryParam("x", 60)
        .queryParam("y", 20)
        .queryParam("durationS", 4)
        .get("/v1/layouts/" + layoutId + "/trace")
        .then()
        .statusCode(200)
        .header("Cache-Status", containsString("hit"))
        .body("traceId", equalTo(whole.path("traceId")));
  }

  @Test
  void tableBinaryAndPicturesComeFromTheSamePath() throws Exception {
    Response json = post(body(RIG, SHORT));
    String url = "/v1/traces/" + json.path("traceId");

    String csv = given().queryParam("format", "csv").get(url).asString();
    assertTrue(csv.startsWith("t_s,x_mm,y_mm,vx_mm_per_s,vy_mm_per_s,energy_j\r\n0,60,20,"), csv);
    assertEquals(json.<List<?>>path("samples.t").size() + 1, csv.split("\r\n").length);
    String comma =
        given().queryParam("format", "csv").queryParam("decimal", "comma").get(url).asString();
    assertTrue(comma.startsWith("t_s;x_mm;y_mm"), comma);
    Response cbor = given().queryParam("format", "cbor").get(url);
    cbor.then().statusCode(200).contentType("application/cbor");
    byte[] svg = given().queryParam("format", "svg").get(url + "/path").asByteArray();
    Document picture =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg));
    assertEquals(1, picture.getElementsByTagName("desc").getLength());
    assertEquals("T", picture.getElementsByTagName("title").item(0).getTextContent());
    byte[] png =
        given()
            .queryParam("format", "png")
            .queryParam("width", 640)
            .get(url + "/path")
            .asByteArray();
    assertEquals(640, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
  }

  @Test
  void thinnedPathStaysWithinItsTolerance() {
    Response all = post(body(RIG, SHORT + ",\"sampleIntervalS\":0.01"));
    Response thin = post(body(RIG, SHORT + ",\"sampleIntervalS\":0.01,\"thin\":0.5"));

    List<Number> t = all.path("samples.t");
    List<Number> kept = thin.path("samples.t");
    assertTrue(kept.size() < t.size() / 3, kept.size() + " of " + t.size());
    for (String axis : List.of("x", "y")) {
      List<Number> full = all.path("samples." + axis);
      List<Number> some = thin.path("samples." + axis);
      int k = 0;
      for (int i = 0; i < t.size(); i++) {
        double at = t.get(i).doubleValue();
        while (k + 2 < kept.size() && kept.get(k + 1).doubleValue() < at) {
          k++;
        }
        double from = kept.get(k).doubleValue();
        double share = (at - from) / (kept.get(k + 1).doubleValue() - from);
        double straight =
            some.get(k).doubleValue() * (1 - share) + some.get(k + 1).doubleValue() * share;
        assertEquals(full.get(i).doubleValue(), straight, 0.5 + 1e-6);
      }
    }
  }

  @Test
  void textbookTraceHasNoBenchUnits() {
    Response answer = post(body(TEXTBOOK, "\"release\":{\"x\":0.7,\"y\":0.4},\"durationS\":20"));

    answer.then().statusCode(200).body("samples.energy", notNullValue());
    assertFalse(answer.asString().contains("energyJ"), answer.asString());
    assertFalse(answer.asString().contains(" mm"), answer.asString());
    assertFalse(answer.asString().contains("Mm\""), answer.asString());
    String csv =
        given().queryParam("format", "csv").get(answer.<String>path("links.self")).asString();
    assertTrue(csv.startsWith("t,x,y,vx,vy,energy\r\n"), csv);
  }

  @Test
  void fiveFaultsGiveFiveErrors() {
    post(body(RIG.replace("\"gapMm\"", "\"gabMm\""), "\"release\":{\"x\":\"a\"},\"durationS\":-1"))
        .then()
        .statusCode(400)
        .contentType("application/problem+json")
        .body("errors", hasSize(5))
        .body(
            "errors.pointer",
            hasItems("/layout/gabMm", "/layout/gapMm", "/release/x", "/release/y", "/durationS"));
  }

  @Test
  void impossibleReleaseIsRefusedWithMillimetres() {
    post(body(RIG, "\"release\":{\"x\":390,\"y\":0}"))
        .then()
        .statusCode(422)
        .body("code", equalTo("impossible-release"))
        // 400 mm times the sine of 60 degrees
        .body("errors[0].detail", containsString("346 mm"));
    post(body(
            RIG.replace("\"gapMm\":28", "\"gapMm\":8")
                .replace("\"x\":35", "\"x\":60,\"bottomMm\":6"),
            "\"release\":{\"x\":60,\"y\":0}"))
        .then()
        .statusCode(422)
        .body("code", equalTo("impossible-release"))
        .body("errors[0].detail", containsString(" mm; release"));
  }

  @Test
  void tooManySamplesAreRefusedWithWhatToAsk() {
    post(body(RIG, "\"release\":{\"x\":60,\"y\":0},\"sampleIntervalS\":0.000001"))
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors[0].pointer", equalTo("/sampleIntervalS"))
        .body("errors[0].detail", containsString("raise it to 0.000301"));
  }

  @Test
  void whatIsNotThereOrNotClearIsRefused() {
    post("{\"layoutId\":\"lay-aaaaaaaaaaaaaaaaaaaaaaaaaa\"," + SHORT + "}").then().statusCode(404);
    post("{\"layoutId\":\"x\",\"layout\":" + RIG + "," + SHORT + "}").then().statusCode(400);
    given().get("/v1/traces/trc-aaaaaaaaaaaaaaaaaaaaaaaaaa").then().statusCode(404);
    given()
        .queryParam("x", 60)
        .queryParam("y", 20)
        .queryParam("duratonS", 20)
        .get("/v1/layouts/" + sample("one-well") + "/trace")
        .then()
        .statusCode(400)
        .body("errors[0].detail", containsString("durationS"));
  }

  @Test
  void dryRunStoresNothing() {
    String id =
        given()
            .contentType("application/json")
            .queryParam("dry-run", true)
            .body(body(RIG, "\"release\":{\"x\":61.25,\"y\":3}"))
            .post("/v1/traces")
            .path("traceId");

    given().get("/v1/traces/" + id).then().statusCode(404);
  }

  @Test
  void sheetReadsSingleValues() {
    String url = "/v1/layouts/" + sample("one-well") + "/trace?x=60&y=20&durationS=4&value=";

    assertEquals("Grove", given().get(url + "outcome").asString());
    assertEquals("true", given().get(url + "sure").asString());
    for (String value : List.of("sealedAtS", "settledAtS", "trustedUntilS", "foretoldUntilS")) {
      String text = given().get(url + value).asString();
      assertTrue(text.matches("\\d+(\\.\\d+)?|not reached"), text);
      assertEquals(text.replace('.', ','), given().get(url + value + "&decimal=comma").asString());
    }
  }

  @Test
  void rigIsMadeChangedAndReadByGetAlone() {
    String changed =
        given()
            .get("/v1/layouts/" + sample("one-well") + "/variant?format=text&gapMm=29.5")
            .asString();
    String url = "/v1/layouts/" + changed + "/outcome?x=60&y=20&format=text&errors=inline";

    Response pending = given().get(url + "&wait=0");
    assertEquals(200, pending.statusCode());
    assertTrue(pending.asString().matches("PENDING \\d+"), pending.asString());
    assertEquals("Grove", given().get(url + "&wait=60").asString());
    Response wrong = given().get(url + "&vz=1");
    assertEquals(200, wrong.statusCode());
    assertTrue(wrong.asString().startsWith("ERROR "), wrong.asString());
    assertEquals(
        "Grove",
        given()
            .get("/v1/layouts/" + sample("one-well") + "/outcome?x=60&y=20&format=text&gapMm=29.5")
            .asString());
  }

  @Test
  void newLabelComputesNothingAgain() {
    post(body(RIG, SHORT)).then().statusCode(200);

    Response other = post(body(RIG.replace("Grove", "Marsh"), SHORT));

    assertTrue(other.header("Cache-Status").contains("hit"), other.header("Cache-Status"));
    assertEquals("Marsh", other.path("outcome.label"));
  }

  @Test
  void hostileLabelStaysText() throws Exception {
    String label = "</text><script>1</script>\\u202e\\\"'";
    Response answer = post(body(RIG.replace("Grove", label), SHORT));
    answer.then().statusCode(200);
    String url = answer.path("links.path");
    byte[] svg = given().queryParam("format", "svg").get(url).asByteArray();
    Document picture =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg));
    assertEquals(0, picture.getElementsByTagName("script").getLength());
  }

  @Test
  void answerOutlivesARestart(@TempDir Path folder) throws IOException {
    try (RunningService own = RunningService.onFolder(folder).start()) {
      Response first =
          own.given().contentType("application/json").body(body(RIG, SHORT)).post("/v1/traces");
      String url = first.header("Location");
      Response before = own.given().get(url);
      own.restart();
      Response after = own.given().get(url);

      assertEquals(200, after.statusCode());
      assertArrayEquals(before.asByteArray(), after.asByteArray());
      assertArrayEquals(first.asByteArray(), after.asByteArray());
      assertEquals(before.header("ETag"), after.header("ETag"));
      assertTrue(after.header("Cache-Status").contains("store"), after.header("Cache-Status"));
      own.given().header("If-None-Match", after.header("ETag")).get(url).then().statusCode(304);
      Response again =
          own.given().contentType("application/json").body(body(RIG, SHORT)).post("/v1/traces");
      assertArrayEquals(first.asByteArray(), again.asByteArray());
    }
  }
}
