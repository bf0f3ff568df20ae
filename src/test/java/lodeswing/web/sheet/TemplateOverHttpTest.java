package lodeswing.web.sheet;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.http.ContentType;
import java.io.ByteArrayInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import lodeswing.RunningService;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class TemplateOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static String sheet(String sample) {
    return "/v1/layouts/"
        + SERVICE.given().get("/v1/sample-layouts/" + sample).path("layoutId")
        + "/template";
  }

  @Test
  void everySampleOnTheBenchHasASheet() throws Exception {
    for (String sample : new String[] {"three-stations", "heavy-bar", "y-cord", "quiet-plate"}) {
      byte[] pdf =
          SERVICE
              .given()
              .get(sheet(sample) + "?lang=es")
              .then()
              .statusCode(200)
              .contentType("application/pdf")
              .header("Content-Language", "es")
              .header("Cache-Control", containsString("max-age=300"))
              .extract()
              .asByteArray();
      try (var document = Loader.loadPDF(pdf)) {
        String text = new PDFTextStripper().getText(document);
        assertTrue(text.contains("100 mm"), text);
        assertTrue(text.contains("Piezas"), text);
      }
    }
  }

  @Test
  void samePagesSameBytes() {
    String sheet = sheet("crowded-shelf");
    assertArrayEquals(
        SERVICE.given().get(sheet).asByteArray(), SERVICE.given().get(sheet).asByteArray());
  }

  @Test
  void aPageComesAsSvgOfTheSizeOfItsPaper() throws Exception {
    byte[] svg =
        SERVICE
            .given()
            .get(sheet("three-stations") + "?format=svg&paper=letter&x=-70&y=30")
            .then()
            .statusCode(200)
            .extract()
            .asByteArray();
    var root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg))
            .getDocumentElement();
    assertEquals("215.9mm", root.getAttribute("width"));
    assertEquals("279.4mm", root.getAttribute("height"));
    assertTrue(root.getTextContent().contains("(-70; 30) mm"));
    SERVICE
        .given()
        .get(sheet("three-stations") + "?format=svg&page=9")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("?page"));
  }

  @Test
  void languageIsThatOfTheReader() {
    SERVICE
        .given()
        .header("Accept-Language", "de-AT,en;q=0.5")
        .get(sheet("three-stations") + "?format=svg")
        .then()
        .header("Content-Language", "de-AT")
        .header("Vary", containsString("Accept"))
        .body(containsString("unter dem"));
  }

  @Test
  void whatHasNoTrueScaleIsRefused() {
    SERVICE
        .given()
        .get(sheet("paper-triangle"))
        .then()
        .statusCode(422)
        .body("code", equalTo("not-in-this-model"));
    SERVICE
        .given()
        .get(sheet("three-stations") + "?magnet.1.x=5000&magnet.2.y=5000")
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("detail", containsString("pages"));
    SERVICE
        .given()
        .get(sheet("three-stations") + "?magnet.1.x=1400&magnet.2.y=1800")
        .then()
        .statusCode(422)
        .body("errors[0].detail", equalTo("is too small for this plate; a3 would do"));
    SERVICE
        .given()
        .get(sheet("three-stations") + "?magnet.1.x=5000&magnet.2.y=5000&paper=a3")
        .then()
        .statusCode(422)
        .body("errors[0].detail", equalTo("is too small for this plate, as every other is"));
    SERVICE.given().get(sheet("three-stations") + "?x=3").then().statusCode(400);
    SERVICE.given().get(sheet("three-stations") + "?paper=a5").then().statusCode(400);
    SERVICE.given().get(sheet("three-stations") + "?format=png").then().statusCode(406);
  }

  @Test
  void labelsAreTextAndNothingElse() throws Exception {
    String layout =
        """
        {"model": "bench", "title": "<script>alert(1)</script>",
         "pendulum": {"kind": "cord", "lengthMm": 400, "bobMassG": 40}, "gapMm": 25,
         "bobMagnet": {"shape": "disc", "diameterMm": 15, "heightMm": 5, "grade": "N35", "poleDown": "north"},
         "magnets": [{"x": 40, "y": 0, "shape": "disc", "diameterMm": 20, "heightMm": 5, "grade": "N35",
           "poleUp": "south", "label": ") Tj (\\\\ <b>&amp; ]] >> endstream"},
          {"x": -40, "y": 0, "shape": "disc", "diameterMm": 20, "heightMm": 5, "grade": "Y30",
           "poleUp": "north", "label": "\\u202Eolleh\\u200B\\uD83C\\uDF0A"}],
         "damping": {"swingsToHalf": 25}}
        """;
    String id =
        SERVICE
            .given()
            .contentType(ContentType.JSON)
            .body(layout)
            .post("/v1/layouts")
            .then()
            .extract()
            .path("layoutId");
    String svg = SERVICE.given().get("/v1/layouts/" + id + "/template?format=svg").asString();
    assertFalse(svg.contains("<script>"), svg);
    assertFalse(svg.contains("<b>"), svg);
    assertFalse(svg.contains("\u202E"), svg);
    byte[] pdf = SERVICE.given().get("/v1/layouts/" + id + "/template").asByteArray();
    try (var document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
      assertTrue(text.contains(") Tj (\\ <b>&amp; ]] >> endstream"), text);
      assertTrue(text.contains("<script>alert(1)</script>"), text);
    }
  }
}
