package lodeswing.web.trace;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import lodeswing.RunningService;
import lodeswing.job.ComputationKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.cbor.CBORMapper;

/** Traces, outcomes and rest points over HTTP, as the three clients ask for them. */
class TracesOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String TEXTBOOK =
      "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,\"magnets\":["
          + "{\"x\":0.57735,\"y\":0,\"strength\":1,\"label\":\"%s\"},"
          + "{\"x\":-0.28868,\"y\":0.5,\"strength\":1},"
          + "{\"x\":-0.28868,\"y\":-0.5,\"strength\":1}]}";

  private static String sample(String name) {
    return SERVICE
        .given()
        .queryParam("format", "text")
        .get("/v1/sample-layouts/" + name)
        .asString();
  }

  private static Response post(String body) {
    return SERVICE.given().contentType("application/json").body(body).post("/v1/traces");
  }

  private static String request(String layoutId, String more) {
    return "{\"layoutId\":\"" + layoutId + "\",\"release\":{\"x\":-70,\"y\":30}" + more + "}";
  }

  @Test
  void documentHoldsThePathOnItsGridAndWhatIsKnownOfIt() {
    Response answer = post(request(sample("three-stations"), ",\"durationS\":4"));
    answer
        .then()
        .statusCode(200)
        .body("traceId", startsWith("trc-"))
        .body("units.length", equalTo("mm"))
        .body("outcome.restPointId", startsWith("rest-"))
        .body("sampleIntervalS", equalTo(0.02f))
        .body("engineRevision", equalTo(ComputationKey.ENGINE_REVISION))
        .body("events.kind", hasItems("sealed", "settled"));
    JsonNode trace = JsonMapper.shared().readTree(answer.asByteArray());
    JsonNode samples = trace.get("samples");
    for (String column : List.of("t", "x", "y", "vx", "vy", "energyJ")) {
      assertEquals(201, samples.get(column).size(), column);
    }
    for (int i = 0; i <= 200; i++) {
      assertEquals(i * 0.02, samples.get("t").get(i).asDouble(), 1e-12);
    }
    assertEquals(-70, samples.get("x").get(0).asDouble(), 0);
    assertTrue(trace.get("sealedAtS").asDouble() < trace.get("settledAtS").asDouble());
    assertTrue(trace.get("trustedUntilS").asDouble() < trace.get("sealedAtS").asDouble());
  }

  @Test
  void tableCborAndPicturesShowTheSameTrace() throws Exception {
    Response posted = post(request(sample("three-stations"), ",\"durationS\":4"));
    String self = posted.jsonPath().getString("links.self");
    String csv = SERVICE.given().queryParam("format", "csv").get(self).asString();
    assertTrue(csv.startsWith("t_s,x_mm,y_mm,vx_mm_per_s,vy_mm_per_s,energy_j\r\n0,-70,30,0,0,"));
    assertEquals(202, csv.lines().count());
    byte[] cbor = SERVICE.given().accept("application/cbor").get(self).asByteArray();
    assertEquals(
        JsonMapper.shared().readTree(posted.asByteArray()),
        JsonMapper.shared().readTree(CBORMapper.shared().readTree(cbor).toString()));
    byte[] svg = SERVICE.given().get(self + "/path").asByteArray();
    var root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg))
            .getDocumentElement();
    assertEquals("svg", root.getTagName());
    assertTrue(root.getElementsByTagName("desc").getLength() > 0);
    byte[] png =
        SERVICE
            .given()
            .queryParam("format", "png")
            .queryParam("pixels", 500)
            .get(self + "/path")
            .asByteArray();
    assertEquals(500, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
  }

  @Test
  void picturesAreSmoothHoweverFarApartTheSamplesLie() {
    String trace = "/v1/layouts/" + sample("three-stations") + "/trace?x=-70&y=30&durationS=4";
    String usual = SERVICE.given().get(trace + "&format=svg").asString();
    String coarse = SERVICE.given().get(trace + "&sampleIntervalS=0.5&format=svg").asString();
    assertEquals(drawnPath(usual), drawnPath(coarse));
    assertFalse(drawnPath(coarse).isEmpty(), coarse);
    String self =
        post(request(sample("three-stations"), ",\"durationS\":4,\"sampleIntervalS\":0.5"))
            .jsonPath()
            .getString("links.self");
    assertEquals(drawnPath(usual), drawnPath(SERVICE.given().get(self + "/path").asString()));
    Response posted = SERVICE.given().get(self);
    assertTrue(posted.header("Cache-Status").contains("hit"), posted.header("Cache-Status"));
    assertTrue(usual.length() < 30_000, usual.length() + " characters");
  }

  /** The data of the curves that show the path. */
  private static List<String> drawnPath(String svg) {
    String group = svg.substring(svg.indexOf("<g class=\"path\">"));
    group = group.substring(0, group.indexOf("</g>"));
    return group.lines().filter(line -> line.startsWith("<path")).toList();
  }

  @Test
  void magnetsOfOneLabelAreToldApartInEverySentence() {
    String twins =
        "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.3,\"height\":0.3,\"magnets\":["
            + "{\"x\":-1,\"y\":0,\"label\":\"Tide\"},{\"x\":1,\"y\":0,\"label\":\"Tide\"}]}";
    Response trace =
        post("{\"layout\":" + twins + ",\"release\":{\"x\":0.9,\"y\":0.1},\"durationS\":60}");
    assertEquals(200, trace.statusCode(), trace.asString());
    String name = trace.path("outcome.name");
    assertTrue(name.startsWith("Tide at x="), name);
    trace.then().body("notes", hasItem("The bob comes to rest at " + name + "."));
    String svg = SERVICE.given().get(trace.path("links.path") + "").asString();
    assertTrue(svg.contains("comes to rest at " + name + ", at "), svg);
  }

  @Test
  void restsBetweenMagnetsAreSaidInWholeWords() {
    String trace = "/v1/layouts/" + sample("closed-doors") + "/trace?x=-70&y=30&durationS=2";
    String svg = SERVICE.given().queryParam("wait", 60).get(trace + "&format=svg").asString();
    assertTrue(svg.contains("and comes to rest in the middle, at "), svg);
    assertFalse(svg.contains("at in the"), svg);
  }

  @Test
  void thinnedPathStaysWithinItsTolerance() {
    String layout = sample("three-stations");
    JsonNode whole =
        JsonMapper.shared()
            .readTree(post(request(layout, ",\"durationS\":4")).asByteArray())
            .get("samples");
    JsonNode thin =
        JsonMapper.shared()
            .readTree(post(request(layout, ",\"durationS\":4,\"thin\":0.5")).asByteArray())
            .get("samples");
    assertTrue(thin.get("t").size() < whole.get("t").size(), thin.get("t").size() + " samples");
    int k = 0;
    for (int i = 0; i < whole.get("t").size(); i++) {
      double t = whole.get("t").get(i).asDouble();
      while (thin.get("t").get(k + 1).asDouble() < t) {
        k++;
      }
      double share =
          (t - thin.get("t").get(k).asDouble())
              / (thin.get("t").get(k + 1).asDouble() - thin.get("t").get(k).asDouble());
      double dx = between(thin.get("x"), k, share) - whole.get("x").get(i).asDouble();
      double dy = between(thin.get("y"), k, share) - whole.get("y").get(i).asDouble();
      assertTrue(Math.hypot(dx, dy) <= 0.5 + 1e-6);
    }
  }

  private static double between(JsonNode column, int k, double share) {
    return (1 - share) * column.get(k).asDouble() + share * column.get(k + 1).asDouble();
  }

  @Test
  void textbookTracesCarryNoBenchUnits() {
    Response answer =
        post(
            "{\"layout\":"
                + TEXTBOOK.formatted("Tide")
                + ",\"release\":{\"x\":1.2,\"y\":0.4},\"durationS\":20}");
    answer.then().statusCode(200).body("units.time", equalTo("1"));
    JsonNode samples = JsonMapper.shared().readTree(answer.asByteArray()).get("samples");
    assertTrue(samples.has("energy"));
    assertFalse(samples.has("energyJ"));
  }

  @Test
  void sameBodyGivesTheSameBytesBeforeAndAfterARestart(@TempDir Path folder) {
    try (RunningService service = RunningService.onFolder(folder)) {
      service.start();
      String body =
          "{\"layout\":" + TEXTBOOK.formatted("Reef") + ",\"release\":{\"x\":0.9,\"y\":0.2}}";
      Response first =
          service.given().contentType("application/json").body(body).post("/v1/traces");
      Response second =
          service.given().contentType("application/json").body(body).post("/v1/traces");
      String self = first.jsonPath().getString("links.self");
      service.restart();
      Response third = service.given().get(self);
      Response fourth =
          service.given().contentType("application/json").body(body).post("/v1/traces");
      assertEquals(200, third.statusCode());
      assertEquals(200, fourth.statusCode());
      assertArrayEquals(first.asByteArray(), second.asByteArray());
      assertArrayEquals(first.asByteArray(), fourth.asByteArray());
      assertEquals(first.header("ETag"), fourth.header("ETag"));
      assertTrue(fourth.header("Cache-Status").contains("hit"), fourth.header("Cache-Status"));
      assertArrayEquals(first.asByteArray(), third.asByteArray());
      assertEquals(first.header("ETag"), third.header("ETag"));
      assertTrue(first.header("Cache-Status").contains("fwd=miss"));
      assertTrue(third.header("Cache-Status").contains("store"), third.header("Cache-Status"));
      assertTrue(third.header("Cache-Control").contains("immutable"));
      service
          .given()
          .header("If-None-Match", first.header("ETag"))
          .get(self)
          .then()
          .statusCode(304);
    }
  }

  @Test
  void fiveFaultsGiveFiveErrorsWithPointers() {
    post("{\"layoutId\":7,\"release\":{\"x\":\"a\",\"z\":1},\"durationS\":-1,\"thin\":1e9}")
        .then()
        .statusCode(400)
        .contentType("application/problem+json")
        .body(
            "errors.pointer",
            hasItems("/layoutId", "/release/x", "/release/y", "/release/z", "/durationS", "/thin"));
  }

  @Test
  void impossibleAndCostlyRequestsSayWhatWouldBePossible() {
    String layout = sample("three-stations");
    post("{\"layoutId\":\"" + layout + "\",\"release\":{\"x\":415,\"y\":0}}")
        .then()
        .statusCode(422)
        .body("code", equalTo("impossible-release"))
        .body(
            "errors.detail", hasItem(containsString("along x a release is possible up to 363 mm")));
    post(request(layout, ",\"durationS\":3000,\"sampleIntervalS\":0.001"))
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors[0].detail", containsString("raise it to 0.0301"));
    post(request("lay-aaaaaaaaaaaaaaaaaaaaaaaaaa", "")).then().statusCode(404);
    post("{\"layoutId\":\"x\",\"layout\":"
            + TEXTBOOK.formatted("A")
            + ",\"release\":{\"x\":1,\"y\":1}}")
        .then()
        .statusCode(400);
  }

  @Test
  void rigIsMadeChangedAndAskedByGetAlone() {
    String layout = sample("three-stations");
    String variant =
        SERVICE
            .given()
            .queryParam("gapMm", "30")
            .queryParam("magnet.2.poleUp", "north")
            .queryParam("format", "text")
            .get("/v1/layouts/" + layout + "/variant")
            .asString();
    assertTrue(variant.startsWith("lay-"), variant);
    Response pending = outcome(variant, "0");
    assertEquals(200, pending.statusCode());
    assertTrue(pending.asString().startsWith("PENDING "), pending.asString());
    String outcome = outcome(variant, "60").asString();
    assertTrue(List.of("Tide", "Reef").contains(outcome), outcome);
    String error =
        SERVICE
            .given()
            .queryParam("x", "far")
            .queryParam("y", "1")
            .queryParam("format", "text")
            .queryParam("errors", "inline")
            .get("/v1/layouts/" + variant + "/outcome")
            .then()
            .statusCode(200)
            .extract()
            .asString();
    assertTrue(error.startsWith("ERROR "), error);
  }

  private static Response outcome(String layout, String wait) {
    return SERVICE
        .given()
        .queryParam("x", "55")
        .queryParam("y", "-20")
        .queryParam("format", "text")
        .queryParam("errors", "inline")
        .queryParam("wait", wait)
        .get("/v1/layouts/" + layout + "/outcome");
  }

  @Test
  void singleValuesSuitACell() {
    String trace = "/v1/layouts/" + sample("three-stations") + "/trace?x=-70&y=30&value=";
    double sealed = Double.parseDouble(SERVICE.given().get(trace + "sealedAtS").asString());
    double settled = Double.parseDouble(SERVICE.given().get(trace + "settledAtS").asString());
    assertTrue(0 < sealed && sealed < settled);
    String comma = SERVICE.given().get(trace + "sealedAtS&decimal=comma").asString();
    assertEquals(sealed, Double.parseDouble(comma.replace(',', '.')), 0);
    assertTrue(comma.contains(","));
    assertTrue(List.of("true", "false").contains(SERVICE.given().get(trace + "sure").asString()));
    SERVICE
        .given()
        .get(trace + "outcome&gap=3")
        .then()
        .statusCode(400)
        .body(containsString("gapMm"));
  }

  @Test
  void newLabelComputesNothingAgain() {
    String release = ",\"release\":{\"x\":0.7,\"y\":0.1},\"durationS\":30}";
    Response first = post("{\"layout\":" + TEXTBOOK.formatted("Cliff") + release);
    Response second = post("{\"layout\":" + TEXTBOOK.formatted("Marsh") + release);
    assertTrue(second.header("Cache-Status").contains("hit"));
    assertFalse(
        first.jsonPath().getString("traceId").equals(second.jsonPath().getString("traceId")));
    assertEquals(first.jsonPath().getList("samples.x"), second.jsonPath().getList("samples.x"));
  }

  @Test
  void hostileLabelStaysTextInEveryForm() throws Exception {
    String label = "</text><script>alert(1)</script>";
    String posted =
        "{\"layout\":"
            + TEXTBOOK.formatted(label)
            + ",\"release\":{\"x\":0.6,\"y\":0},\"durationS\":10}";
    String self = post(posted).jsonPath().getString("links.self");
    byte[] svg = SERVICE.given().get(self + "/path").asByteArray();
    var document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg));
    assertEquals(0, document.getElementsByTagName("script").getLength());
  }

  @Test
  void repelledBobRestsOverWeakFieldAndTheAnswerSaysSo() {
    SERVICE
        .given()
        .queryParam("wait", 60)
        .get("/v1/layouts/" + sample("closed-doors") + "/outcome?x=20&y=10")
        .then()
        .statusCode(200)
        .body("notes", hasItem(containsString("over weak field")))
        .body("notes", hasItem(containsString("not over a magnet")));
  }

  @Test
  void everyQuickSampleHasNamedRestPointsAndOneDrawnRelease() {
    for (String name :
        List.of(
            "three-stations",
            "one-well",
            "quiet-plate",
            "turned-centre",
            "y-cord",
            "kitchen-drawer",
            "paper-triangle")) {
      String layout = sample(name);
      Response points =
          SERVICE.given().queryParam("wait", 60).get("/v1/layouts/" + layout + "/rest-points");
      assertEquals(200, points.statusCode(), name);
      assertTrue(points.jsonPath().getBoolean("complete"), name);
      List<String> names = points.jsonPath().getList("restPoints.name");
      assertEquals(names.size(), names.stream().distinct().count(), name);
      List<String> ids = points.jsonPath().getList("restPoints.id");
      List<List<String>> between = points.jsonPath().getList("saddles.between");
      between.forEach(sides -> assertTrue(ids.containsAll(sides), name));
      String place = name.equals("paper-triangle") ? "x=1.1&y=0.6" : "x=50&y=35";
      String svg =
          SERVICE
              .given()
              .get("/v1/layouts/" + layout + "/trace?durationS=6&format=svg&" + place)
              .asString();
      assertTrue(svg.contains("<svg"), name);
    }
  }

  @Test
  void damagedBodiesNeverEndInAFaultOfTheService() {
    String whole =
        "{\"layout\":"
            + TEXTBOOK.formatted("Tide")
            + ",\"release\":{\"x\":0.6,\"y\":0.1,\"vx\":0},\"durationS\":5,\"thin\":0.01}";
    Random random = new Random(20);
    List<String> accepted = new ArrayList<>();
    for (int i = 0; i < 1_000; i++) {
      Response answer = post(damaged(whole, random));
      assertTrue(answer.statusCode() < 500, answer.asString());
      if (answer.statusCode() == 200) {
        accepted.add(answer.jsonPath().getString("links.self"));
      }
    }
    accepted.forEach(self -> SERVICE.given().get(self).then().statusCode(200));
  }

  private static String damaged(String body, Random random) {
    var text = new StringBuilder(body);
    String[] extremes = {"1e308", "-1e308", "0", "-1", "null", "true", "\"x\"", "[]", "1e-320"};
    switch (random.nextInt(3)) {
      case 0 -> text.setCharAt(random.nextInt(text.length()), (char) (32 + random.nextInt(95)));
      case 1 ->
          text.delete(random.nextInt(text.length() / 2), text.length() / 2 + random.nextInt(40));
      default -> {
        int colon = text.indexOf(":", random.nextInt(text.length() - 20));
        int end = colon + 1;
        while (end < text.length() && ",}]".indexOf(text.charAt(end)) < 0) {
          end++;
        }
        text.replace(colon + 1, end, extremes[random.nextInt(extremes.length)]);
      }
    }
    return text.toString();
  }
}
