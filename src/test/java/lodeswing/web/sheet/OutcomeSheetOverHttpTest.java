package lodeswing.web.sheet;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.http.ContentType;
import java.util.Locale;
import lodeswing.RunningService;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class OutcomeSheetOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String HAND = "x=0.9&y=0.4&spreadMm=0.05&width=0.1&wait=60";

  private static String layout(String sample) {
    return "/v1/layouts/" + SERVICE.given().get("/v1/sample-layouts/" + sample).path("layoutId");
  }

  private static String read(byte[] pdf) throws Exception {
    try (var document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void chancesAreThoseOfTheOdds() throws Exception {
    String layout = layout("paper-triangle");
    var odds = SERVICE.given().get(layout + "/odds?" + HAND).jsonPath();
    var answer = SERVICE.given().get(layout + "/outcome-sheet?" + HAND);
    assertEquals(200, answer.statusCode());
    String text = read(answer.asByteArray());
    int labels = odds.getList("outcomes").size();
    for (int i = 0; i < labels; i++) {
      String label = odds.getString("outcomes[" + i + "].label");
      double chance = odds.getDouble("outcomes[" + i + "].chance");
      String shown = String.format(Locale.ROOT, "%.1f", 100 * chance).replaceAll("\\.0$", "");
      assertTrue(text.contains(label + " " + shown + " %"), label + shown + " not in " + text);
    }
  }

  @Test
  void sheetsWithoutAHandHaveNoChances() throws Exception {
    String sheet = layout("three-stations") + "/outcome-sheet";
    String text = read(SERVICE.given().get(sheet + "?lang=de").asByteArray());
    assertTrue(text.contains("Ergebnisschilder"), text);
    assertTrue(text.contains("Tide") && text.contains("Reef"), text);
    assertFalse(text.contains("Chance"), text);
    String svg = SERVICE.given().get(sheet + "?format=svg&pieces=tags").asString();
    assertTrue(svg.contains("width=\"210mm\""), svg.substring(0, 300));
    SERVICE
        .given()
        .get(sheet + "?x=3")
        .then()
        .statusCode(400)
        .body("errors.pointer", equalTo(java.util.List.of("?y", "?spreadMm")));
    SERVICE.given().get(sheet + "?format=csv").then().statusCode(406);
    SERVICE
        .given()
        .get(layout("crowded-shelf") + "/outcome-sheet?pieces=wedges")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("?pieces"));
  }

  @Test
  void labelsOfSixtyCharactersAreTextAndNothingElse() throws Exception {
    String label = "<script>alert('tide')</script>; =HYPERLINK(\\\"x\\\") & ]]> 60 ch.";
    String layout =
        """
        {"model": "bench", "pendulum": {"kind": "cord", "lengthMm": 400, "bobMassG": 40}, "gapMm": 25,
         "bobMagnet": {"shape": "disc", "diameterMm": 15, "heightMm": 5, "grade": "N35", "poleDown": "north"},
         "magnets": [{"x": 40, "y": 0, "shape": "disc", "diameterMm": 20, "heightMm": 5, "grade": "N35",
           "poleUp": "south", "label": "%s"}],
         "damping": {"swingsToHalf": 25}}
        """
            .formatted(label);
    String id =
        SERVICE
            .given()
            .contentType(ContentType.JSON)
            .body(layout)
            .post("/v1/layouts")
            .then()
            .extract()
            .path("layoutId");
    String svg = SERVICE.given().get("/v1/layouts/" + id + "/outcome-sheet?format=svg").asString();
    assertFalse(svg.contains("<script>"), svg);
    assertTrue(svg.contains("&lt;script&gt;"), svg);
    String text = read(SERVICE.given().get("/v1/layouts/" + id + "/outcome-sheet").asByteArray());
    assertTrue(text.contains("<script>alert('tide')</script>"), text);
  }
}
