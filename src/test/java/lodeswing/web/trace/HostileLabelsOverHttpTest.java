package lodeswing.web.trace;

import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.matchesPattern;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import tools.jackson.databind.json.JsonMapper;

/** Labels and titles that would be more than text where a form took them for it. */
class HostileLabelsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String PLANE =
      "{\"model\":\"textbook\",\"title\":%s,\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,"
          + "\"magnets\":[{\"x\":0.57735,\"y\":0,\"label\":%s},"
          + "{\"x\":-0.28868,\"y\":0.5},{\"x\":-0.28868,\"y\":-0.5}]}";

  private static String quoted(String text) {
    return JsonMapper.shared().writeValueAsString(text);
  }

  private static Response store(String label) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body(PLANE.formatted(quoted(label), quoted(label)))
        .post("/v1/layouts");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+A1",
        "-2+3",
        "@SUM(A1:A9)",
        "=HYPERLINK(\"x\",\"y\")",
        "a\",\"b",
        "a,b;c",
        "'single'",
        "<b>bold</b>&amp;",
        "</text><script>alert(1)</script>",
        "]]><x/>",
        "\u202Eevil\u202C",
        "\u200F\u061Cmarks",
        "Grüße 🌊"
      })
  void labelStaysTextInJsonCsvAndSvg(String label) throws Exception {
    String layout = "/v1/layouts/" + store(label).<String>path("layoutId");

    SERVICE
        .given()
        .get(layout + "/rest-points")
        .then()
        .statusCode(200)
        .body("restPoints.label", hasItem(label));

    String csv = SERVICE.given().get(layout + "/rest-points?format=csv").asString();
    List<List<String>> rows = rows(csv);
    for (List<String> row : rows) {
      assertEquals(rows.get(0).size(), row.size(), csv);
    }
    String name = rows.get(1).get(1);
    assertTrue(name.endsWith(label), csv);
    assertTrue("=+-@\t\r".indexOf(name.charAt(0)) < 0, csv);

    String trace = layout + "/trace?x=0.6&y=0&durationS=10&format=svg";
    byte[] svg = SERVICE.given().get(trace).asByteArray();
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg));
    var all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      String tag = ((Element) all.item(i)).getTagName();
      assertFalse(List.of("script", "b", "x", "a", "foreignObject").contains(tag), tag);
    }
    assertFalse(document.getDocumentElement().getTextContent().contains("\u202E"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "two\nlines",
        "tab\tbed",
        "bell\u0007",
        "line\u2028end",
        "",
        " ",
        "\u00A0\u2003",
        "\u200B"
      })
  void labelOfMoreThanOneLineOrOfNothingIsRefused(String label) {
    store(label)
        .then()
        .statusCode(400)
        .body("errors.pointer", hasItem("/magnets/0/label"))
        .body("errors.pointer", hasItem("/title"));
  }

  @Test
  void problemThatRepeatsALabelIsStillOneLine() {
    String answer =
        SERVICE
            .given()
            .contentType("application/json")
            .body(PLANE.formatted(quoted("x"), quoted("=x\n,;\"").replace("\"=", "\"=")))
            .post("/v1/layouts?errors=inline")
            .asString();
    assertTrue(answer.startsWith("ERROR "), answer);
    assertFalse(answer.contains("\n") || answer.contains(",") || answer.contains(";"), answer);
  }

  /** Rows of RFC 4180. */
  private static List<List<String>> rows(String csv) {
    var rows = new ArrayList<List<String>>();
    var row = new ArrayList<String>();
    var cell = new StringBuilder();
    boolean inside = false;
    for (int i = 0; i < csv.length(); i++) {
      char c = csv.charAt(i);
      if (c == '"') {
        boolean pair = inside && i + 1 < csv.length() && csv.charAt(i + 1) == '"';
        if (pair) {
          cell.append('"');
          i++;
        } else {
          inside = !inside;
        }
      } else if (!inside && (c == ',' || c == '\n')) {
        row.add(cell.toString());
        cell.setLength(0);
        if (c == '\n') {
          rows.add(List.copyOf(row));
          row.clear();
        }
      } else if (inside || c != '\r') {
        cell.append(c);
      }
    }
    return rows;
  }

  @Test
  void blankLabelIsRefusedInPlainWords() {
    store("   ")
        .then()
        .statusCode(400)
        .body("errors.detail", hasItem(endsWith("characters, not blank")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {"=1+1|'=1+1", "@SUM(A1:A9)|'@SUM(A1:A9)", "a,b;c|a -b -c", "say \"x\"|say 'x'"})
  void labelAloneIsSafeInACell(String label, String cell) {
    String layout = "/v1/layouts/" + store(label).<String>path("layoutId");
    String release = "/outcome?x=0.57735&y=0.01";

    assertEquals(cell, SERVICE.given().get(layout + release + "&format=text&wait=60").asString());
    SERVICE.given().get(layout + release).then().body("outcome.label", equalTo(label));
    SERVICE.given().get(layout + release + "&value=sure").then().body(equalTo("true"));

    String legend = layout + "/basin?wait=60&halfWidth=2";
    String basin = SERVICE.given().get(legend).path("links.self");
    String words = SERVICE.given().get(basin + "/legend?format=text").asString();
    assertTrue(words.contains(cell + ": "), words);
    assertFalse(words.contains(",") || words.contains(";"), words);
    SERVICE
        .given()
        .queryParam("outcome", cell)
        .get(layout + "/basin/summary?halfWidth=2&side=64&value=share&wait=60")
        .then()
        .statusCode(200)
        .body(matchesPattern("0\\.\\d+"));
  }

  @Test
  void namesOfAlikeLabelsHoldNoComma() {
    String twice =
        PLANE
            .formatted(quoted("two"), quoted("A"))
            .replace("\"y\":0.5}", "\"y\":0.5,\"label\":\"A\"}");
    String id =
        SERVICE
            .given()
            .contentType("application/json")
            .body(twice)
            .post("/v1/layouts")
            .path("layoutId");

    SERVICE
        .given()
        .get("/v1/layouts/" + id + "/outcome?x=0.57735&y=0.01&format=text&wait=60")
        .then()
        .body(matchesPattern("A at x=0\\.\\d\\d y=-?0\\.\\d\\d"));
  }
}
