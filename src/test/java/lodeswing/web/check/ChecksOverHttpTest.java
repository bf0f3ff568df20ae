package lodeswing.web.check;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Checks over HTTP, as a teacher's sheet and a course site ask for them. */
class ChecksOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static Response get(String path) {
    return SERVICE.given().urlEncodingEnabled(false).get(path);
  }

  private static String id(String name) {
    return get("/v1/sample-layouts/" + name + "?format=text").asString();
  }

  private static String check(String name, String query) {
    return "/v1/layouts/" + id(name) + "/check?wait=60" + query;
  }

  private static JsonNode read(String path) {
    return JsonMapper.shared().readTree(get(path).asByteArray());
  }

  private static JsonNode line(JsonNode document, String code) {
    for (JsonNode line : document.path("lines")) {
      if (line.path("code").asString().equals(code)) {
        return line;
      }
    }
    throw new AssertionError("no line " + code + " in " + document);
  }

  private static List<String> texts(JsonNode list, String member) {
    List<String> texts = new ArrayList<>();
    list.forEach(node -> texts.add(node.path(member).asString()));
    return texts;
  }

  @Test
  void everyLineHasAFigureALimitAVerdictAndAReason() {
    JsonNode document = read(check("three-stations", ""));
    assertEquals(17, document.path("lines").size());
    for (JsonNode line : document.path("lines")) {
      String verdict = line.path("verdict").asString();
      assertTrue(Set.of("good", "watch", "unknown").contains(verdict), line.toString());
      boolean judged = !verdict.equals("unknown");
      assertEquals(judged, line.has("limit"), line.toString());
      assertEquals(judged, !line.has("needs"), line.toString());
      assertTrue(!judged || line.has("figure"), line.toString());
      assertTrue(line.path("reason").asString().endsWith("."), line.toString());
    }
    assertEquals("unknown", document.path("verdict").asString());
    assertEquals(1.3003, document.at("/periodsS/0").doubleValue(), 1e-3);
    assertEquals(45, document.path("massG").doubleValue());
  }

  @Test
  void whatIsMissingIsNamedAndMakesTheLineKnown() {
    JsonNode missing = line(read(check("three-stations", "")), "hook-load");
    assertEquals("unknown", missing.path("verdict").asString());
    assertEquals("/hook/ratedLoadN", missing.at("/needs/0").asString());
    String told =
        "&hook.ratedLoadN=20&hook.depthMm=5&hook.openingMm=10&plate.shape=round&plate.widthMm=200"
            + "&plate.fixing=fixed&stand.baseMm=300&stand.tiltDeg=0";
    JsonNode known = read(check("three-stations", told));
    assertEquals("good", known.path("verdict").asString(), known.path("sentence").asString());
    assertEquals("All lines are good.", known.path("sentence").asString());
  }

  @Test
  void tableAndCellsHoldWhatTheDocumentHolds() {
    String address = check("paper-triangle", "");
    JsonNode document = read(address);
    String[] rows = get(address + "&format=csv").asString().split("\r\n");
    assertEquals(
        "code,verdict,figure,limit,unit,change_pointer,change_from,change_to,reason", rows[0]);
    assertEquals(document.path("lines").size() + 1, rows.length);
    int row = 1;
    for (JsonNode line : document.path("lines")) {
      String[] cells = rows[row++].split(",");
      assertEquals(line.path("code").asString(), cells[0]);
      assertEquals(line.path("verdict").asString(), cells[1]);
      double figure = line.path("figure").doubleValue();
      assertEquals(figure, Double.parseDouble(cells[2]), 1e-5 * Math.abs(figure));
    }
    String cell = address + "&line=swings-before-rest&value=";
    JsonNode swings = line(document, "swings-before-rest");
    assertEquals(
        swings.path("figure").doubleValue(), Double.parseDouble(get(cell + "figure").asString()));
    get(cell + "verdict").then().body(equalTo(swings.path("verdict").asString()));
    get(cell + "pointer").then().body(equalTo("/drag"));
    get(cell + "to&decimal=comma").then().body(containsString(","));
    get(cell + "change").then().body(startsWith("Set drag to "));
    get(address + "&value=verdict").then().body(equalTo(document.path("verdict").asString()));
    get(address + "&format=cbor").then().statusCode(200).contentType("application/cbor");
  }

  @Test
  void variantThatALineAsksForPassesIt() {
    JsonNode line = line(read(check("paper-triangle", "")), "swings-before-rest");
    assertEquals("watch", line.path("verdict").asString());
    String mended = get(line.at("/change/variant").asString() + "&format=text").asString();
    JsonNode after = read("/v1/layouts/" + mended + "/check?wait=60");
    assertEquals("good", line(after, "swings-before-rest").path("verdict").asString());
  }

  @Test
  void barHasItsPartsListedWithMassesThatAddUp() {
    JsonNode document = read(check("kitchen-drawer", ""));
    JsonNode parts = document.path("parts");
    assertEquals(6, parts.size());
    assertEquals("/pendulum/parts/0", parts.at("/0/pointer").asString());
    assertEquals(6, parts.at("/0/massG").doubleValue());
    assertTrue(parts.at("/0/weighed").booleanValue());
    assertEquals(3, parts.at("/5/count").intValue());
    double sum = 0;
    for (int i = 0; i < 5; i++) {
      sum += parts.get(i).path("massG").doubleValue();
    }
    assertEquals(document.path("massG").doubleValue(), sum, 0.01);
  }

  @Test
  void textbookLayoutHasTheLinesThatMakeSense() {
    JsonNode document = read(check("paper-triangle", ""));
    assertEquals(
        List.of(
            "pull-against-weight",
            "pull-against-slowing",
            "swings-before-rest",
            "labels-without-well",
            "wells-without-label",
            "two-tries-differ"),
        texts(document.path("lines"), "code"));
    get(check("paper-triangle", "&line=hook-depth&value=figure"))
        .then()
        .statusCode(400)
        .body(startsWith("ERROR "));
    get(check("paper-triangle", "&line=hook-depth"))
        .then()
        .statusCode(400)
        .body("errors.detail", hasItem(containsString("two-tries-differ")));
  }

  @Test
  void labelsChangeWordsAndNoFigure() {
    JsonNode one = read(check("paper-triangle", ""));
    JsonNode other = read(check("paper-triangle", "&magnet.1.label=Harbour"));
    assertEquals(texts(one.path("lines"), "figure"), texts(other.path("lines"), "figure"));
    assertFalse(one.toString().contains("Harbour"));
    assertTrue(other.toString().contains("Harbour"));
  }

  @Test
  void faultsAreToldWithWhatWouldDo() {
    get(check("paper-triangle", "&radius=-1&lin=x"))
        .then()
        .statusCode(400)
        .body("errors.pointer", hasItem("?radius"))
        .body("errors.detail", hasItem(containsString("line")));
    get(check("paper-triangle", "&line=stick"))
        .then()
        .statusCode(400)
        .body("errors.detail", hasItem(containsString("sticking")));
    get(check("paper-triangle", "&value=figure&format=json"))
        .then()
        .statusCode(400)
        .body("errors.pointer", hasItem("?line"));
    get("/v1/layouts/lay-none/check").then().statusCode(404);
    get(check("paper-triangle", "&format=png")).then().statusCode(406);
    get(check("three-stations", "&gapMm=2")).then().statusCode(422);
  }

  /** Ids of layouts that say nothing of fixing, rated load and masses are what they were. */
  @Test
  void newMembersLeaveTheIdsOfLayoutsWithoutThem() {
    assertEquals("lay-gml5i43zz5an5xumg2vdiia3iz", id("three-stations"));
    JsonNode layout = read("/v1/layouts/" + id("three-stations"));
    assertFalse(layout.at("/layout/magnets/0").has("massG"));
    assertTrue(layout.at("/links/check").asString().endsWith("/check"));
  }
}
