package lodeswing.web.odds;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.lessThanOrEqualTo;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.List;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Odds over HTTP: documents, tables, cells, pictures, counts and faults. */
class OddsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String PLANE =
      "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.8,\"height\":0.3,\"magnets\":["
          + "{\"x\":0.577,\"y\":0,\"strength\":1,\"label\":\"Tide\"},"
          + "{\"x\":-0.2885,\"y\":0.4997,\"strength\":1,\"label\":\"Dune\"},"
          + "{\"x\":-0.2885,\"y\":-0.4997,\"strength\":1,\"label\":\"Reef\"}]}";

  private static final String DISC =
      "\"release\":{\"x\":0,\"y\":0},\"spread\":{\"kind\":\"disc\",\"radius\":1.5}";

  private static Response post(String members, String query) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body("{\"layout\":" + PLANE + "," + members + "}")
        .post("/v1/odds?wait=60" + query);
  }

  private static String layout() {
    return SERVICE
        .given()
        .contentType("application/json")
        .body(PLANE)
        .post("/v1/layouts")
        .path("layoutId");
  }

  @Test
  void chancesComeWithIntervalsOfTheAskedWidth() {
    Response answer = post(DISC, "");

    answer
        .then()
        .statusCode(200)
        .header("Location", startsWith("/v1/odds/odd-"))
        .body("outcomes", hasSize(3))
        .body("outcomes.label", hasItem("Tide"))
        .body("outcomes.kind", everyItem(equalTo("rest-point")))
        .body("width", equalTo(0.02f))
        .body("interval", equalTo("wilson"))
        .body("releases", greaterThan(8_000))
        .body("parts", nullValue())
        .body("counted", nullValue())
        .body("stepError", equalTo(1e-5f));
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < 3; i++) {
      String path = "outcomes[" + i + "].";
      double chance = answer.<Number>path(path + "chance").doubleValue();
      double low = answer.<Number>path(path + "low").doubleValue();
      double high = answer.<Number>path(path + "high").doubleValue();
      assertTrue(low <= 1.0 / 3 && 1.0 / 3 <= high, low + " to " + high);
      assertTrue(high - low <= 0.02);
      sum += chance;
      squares += chance * chance;
    }
    assertEquals(1, sum, 1e-6);
    assertEquals(squares, answer.<Number>path("repeatability").doubleValue(), 1e-3);
    // A third each: nothing to tell apart.
    answer.then().body("tellApart", hasSize(3)).body("tellApart[0].tries", nullValue());
  }

  @Test
  void sameOddsHaveTheSameBytesByIdAndInEveryForm() {
    Response first = post(DISC, "");
    String url = first.header("Location");
    Response again = SERVICE.given().get(url);

    again
        .then()
        .statusCode(200)
        .header("Cache-Control", containsString("immutable"))
        .header("ETag", notNullValue());
    assertArrayEquals(first.asByteArray(), again.asByteArray());
    SERVICE.given().header("If-None-Match", again.header("ETag")).get(url).then().statusCode(304);
    SERVICE.given().get(url + "?format=cbor").then().contentType("application/cbor");
    String[] lines = SERVICE.given().get(url + "?format=csv").asString().split("\r\n");
    assertEquals("outcome,chance,low,high,releases", lines[0]);
    assertEquals(4, lines.length);
    assertTrue(lines[1].matches("(Tide|Dune|Reef),0\\.3\\d+,0\\.3\\d+,0\\.3\\d+,\\d+"), lines[1]);
    SERVICE.given().get("/v1/odds/odd-nothing").then().statusCode(404);
  }

  @Test
  void seedAndRuleMakeOtherOdds() {
    String one = post(DISC + ",\"seed\":1", "").asString();
    String other = post(DISC + ",\"seed\":2", "").asString();
    assertNotEquals(one, other);
    int wilson = post(DISC + ",\"width\":0.05", "").path("releases");
    int exact =
        post(DISC + ",\"width\":0.05,\"interval\":\"clopper-pearson\"", "").path("releases");
    assertTrue(exact > wilson, exact + " and " + wilson);
  }

  @Test
  void labelsAloneComputeNothingAgain() {
    post(DISC + ",\"width\":0.07", "").then().statusCode(200);
    SERVICE
        .given()
        .contentType("application/json")
        .body("{\"layout\":" + PLANE.replace("Tide", "Pier") + "," + DISC + ",\"width\":0.07}")
        .post("/v1/odds?wait=60")
        .then()
        .statusCode(200)
        .header("Cache-Status", containsString("hit"))
        .body("outcomes.label", hasItem("Pier"));
  }

  /** Two magnets of one label are one line, with both rest points. */
  @Test
  void endsOfOneLabelAreCountedTogether() {
    Response answer =
        SERVICE
            .given()
            .contentType("application/json")
            .body("{\"layout\":" + PLANE.replace("Reef", "Dune") + "," + DISC + "}")
            .post("/v1/odds?wait=60");

    answer
        .then()
        .body("outcomes", hasSize(2))
        .body("outcomes[0].label", equalTo("Dune"))
        .body("outcomes[0].restPointIds", hasSize(2));
    assertEquals(2.0 / 3, answer.<Number>path("outcomes[0].chance").doubleValue(), 0.015);
    double width =
        answer.<Number>path("outcomes[0].high").doubleValue()
            - answer.<Number>path("outcomes[0].low").doubleValue();
    assertTrue(width <= 0.02, "width " + width);
    // Sure by (1.96 sqrt(1) + 0.84 sqrt(8/9))^2 * 9 = 68 tries at exactly 2/3 and 1/3.
    answer.then().body("tellApart[0].names", equalTo(List.of("Dune", "Tide")));
    assertEquals(68, answer.<Number>path("tellApart[0].tries").doubleValue(), 10);
  }

  @Test
  void countOfAClassIsHeldAgainstTheOdds() {
    String counts =
        ",\"counts\":[{\"label\":\"Tide\",\"count\":10},{\"label\":\"Dune\",\"count\":10},"
            + "{\"label\":\"Reef\",\"count\":40}]";
    Response answer = post(DISC + counts, "");

    answer
        .then()
        .statusCode(200)
        .body("counted.tries", equalTo(60))
        .body("counted.degreesOfFreedom", equalTo(2))
        .body("counted.warnings", hasSize(0))
        .body("counted.sentence", containsString("does not fit"));
    // (10^2 + 10^2 + 20^2) / 20 = 30 at exactly a third each.
    assertEquals(30, answer.<Number>path("counted.chiSquare").doubleValue(), 3);
    answer.then().body("counted.pValue", lessThanOrEqualTo(1e-5f));

    post(DISC + counts.replace("40", "9").replace("10", "2"), "")
        .then()
        .body("counted.warnings", hasSize(3))
        .body("counted.warnings[0]", containsString("less than 5"));
    post(DISC + counts.replace("40", "11"), "")
        .then()
        .body("counted.sentence", containsString("fits these odds"));
    post(DISC + counts, "&format=csv").then().body(containsString(",counted,expected"));
  }

  /** A sheet cannot post: the same count by the address, value by value. */
  @Test
  void countOfAClassByTheAddressGivesTheSameFigures() {
    String counts =
        ",\"counts\":[{\"label\":\"Tide\",\"count\":10},{\"label\":\"Dune\",\"count\":10},"
            + "{\"label\":\"Reef\",\"count\":40}]";
    Response posted = post(DISC + counts, "");
    String url = "/v1/odds/" + posted.path("oddsId");
    String address = byAddress() + "&counts=Tide:10,Dune:10,Reef:40";
    SERVICE
        .given()
        .get(address + "&format=json")
        .then()
        .statusCode(200)
        .body("oddsId", equalTo(posted.path("oddsId")));
    for (String value : List.of("chiSquare", "degreesOfFreedom", "pValue", "countedSentence")) {
      String cell = SERVICE.given().get(address + "&value=" + value).asString();
      assertEquals(SERVICE.given().get(url + "?value=" + value).asString(), cell);
      assertTrue(!cell.equals("none"), value);
    }
    assertEquals(
        posted.<Number>path("counted.pValue").doubleValue(),
        Double.parseDouble(SERVICE.given().get(address + "&value=pValue").asString()),
        1e-9);
    assertEquals(
        60 * Double.parseDouble(SERVICE.given().get(url + "?value=chance&outcome=Dune").asString()),
        Double.parseDouble(
            SERVICE.given().get(address + "&value=expected&outcome=Dune").asString()),
        1e-3);
    SERVICE.given().get(byAddress() + "&value=pValue").then().body(equalTo("none"));
  }

  @Test
  void countsThatTheAddressGetsWrongAreNamed() {
    for (String wrong :
        List.of("Tide", "Tide:", "Tide:1.5", "Tide:1,", ":3", "Tide:1;Dune:2", "Tide:9999999")) {
      SERVICE
          .given()
          .queryParam("counts", wrong)
          .get(byAddress())
          .then()
          .statusCode(400)
          .body("errors[0].pointer", equalTo("?counts"));
    }
    SERVICE
        .given()
        .queryParam("counts", "Tide:1,Tide:2")
        .get(byAddress())
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("?counts"));
    SERVICE
        .given()
        .queryParam("counts", "Tide:1,Grove, upper: east:2")
        .queryParam("errors", "inline")
        .get(byAddress() + "&value=pValue")
        .then()
        .statusCode(200)
        .body(startsWith("ERROR invalid-request"))
        .body(containsString("Grove - upper: east"));
  }

  private String byAddress() {
    return "/v1/layouts/" + layout() + "/odds?x=0&y=0&kind=disc&spreadMm=1.5&wait=60";
  }

  @Test
  void whatNeverCameIsNotExpectedZeroTimes() {
    post(
            "\"release\":{\"x\":0.577,\"y\":0},\"spread\":{\"kind\":\"disc\",\"radius\":0.01},"
                + "\"counts\":[{\"label\":\"Tide\",\"count\":9},{\"label\":\"Reef\",\"count\":1}]",
            "")
        .then()
        .statusCode(200)
        .body("outcomes", hasSize(1))
        .body("repeatability", equalTo(1))
        .body("counted.lines", hasSize(2))
        .body("counted.warnings", hasItem(containsString("never came")));
  }

  @Test
  void zoneStandsOnThePlateByItself() {
    post(
            "\"spread\":{\"kind\":\"polygon\",\"corners\":[{\"x\":0.5,\"y\":-0.1},"
                + "{\"x\":0.65,\"y\":-0.1},{\"x\":0.6,\"y\":0.1}]}",
            "")
        .then()
        .statusCode(200)
        .body("outcomes[0].label", equalTo("Tide"))
        .body("outcomes[0].chance", equalTo(1));
  }

  @Test
  void pushThatWandersIsFollowedToo() {
    Response still =
        post(
            "\"release\":{\"x\":0.577,\"y\":0},"
                + "\"spread\":{\"kind\":\"gaussian\",\"deviation\":0.01}",
            "");
    Response pushed =
        post(
            "\"release\":{\"x\":0.577,\"y\":0},"
                + "\"spread\":{\"kind\":\"gaussian\",\"deviation\":0.01,\"speedDeviation\":3}",
            "");
    assertEquals(1, still.<Number>path("repeatability").doubleValue());
    assertTrue(pushed.<Number>path("repeatability").doubleValue() < 0.9);
  }

  /** Releases that cannot begin have a class of their own. */
  @Test
  void releasesThatCannotBeginAreCountedAsThat() {
    SERVICE
        .given()
        .get(
            "/v1/layouts/"
                + SERVICE.given().get("/v1/sample-layouts/one-well").path("layoutId")
                + "/odds?x=2000&y=0&spreadMm=3&wait=60")
        .then()
        .statusCode(200)
        .body("outcomes", hasSize(1))
        .body("outcomes[0].kind", equalTo("cannot-start"))
        .body("outcomes[0].chance", equalTo(1))
        .body("outcomes[0].label", nullValue());
  }

  @Test
  void cellsReadSingleValues() {
    String url = "/v1/layouts/" + layout() + "/odds?x=0&y=0&kind=disc&spreadMm=1.5&wait=60";
    String chance = SERVICE.given().get(url + "&value=chance&outcome=Tide").asString();
    assertEquals(1.0 / 3, Double.parseDouble(chance), 0.02);
    String comma = SERVICE.given().get(url + "&value=chance&outcome=Tide&decimal=comma").asString();
    assertEquals(chance, comma.replace(',', '.'));
    double low =
        Double.parseDouble(SERVICE.given().get(url + "&value=low&outcome=Tide").asString());
    assertTrue(low < Double.parseDouble(chance));
    SERVICE.given().get(url + "&value=robust").then().body(equalTo("none"));
    SERVICE.given().get(url + "&value=tries").then().body(equalTo("none"));
    SERVICE.given().get(url + "&format=text").then().body(startsWith("A hand that lets go"));
    SERVICE
        .given()
        .get(url + "&value=chance&outcome=Harbour")
        .then()
        .statusCode(400)
        .body(startsWith("ERROR "));
    SERVICE.given().get(url + "&drag=0.9").then().statusCode(200).body("releases", greaterThan(0));
    SERVICE
        .given()
        .get(url + "&spreadM=4")
        .then()
        .statusCode(400)
        .body("errors[0].detail", containsString("spreadMm"));
  }

  @Test
  void picturesStateTheResult() {
    String url = post(DISC, "").header("Location") + "/bars";
    Response svg = SERVICE.given().get(url + "?format=svg");
    svg.then().statusCode(200).contentType(startsWith("image/svg+xml"));
    String text = svg.asString();
    assertTrue(text.contains("Two tries end alike"), "alternative text says the result");
    assertTrue(text.contains("Tide") && text.contains("33."));
    byte[] png = SERVICE.given().get(url + "?format=png&pixels=640").asByteArray();
    assertEquals("PNG", new String(png, 1, 3, StandardCharsets.US_ASCII));
    SERVICE
        .given()
        .get("/v1/layouts/" + layout() + "/odds?x=0&y=0&spreadMm=1&format=svg&wait=60")
        .then()
        .statusCode(200)
        .contentType(startsWith("image/svg+xml"));
  }

  @Test
  void dryRunTellsTheCostAndStoresNothing() {
    Response dry = post(DISC + ",\"width\":0.013", "&dry-run=true");
    dry.then()
        .statusCode(200)
        .body("dryRun", equalTo(true))
        .body("oddsId", startsWith("odd-"))
        .body("releases", greaterThan(20_000))
        .body("costReleases", greaterThan(20_000));
    SERVICE.given().get("/v1/odds/" + dry.path("oddsId")).then().statusCode(404);
  }

  @Test
  void everyFaultIsToldAtOnce() {
    post(
            "\"spread\":{\"kind\":\"ring\",\"innerRadius\":2,\"outerRadius\":1},\"parts\":true,"
                + "\"counts\":[{\"label\":\"Tide\",\"count\":0},{\"label\":\"Tide\",\"count\":0}]",
            "")
        .then()
        .statusCode(400)
        .body("code", equalTo("invalid-request"))
        .body(
            "errors.pointer",
            equalTo(
                List.of(
                    "/release", "/spread/innerRadius", "/parts", "/counts/1/label", "/counts")));
    post("\"release\":{\"x\":0,\"y\":0},\"spread\":{\"kind\":\"disc\",\"radius\":0}", "")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/spread"));
    post(
            "\"spread\":{\"kind\":\"polygon\",\"corners\":[{\"x\":0,\"y\":0},{\"x\":1,\"y\":1},"
                + "{\"x\":1,\"y\":0},{\"x\":0,\"y\":1}]}",
            "")
        .then()
        .statusCode(400)
        .body("errors[0].detail", containsString("cross"));
    post("\"release\":{\"x\":0,\"y\":0},\"spread\":{\"kind\":\"square\"}", "")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/spread/kind"));
    post(DISC + ",\"colour\":1", "").then().statusCode(400);
    post(DISC + ",\"counts\":[{\"label\":\"Harbour\",\"count\":3}]", "")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/counts/0/label"))
        .body("errors[0].detail", containsString("Tide"));
  }

  @Test
  void whatCostsTooMuchIsRefusedWithWhatWouldNot() {
    Response refused = post(DISC + ",\"width\":0.001", "");
    refused
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors[0].pointer", equalTo("/width"));
    String detail = refused.path("errors[0].detail");
    String enough = detail.substring(detail.lastIndexOf(' ') + 1);
    post(DISC + ",\"width\":" + enough, "&dry-run=true").then().statusCode(200);
  }

  @Test
  void limitsAreStated() {
    SERVICE
        .given()
        .get("/v1/limits")
        .then()
        .body("limits.find { it.name == 'oddsReleases' }.value", equalTo(200_000))
        .body("limits.find { it.name == 'oddsRigs' }.value", equalTo(64));
  }

  @Test
  void layoutLinksToItsOdds() {
    String id = layout();
    SERVICE
        .given()
        .get("/v1/layouts/" + id)
        .then()
        .body("links.odds", equalTo("/v1/layouts/" + id + "/odds"));
  }
}
