package lodeswing.web.safety;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.List;
import lodeswing.RunningService;
import lodeswing.words.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Safety notes over HTTP: documents, languages, lines, tables, pages, cells and what is left out.
 */
class SafetyNotesOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String BOB =
      "\"bobMagnet\":{\"shape\":\"disc\",\"diameterMm\":15,\"heightMm\":5,\"grade\":\"N35\","
          + "\"poleDown\":\"north\"},";

  private static String rig(String bob, String magnets, String more) {
    return "{\"model\":\"bench\",\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":420,\"bobMassG\":45},"
        + bob
        + "\"gapMm\":25,\"damping\":{\"swingsToHalf\":8},\"magnets\":["
        + magnets
        + "]"
        + more
        + "}";
  }

  private static String notes(String layout) {
    String id =
        SERVICE
            .given()
            .contentType("application/json")
            .body(layout)
            .post("/v1/layouts")
            .then()
            .statusCode(201)
            .extract()
            .path("layoutId");
    return "/v1/layouts/" + id + "/safety-notes";
  }

  private static String sample(String name) {
    String id = SERVICE.given().get("/v1/sample-layouts/" + name + "?format=text").asString();
    return "/v1/layouts/" + id + "/safety-notes";
  }

  @Test
  void documentHasEachCautionWithFiguresLimitAndSource() {
    Response answer = SERVICE.given().get(sample("three-stations"));
    answer
        .then()
        .statusCode(200)
        .header("Content-Language", "en")
        .header("Vary", containsString("Accept"))
        .body("severity", equalTo("danger"))
        .body(
            "notes.code",
            equalTo(
                List.of(
                    "swallowing",
                    "pinching",
                    "splinters",
                    "implants",
                    "cards-and-watches",
                    "swinging-bob",
                    "support",
                    "fixing",
                    "storage-and-transport")))
        .body("notes[0].limits[0].figure", equalTo("fluxIndexKilogaussSquareMm2"))
        .body("notes[0].limits[0].value", equalTo(50))
        .body("notes[3].limits[0].fieldMillitesla", equalTo(0.5f))
        .body("magnets", hasSize(2))
        .body("magnets[0].of", equalTo("/bobMagnet"))
        .body("magnets[1].of", equalTo("/magnets/0"))
        .body("magnets[1].count", equalTo(3))
        .body("magnets[1].names", equalTo("Tide, Dune, and Reef"))
        .body("magnets[0].smallPart", equalTo(true))
        .body("needs", equalTo(List.of("/audience/laser", "/audience/filings")))
        .body("deferral", containsString("trained staff"));
    // Worked out by hand: HandWorkedSafetyTest.
    assertEquals(2249.7, answer.<Float>path("magnets[0].fluxIndexKilogaussSquareMm2"), 22);
    assertEquals(496.3, answer.<Float>path("magnets[1].fluxIndexKilogaussSquareMm2"), 5);
    assertEquals(66.68, answer.<Float>path("magnets[0].distanceToHalfMilliteslaMm"), 0.1);
    assertEquals(48.58, answer.<Float>path("magnets[0].pinchForceN"), 0.1);
    for (String member : List.of("title", "text", "short", "rule", "source", "notCovered")) {
      assertTrue(answer.<List<String>>path("notes." + member).stream().noneMatch(String::isBlank));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lang=de | en | de | Gefahr: | 9,3\u00a0N",
        "lang=es | de | es | Peligro: | 9,3\u00a0N",
        "lang=es-MX | de | es-MX | Peligro: | 9.3\u00a0N",
        "cb=1 | de-AT, en;q=0.5 | de-AT | Gefahr: | 9,3\u00a0N",
        "lang=fr | de | en | Danger: | 9.3\u00a0N",
        "cb=1 | ja | en | Danger: | 9.3\u00a0N",
      })
  void languageIsThatOfTheAddressOrOfTheReader(
      String query, String accepted, String language, String begin, String figure) {
    String full =
        SERVICE
            .given()
            .header("Accept-Language", accepted)
            .get(sample("three-stations") + "?format=text&" + query)
            .then()
            .statusCode(200)
            .header("Content-Language", language)
            .extract()
            .asString();
    assertTrue(full.contains(figure), full);
    Response lines =
        SERVICE
            .given()
            .header("Accept-Language", accepted)
            .get(sample("three-stations") + "?format=text&short=true&" + query);
    assertTrue(lines.asString().startsWith(begin), lines.asString());
    boolean byReader = query.startsWith("cb");
    assertEquals(
        byReader, lines.headers().getValues("Vary").toString().contains("Accept-Language"));
  }

  @Test
  void linesEndWithThoseToWhomTheyDefer() {
    String[] lines =
        SERVICE
            .given()
            .get(sample("three-stations") + "?format=text&short=true")
            .asString()
            .split("\n", -1);
    assertTrue(lines[0].startsWith("Danger: "));
    assertTrue(lines[lines.length - 2].contains("trained staff"));
    String whole = SERVICE.given().get(sample("three-stations") + "?format=text").asString();
    assertTrue(whole.strip().endsWith("is not thereby harmless."), whole);
  }

  /** Whatever is said of a rig, in whatever language: never that it is safe. */
  @ParameterizedTest
  @EnumSource(Language.class)
  void neverSaysThatAnythingIsSafe(Language language) {
    for (String name : List.of("three-stations", "quiet-plate", "heavy-bar", "paper-triangle")) {
      String whole =
          SERVICE.given().get(sample(name) + "?format=text&lang=" + language.tag()).asString();
      assertFalse(
          whole
              .toLowerCase(language.locale())
              .matches("(?s).*\\b(safe|safely|sicher|sichere|gefahrlos|segur[oa]s?)\\b.*"),
          whole);
    }
  }

  @Test
  void laserAndFilingsAreSpokenOfWhereTheyAreUsed() {
    String magnet =
        "{\"x\":45,\"y\":0,\"shape\":\"disc\",\"diameterMm\":25,\"heightMm\":5,\"grade\":\"Y30\","
            + "\"poleUp\":\"south\"}";
    SERVICE
        .given()
        .get(
            notes(
                rig(
                    BOB,
                    magnet,
                    ",\"audience\":{\"ageFrom\":11,\"laser\":true,\"filings\":true},"
                        + "\"plate\":{\"shape\":\"round\",\"widthMm\":300,\"fixing\":\"fixed\"}")))
        .then()
        .body("notes.code", hasItem("laser"))
        .body("notes.code", hasItem("filings"))
        .body("needs", equalTo(null))
        .body("notes[0].needs", equalTo(null))
        .body("notes[0].text", containsString("younger than 14"))
        .body("notes.find { it.code == 'laser' }.text", containsString("class 2"))
        .body("notes.find { it.code == 'fixing' }.text", startsWith("The bob lifts or presses"))
        .body("notes.find { it.code == 'fixing' }.text", containsString("are fixed"));
  }

  /**
   * A dipole has no face: no index, no gauge, no pull, and the notes say so; its reach is known.
   */
  @Test
  void dipolesHaveNoFaceAndTheNotesSaySo() {
    Response answer =
        SERVICE
            .given()
            .get(
                notes(
                    rig(
                        "\"bobMagnet\":{\"shape\":\"dipole\",\"momentAm2\":0.8,"
                            + "\"poleDown\":\"north\"},",
                        "{\"x\":45,\"y\":0,\"shape\":\"dipole\",\"momentAm2\":0.5,"
                            + "\"poleUp\":\"south\"}",
                        "")));
    answer
        .then()
        .statusCode(200)
        .body("notes[0].severity", equalTo("warning"))
        .body("notes[0].text", containsString("without a size"))
        .body("notes.code", not(hasItem("pinching")))
        .body("magnets[0].fluxIndexKilogaussSquareMm2", equalTo(null))
        .body("magnets[0].pinchForceN", equalTo(null))
        .body("warnings", equalTo(null));
    assertEquals(68.4, answer.<Float>path("magnets[0].distanceToHalfMilliteslaMm"), 0.1);
  }

  @Test
  void rigsWithoutMagnetsAndPlanesOnPaperAreAnswered() {
    SERVICE
        .given()
        .get(notes(rig("", "", "")))
        .then()
        .statusCode(200)
        .body("notes.code", equalTo(List.of("swinging-bob", "support")))
        .body("magnets", hasSize(0));
    SERVICE
        .given()
        .get(sample("paper-triangle") + "?lang=es")
        .then()
        .statusCode(200)
        .body("notes.code", equalTo(List.of("no-rig")))
        .body("severity", equalTo("note"))
        .body("deferral", containsString("personal formado"));
  }

  @Test
  void cellsAndTablesHoldTheFigures() {
    String url = sample("three-stations");
    assertEquals("danger", SERVICE.given().get(url + "?value=severity&lang=de").asString());
    assertEquals(
        "2249,7",
        SERVICE.given().get(url + "?value=fluxIndexKilogaussSquareMm2&decimal=comma").asString());
    assertEquals("none", SERVICE.given().get(sample("paper-triangle") + "?value=gripN").asString());
    String table = SERVICE.given().get(url + "?format=csv&lang=de").asString();
    assertTrue(table.startsWith("code,severity,figure,value,limit,text,source\r\n"), table);
    assertTrue(
        table.contains("swallowing,danger,fluxIndexKilogaussSquareMm2,2249.7,50,\"4 Magnete"));
    SERVICE.given().get(url + "?value=index").then().statusCode(400);
    SERVICE.given().get(url + "?shrot=true").then().statusCode(400);
    SERVICE.given().get("/v1/layouts/lay-none/safety-notes").then().statusCode(404);
  }

  @Test
  void labelsAndTitlesRunNowhere() {
    String magnet =
        "{\"x\":45,\"y\":0,\"shape\":\"disc\",\"diameterMm\":25,\"heightMm\":5,\"grade\":\"Y30\","
            + "\"poleUp\":\"south\",\"label\":\"=1+1<script>{magnets}\"}";
    String url =
        notes(rig(BOB, magnet, "").replace("{\"model\"", "{\"title\":\"=<b>{x\",\"model\""));
    String page = SERVICE.given().get(url + "?format=html&lang=de").asString();
    assertTrue(page.startsWith("<!doctype html>\n<html lang=\"de\">"), page);
    // A table that is wider than a narrow screen scrolls by itself; its heads say what they head.
    assertTrue(page.contains("class=\"scroll\" role=\"region\""), page);
    assertTrue(page.contains("<th scope=\"col\">") && page.contains("<th scope=\"row\""), page);
    assertTrue(page.contains("color-scheme:light dark") && page.contains("<main>"), page);
    assertTrue(page.contains("=1+1&lt;script&gt;{magnets}"), page);
    assertFalse(page.contains("<script>"), page);
    assertTrue(page.contains("Sicherheitshinweise: =&lt;b&gt;{x"), page);
    String text = SERVICE.given().get(url + "?format=text").asString();
    for (String line : text.split("\n", -1)) {
      assertFalse(line.startsWith("="), line);
    }
    assertTrue(
        SERVICE
            .given()
            .get(url + "?format=html&short=true&lang=es")
            .asString()
            .contains("<li>Peligro:"));
  }

  @Test
  void figuresOfTheLayoutMayBeChangedOnTheWay() {
    SERVICE
        .given()
        .get(sample("three-stations") + "?bobMagnet.diameterMm=40&bobMagnet.grade=N52&gapMm=40")
        .then()
        .statusCode(200)
        .body("magnets[0].smallPart", equalTo(false))
        .body("notes.find { it.code == 'pinching' }.severity", equalTo("danger"))
        .body("warnings.code", equalTo(List.of("swallowing-limit", "pinching-limit")));
  }
}
