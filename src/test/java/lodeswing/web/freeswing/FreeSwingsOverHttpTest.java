package lodeswing.web.freeswing;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.config.JsonPathConfig;
import io.restassured.path.json.config.JsonPathConfig.NumberReturnType;
import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.w3c.dom.Element;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.cbor.CBORMapper;

/** Free swings over HTTP, as a course site and a spreadsheet ask for them. */
class FreeSwingsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final JsonPathConfig DOUBLES = new JsonPathConfig(NumberReturnType.DOUBLE);

  private static Response get(String path) {
    return SERVICE.given().get(path);
  }

  private static String layout(String name) {
    return "/v1/layouts/" + get("/v1/sample-layouts/" + name + "?format=text").asString();
  }

  private static double number(Response answer, String path) {
    return answer.jsonPath(DOUBLES).getDouble(path);
  }

  private static Element svg(String path) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(get(path).asByteArray()))
        .getDocumentElement();
  }

  /** Leg 200 mm, drop 250 mm: 2 pi (0.2/9.80665)^(1/2) = 0.89729 s and (0.45/0.2)^(1/2) = 3/2. */
  @Test
  void aYCordSwingsTwoToThree() {
    Response answer = get(layout("y-cord") + "/free-swing?x=30&y=20");
    answer
        .then()
        .statusCode(200)
        .body("figure.ratio", equalTo("2:3"))
        .body("figure.formsAfterS", nullValue())
        .body("precession", nullValue())
        .body("magnets", nullValue())
        .body("nearestRatios.ratio", hasItem("1:1"))
        .body("sentence", containsString("2 swings along y to 3 along x"));
    assertEquals(0.89729, number(answer, "periods.x.smallS"), 1e-5);
    assertEquals(1.5 * 0.8972935, number(answer, "periods.y.smallS"), 1e-6);
    assertEquals(2.0 / 3, number(answer, "ratio"), 1e-9);
    assertEquals(3 * 0.8972935, number(answer, "figure.closesAfterS"), 1e-6);
    // 30 swings to half, as the layout says
    assertEquals(30, number(answer, "decay.x.swingsToHalf"), 1e-6);
    assertEquals(30 * 0.8972935, number(answer, "decay.halvedAtS"), 0.1);
    assertTrue(number(answer, "periods.x.atReleaseS") > number(answer, "periods.x.smallS"));
    assertTrue(number(answer, "widest") > 10);
  }

  @Test
  void selfKeepsAllThatWasAskedAndTellsTheSame() {
    String query = "x=30&y=-20.5&vx=10&vy=-5&durationS=8&within=4&secondPath=true&gapMm=27&wait=60";
    Response asked = get(layout("y-cord") + "/free-swing?" + query);
    asked.then().statusCode(200);
    String self = asked.jsonPath().getString("links.self");
    for (String part :
        List.of(
            "x=30", "y=-20.5", "vx=10", "vy=-5", "durationS=8", "within=4", "secondPath=true")) {
      assertTrue(self.contains(part), self);
    }
    assertEquals(asked.asString(), get(self + "&wait=60").asString());
    // the figure of the layout that the query changed is in the layout's own id
    assertFalse(self.startsWith(layout("y-cord")), self);
    get(asked.jsonPath().getString("links.layout"))
        .then()
        .statusCode(200)
        .body("layout.gapMm", equalTo(27));
    for (String link : List.of("picture", "csv", "design", "trace")) {
      assertEquals(200, get(asked.jsonPath().getString("links." + link)).statusCode(), link);
    }
  }

  @Test
  void straightLineStaysStraightOnACordAndOpensOnAYCord() {
    assertEquals(0, number(get(layout("quiet-plate") + "/free-swing?x=60&y=30"), "widest"), 1e-6);
    Response open = get(layout("quiet-plate") + "/free-swing?x=60&y=30&vx=-50&vy=80");
    assertTrue(number(open, "widest") > 10);
    assertTrue(number(get(layout("y-cord") + "/free-swing?x=60&y=30"), "widest") > 20);
  }

  /** 3/8 omega a b / l^2 by hand: l 0.5 m, a b = (x vy - y vx)/omega = 0.05 x 0.1/4.4287 m^2. */
  @Test
  void roundRigTurnsItsEllipseByAirysRate() {
    String swing = layout("quiet-plate") + "/free-swing?x=50&y=0&vx=0&vy=100";
    Response answer = get(swing);
    double expected = Math.toDegrees(3.0 / 8 * 0.05 * 0.1 / 0.25);
    assertEquals(expected, number(answer, "precession.degPerS"), 1e-6);
    answer.then().body("precession.source", containsString("Airy"));
    answer.then().body("sentence", containsString("anticlockwise"));
    get(swing.replace("vy=100", "vy=-100"))
        .then()
        .body("sentence", containsString(" clockwise at first"));
    // the area a b falls as the energy does: in all rate/gamma, gamma = 2 ln 2/(40 T)
    double gamma = 2 * Math.log(2) / (40 * 1.4187456);
    assertEquals(expected / gamma, number(answer, "precession.degInAll"), 1e-4);
  }

  @Test
  void textbookLayoutAnswersInItsOwnUnits() {
    Response answer = get(layout("paper-triangle") + "/free-swing");
    answer
        .then()
        .statusCode(200)
        .body("units.time", equalTo("1"))
        .body("figure.ratio", equalTo("1:1"))
        .body("notes", hasItem(containsString("one frequency")));
    assertEquals(1, number(answer, "ratio"), 0);
    assertEquals(0, number(answer, "precession.degPerS"), 0);
    assertEquals(2 * Math.PI / 0.5, number(answer, "periods.y.smallS"), 1e-8);
    assertEquals(2.5, number(answer, "decay.y.qualityFactor"), 1e-9);
  }

  /** Friction and drag have no rate, but the exact motion tells when a half is left. */
  @Test
  void barWithFrictionIsFollowedUntilAHalfIsLeft() {
    Response answer = get(layout("heavy-bar") + "/free-swing?wait=60");
    answer
        .then()
        .statusCode(200)
        .body("decay.x", nullValue())
        .body("periods.x.withLossS", nullValue())
        .body("figure.formsAfterS", notNullValue())
        .body("precession", nullValue());
    assertTrue(number(answer, "decay.halvedAtS") > 60);
    String strong = "/free-swing?wait=60&pivotTorqueNm=0.05&x=40&y=0";
    Response held = get(layout("heavy-bar") + strong);
    assertTrue(number(held, "decay.halvedAtS") < 30, held.asString());
  }

  @Test
  void nearMagnetsPartThePathSoonerAndTheSecondPathIsDrawn() throws Exception {
    String far = layout("three-stations") + "/free-swing?x=90&y=60&gapMm=60&wait=60";
    Response near = get(far + "&within=1");
    near.then().body("magnets.sure", equalTo(true)).body("magnets.within", equalTo(1));
    double parted = number(near, "magnets.partedAtS");
    double later = number(get(far + "&within=5"), "magnets.partedAtS");
    assertTrue(later > parted);
    Response strong = get(far.replace("gapMm=60", "gapMm=25") + "&within=5");
    assertTrue(number(strong, "magnets.partedAtS") < later);
    assertEquals(parted, Double.parseDouble(get(far + "&within=1&value=partedAtS").asString()), 0);
    // the traces of both tell the same place: the trace among magnets is 1 mm from the free one
    assertEquals(1, apart(parted), 2e-3);
    Element drawn = svg(far + "&secondPath=true&format=svg");
    String text = drawn.getElementsByTagName("desc").item(0).getTextContent();
    assertTrue(text.contains("Among its magnets it keeps within 5 mm"), text);
    assertTrue(text.contains("Tide"), text);
  }

  /**
   * Distance of the bob's places at a time, by two traces: among the magnets and on a bare plate.
   */
  private static double apart(double time) {
    String trace =
        "/trace?x=90&y=60&gapMm=60&wait=60&durationS=" + time + "&sampleIntervalS=" + time;
    Response among = get(layout("three-stations") + trace);
    String bare =
        SERVICE
            .given()
            .contentType("application/json")
            .body(
                get(layout("three-stations"))
                    .jsonPath()
                    .prettify()
                    .replaceAll("(?s)^.*?\n    \"layout\": (\\{.*?\n    \\}).*$", "$1")
                    .replaceAll("(?s)\"magnets\": \\[.*?\\]", "\"magnets\": []"))
            .post("/v1/layouts")
            .jsonPath()
            .getString("layoutId");
    Response free = get("/v1/layouts/" + bare + trace);
    return Math.hypot(
        number(among, "samples.x[1]") - number(free, "samples.x[1]"),
        number(among, "samples.y[1]") - number(free, "samples.y[1]"));
  }

  @Test
  void pathWithoutAnyMagnetsNeverParts() {
    String swing = layout("quiet-plate") + "/free-swing?x=60&y=20&vx=5&vy=40&wait=60";
    get(swing + "&within=0.01")
        .then()
        .body("magnets.partedAtS", nullValue())
        .body("magnets.sure", equalTo(true))
        .body("sentence", containsString("all the time"));
    assertEquals("not reached", get(swing + "&within=1&value=partedAtS").asString());
  }

  @Test
  void pictureSaysTheResultInItsAlternativeTextAndThatItIsWithoutMagnets() throws Exception {
    Element svg = svg(layout("y-cord") + "/free-swing?format=svg");
    String title = svg.getElementsByTagName("title").item(0).getTextContent();
    String text = svg.getElementsByTagName("desc").item(0).getTextContent();
    assertTrue(title.endsWith("free swing, without magnets"), title);
    assertTrue(text.contains("2 swings along y to 3 along x"), text);
    assertTrue(text.contains("closes after 2.69 s"), text);
    assertFalse(text.contains("Tide"), text);
    byte[] png = get(layout("y-cord") + "/free-swing?format=png&pixels=500").asByteArray();
    assertEquals(500, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
  }

  @Test
  void cellsAndTablesTellSingleValues() {
    String swing = layout("y-cord") + "/free-swing";
    assertEquals("0.897293514", get(swing + "?value=periodXS").asString());
    assertEquals("0,897293514", get(swing + "?value=periodXS&decimal=comma&cb=7").asString());
    // no colon: a sheet would read a time of day
    assertEquals("2 to 3", get(swing + "?value=figure").asString());
    assertEquals("none", get(swing + "?value=formsAfterS").asString());
    assertEquals("none", get(swing + "?value=precessionDegPerS").asString());
    Response sentence = get(swing + "?format=text&lang=en");
    assertTrue(sentence.asString().startsWith("Without its magnets"), sentence.asString());
    assertTrue(sentence.contentType().startsWith("text/plain"));
    String csv = get(swing + "?format=csv&decimal=comma&bom=true").asString();
    assertTrue(csv.startsWith("\ufeffperiod_x_s;period_y_s;ratio;"), csv);
    assertTrue(csv.contains("\r\n0,897293514;1,345940271;"), csv);
    String plain = get(layout("paper-triangle") + "/free-swing?format=csv").asString();
    assertTrue(plain.startsWith("period_x,period_y,ratio,"), plain);
    byte[] cbor = get(swing + "?format=cbor").asByteArray();
    assertEquals(
        JsonMapper.shared().readTree(get(swing).asByteArray()),
        JsonMapper.shared().readTree(CBORMapper.shared().readTree(cbor).toString()));
    assertArrayEquals(get(swing).asByteArray(), get(swing).asByteArray());
  }

  @Test
  void whatIsWrongIsToldWithItsName() {
    String swing = layout("y-cord") + "/free-swing";
    get(swing + "?x=5").then().statusCode(400).body("errors.pointer", hasItem("?y"));
    get(swing + "?withinn=5&secondPath=maybe")
        .then()
        .statusCode(400)
        .body("code", equalTo("unknown-parameter"))
        .body("errors.pointer", hasItem("?withinn"))
        .body("errors.pointer", hasItem("?secondPath"))
        .body("errors.detail", hasItem(containsString("within")));
    get(swing + "?x=199&y=0").then().statusCode(422).body("code", equalTo("impossible-release"));
    // beyond |tan beta| = 150/250 one of the upper cords would have to push
    get(swing + "?x=110&y=0")
        .then()
        .statusCode(422)
        .body("errors.detail", hasItem(containsString("slack")));
    get(swing + "?durationS=1e5").then().statusCode(422).body("code", equalTo("too-costly"));
    get(swing + "?within=0").then().statusCode(400);
    get("/v1/layouts/lay-aaaaaaaaaaaaaaaaaaaaaaaaaa/free-swing").then().statusCode(404);
    String inline = get(swing + "?x=110&y=0&format=text&errors=inline").asString();
    assertTrue(inline.startsWith("ERROR "), inline);
    get(swing + "?format=pdf").then().statusCode(406);
  }

  @Test
  void layoutsLeadToTheirFreeSwing() {
    String self = layout("y-cord");
    get(self)
        .then()
        .body("links.freeSwing", equalTo(self + "/free-swing"))
        .body("links.freeSwingDesign", equalTo(self + "/free-swing/design"));
  }

  @Test
  void answerIsKeptAndComesWithATag() {
    String swing = layout("y-cord") + "/free-swing?x=31&y=17";
    Response first = get(swing);
    Response second = get(swing);
    assertTrue(second.header("Cache-Status").contains("hit"), second.header("Cache-Status"));
    second.then().header("Cache-Control", containsString("max-age=300"));
    assertEquals(
        304, SERVICE.given().header("If-None-Match", first.header("ETag")).get(swing).statusCode());
  }

  /** Leg 200 mm: 2:3 needs a drop of 250 mm, 3:4 one of 200 (16/9 - 1) = 155.556 mm. */
  @Test
  void designTellsDropAndLegOfAYCord() {
    String design = layout("y-cord") + "/free-swing/design?ratio=";
    assertEquals("250", get(design + "2:3&value=yokeDropMm").asString());
    assertEquals("155,556", get(design + "3/4&value=yokeDropMm&decimal=comma").asString());
    assertEquals("200", get(design + "3:4&value=legMm").asString());
    assertEquals("none", get(design + "3:4&value=hookOffsetMm").asString());
    // the height of 450 mm kept: a leg of 9/16 of it
    assertEquals("253.125", get(design + "3:4&keep=height&value=legMm").asString());
    // 2 x 450/(80 x 6) mm of the drop
    assertEquals("1.875", get(design + "4:6&value=yokeDropHandMm").asString());
    Response all = get(design + "3:4");
    all.then()
        .statusCode(200)
        .body("designs.keeps", equalTo(List.of("leg", "height")))
        .body("links.self", equalTo(layout("y-cord") + "/free-swing/design?ratio=3:4"));
    String csv = get(design + "3:4&format=csv").asString();
    assertTrue(csv.startsWith("keeps,yoke_drop_mm,leg_mm,hook_offset_mm,"), csv);
    assertEquals(3, csv.lines().count());
    get(design + "3:4&keep=height")
        .then()
        .body("designs.keeps", equalTo(List.of("height")))
        .body("links.self", startsWith(layout("y-cord") + "/free-swing/design?ratio=3:4&keep="));
  }

  @Test
  void designedLayoutSwingsAsItWasWanted() {
    for (String name : List.of("y-cord", "three-stations", "heavy-bar")) {
      String ratio = name.equals("heavy-bar") ? "9:10" : "4:5";
      Response designs = get(layout(name) + "/free-swing/design?ratio=" + ratio);
      designs.then().statusCode(200);
      List<String> links = designs.jsonPath().getList("designs.links.freeSwing");
      assertFalse(links.isEmpty());
      for (String link : links) {
        Response swing = get(link + "?wait=60");
        swing.then().body("figure.ratio", equalTo(ratio));
        String[] numbers = ratio.split(":");
        assertEquals(
            Double.parseDouble(numbers[0]) / Double.parseDouble(numbers[1]),
            number(swing, "ratio"),
            1e-5);
      }
    }
  }

  @Test
  void cordBecomesAYCordOfTheSameHeight() {
    Response answer = get(layout("three-stations") + "/free-swing/design?ratio=2:3");
    assertEquals(420 * 4.0 / 9, number(answer, "designs[0].pendulum.legMm"), 1e-3);
    assertEquals(420 * 5.0 / 9, number(answer, "designs[0].pendulum.yokeDropMm"), 1e-3);
    answer
        .then()
        .body("designs[0].wholeMillimetres.yokeDropMm", equalTo(233))
        .body("designs[0].wholeMillimetres.legMm", equalTo(187))
        .body("designs[0].wholeMillimetres.formsAfterS", notNullValue());
  }

  @Test
  void ratiosThatCannotBeAreRefusedWithTheReason() {
    get(layout("y-cord") + "/free-swing/design?ratio=3:2")
        .then()
        .statusCode(422)
        .body("code", equalTo("unreachable-ratio"))
        .body("errors.detail", hasItem(containsString("other way round")));
    get(layout("three-stations") + "/free-swing/design?ratio=1:1")
        .then()
        .statusCode(422)
        .body("errors.detail", hasItem(containsString("single cord")));
    get(layout("heavy-bar") + "/free-swing/design?ratio=2:1")
        .then()
        .statusCode(422)
        .body("errors.detail", hasItem(containsString("at most ")));
    get(layout("heavy-bar") + "/free-swing/design?ratio=1:12")
        .then()
        .statusCode(422)
        .body("errors.detail", hasItem(containsString("500")));
    get(layout("paper-triangle") + "/free-swing/design?ratio=2:3")
        .then()
        .statusCode(422)
        .body("detail", containsString("one frequency"));
    get(layout("y-cord") + "/free-swing/design?ratio=2:3&keep=bar").then().statusCode(422);
    for (String bad : List.of("2", "2:0", "13:2", "2:3:4", "a:b", "-2:3", "")) {
      get(layout("y-cord") + "/free-swing/design?ratio=" + bad)
          .then()
          .statusCode(400)
          .body("errors.pointer", hasItem("?ratio"));
    }
    get(layout("y-cord") + "/free-swing/design").then().statusCode(400);
    get(layout("y-cord") + "/free-swing/design?ratio=2:3&x=4")
        .then()
        .statusCode(400)
        .body("code", equalTo("unknown-parameter"));
    get("/problems/unreachable-ratio").then().statusCode(200);
  }

  /** A job that outlives its request is made again from its words alone. */
  @Test
  void pendingAnswerBecomesTheSameResult() throws InterruptedException {
    String swing = layout("kitchen-drawer") + "/free-swing?x=33&y=21&within=3";
    Response pending = SERVICE.given().header("Prefer", "respond-async").get(swing);
    pending.then().statusCode(202);
    String job = pending.header("Location");
    for (int i = 0; i < 600 && !get(job).jsonPath().getString("state").equals("done"); i++) {
      Thread.sleep(100);
    }
    Response job0 = get(job);
    job0.then().body("state", equalTo("done"));
    assertEquals(get(swing).asString(), get(job0.jsonPath().getString("resultUrl")).asString());
    get(swing).then().body("magnets.within", equalTo(3));
  }
}
