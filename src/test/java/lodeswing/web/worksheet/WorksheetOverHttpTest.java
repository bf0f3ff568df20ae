package lodeswing.web.worksheet;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lodeswing.RunningService;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class WorksheetOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static String layout(String sample) {
    return "/v1/layouts/" + SERVICE.given().get("/v1/sample-layouts/" + sample).path("layoutId");
  }

  private static byte[] sheet(String layout, String query) {
    return SERVICE
        .given()
        .get(layout + "/worksheet?wait=60&" + query)
        .then()
        .statusCode(200)
        .contentType("application/pdf")
        .extract()
        .asByteArray();
  }

  private static String text(byte[] pdf) throws IOException {
    try (var document = Loader.loadPDF(pdf)) {
      var stripper = new PDFTextStripper();
      stripper.setSortByPosition(false);
      return stripper.getText(document).replaceAll("\\s+", " ");
    }
  }

  @Test
  void threeLanguagesHaveTheSameFiguresInTheirOwnNumbers() throws IOException {
    String layout = layout("three-stations");
    String english = text(sheet(layout, "lang=en&answers=true&age=16"));
    String german = text(sheet(layout, "lang=de&answers=true&age=16"));
    String spanish = text(sheet(layout, "lang=es&answers=true&age=16"));

    // 5.99 is the 95 % point of chi-squared with two degrees (Abramowitz
    // and Stegun, table 26.8, from memory).
    assertTrue(english.contains("5.99"), english);
    assertTrue(german.contains("5,99"), german);
    assertTrue(spanish.contains("5,99"), spanish);
    assertTrue(german.contains("Lösungen für die Lehrkraft"), german);
    assertTrue(spanish.contains("Soluciones para el profesorado"), spanish);
    for (String station : new String[] {"Tide", "Dune", "Reef"}) {
      assertTrue(english.contains(station) && german.contains(station), station);
    }
  }

  @Test
  void theKeysFiguresAreThoseOfTheService() throws IOException {
    String layout = layout("three-stations");
    String key = text(sheet(layout, "lang=en&answers=true&age=16"));

    // T = 2 pi sqrt(0.42 / 9.80665) = 1.300 s; the layout loses half in 25 swings.
    assertTrue(key.contains("Half of it is left after 25 swings (32.5 s)"), key);
    assertTrue(key.contains("42 cm here"), key);
    Matcher sure =
        Pattern.compile("P \\((-?\\d+); (-?\\d+)\\) mm (\\w+) (\\d+)\\s?% \\((\\d+)\\s?% to")
            .matcher(key);
    assertTrue(sure.find(), key);
    String place = "x=" + sure.group(1) + "&y=" + sure.group(2);
    String chance =
        SERVICE
            .given()
            .get(layout + "/odds?" + place + "&spreadMm=3&value=chance&outcome=" + sure.group(3))
            .asString();
    assertEquals(Double.parseDouble(chance), Double.parseDouble(sure.group(4)) / 100, 0.05, chance);
  }

  @Test
  void theKeyStandsOnlyWhereItIsAskedFor() throws IOException {
    String layout = layout("three-stations");
    assertFalse(text(sheet(layout, "lang=en")).contains("Key for the teacher"));
    assertArrayEquals(sheet(layout, "lang=en"), sheet(layout, "lang=en&answers=false"));
  }

  @Test
  void aBarePendulumHasItsSwingToMeasure() throws IOException {
    String bare = layout("quiet-plate");
    String sheet = text(sheet(bare, "lang=en&age=16&answers=true"));
    assertTrue(sheet.contains("How does it swing without magnets?"), sheet);
    assertFalse(sheet.contains("Is it fair?"), sheet);
    SERVICE
        .given()
        .get(bare + "/worksheet?activities=fair")
        .then()
        .statusCode(400)
        .body("errors[0].detail", containsString("needs magnets"));
  }

  @Test
  void longAndForeignLabelsAreOnTheSheetWhole() throws IOException {
    String longest = "The station at the far end of the pier behind the old lighthouse";
    String chinese = "灯塔旁的码头";
    String arabic = "محطة المد";
    String sample =
        Files.readString(Path.of("src/main/resources/sample-layouts/three-stations.json"));
    String body =
        sample
            .substring(sample.indexOf("\"layout\":") + 9, sample.lastIndexOf('}'))
            .replace("\"Tide\"", "\"" + longest.substring(0, 60) + "\"")
            .replace("\"Dune\"", "\"" + chinese + "\"")
            .replace("\"Reef\"", "\"" + arabic + "\"");
    String labelled =
        SERVICE
            .given()
            .contentType("application/json")
            .body(body.getBytes(StandardCharsets.UTF_8))
            .post("/v1/layouts")
            .then()
            .statusCode(201)
            .extract()
            .path("layoutId");
    String sheet = text(sheet("/v1/layouts/" + labelled, "lang=en&activities=fair"));
    assertTrue(sheet.contains(longest.substring(0, 30)), sheet);
    assertTrue(sheet.contains(chinese), sheet);
    assertTrue(sheet.contains(arabic), sheet);
  }

  @Test
  void whatIsNoActivityIsRefused() {
    SERVICE
        .given()
        .get(layout("three-stations") + "/worksheet?activities=predikt")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("?activities"))
        .body("errors[0].detail", containsString("predict"));
    SERVICE
        .given()
        .get(layout("paper-triangle") + "/worksheet")
        .then()
        .statusCode(422)
        .body("code", equalTo("not-in-this-model"));
    SERVICE.given().get(layout("three-stations") + "/worksheet?age=3").then().statusCode(400);
  }

  @Test
  void aPageComesAsSvg() {
    SERVICE
        .given()
        .get(layout("three-stations") + "/worksheet?format=svg&page=1&wait=60")
        .then()
        .statusCode(200)
        .contentType("image/svg+xml")
        .header("Content-Language", Locale.ENGLISH.toLanguageTag());
  }
}
