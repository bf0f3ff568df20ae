package lodeswing.web.gauging;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.config.JsonPathConfig;
import io.restassured.path.json.config.JsonPathConfig.NumberReturnType;
import io.restassured.response.Response;
import java.util.List;
import lodeswing.RunningService;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.cbor.CBORMapper;

/** Magnets measured on a bench, as a course site and a spreadsheet ask for them. */
class MagnetEstimatesOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final JsonPathConfig DOUBLES = new JsonPathConfig(NumberReturnType.DOUBLE);
  private static final String DISC = "/v1/magnet-estimates?diameterMm=15&heightMm=5&";

  private static Response get(String path) {
    return SERVICE.given().get(path);
  }

  private static double number(Response answer, String path) {
    return answer.jsonPath(DOUBLES).getDouble(path);
  }

  @Test
  void aReadingThatNoMagnetGivesIsSaidToBeOne() {
    Response answer = get(DISC + "pairPullN=9000&distanceMm=100");
    assertTrue(
        answer.jsonPath().getString("sentence").contains("no magnet is that strong"),
        answer.asString());
  }

  /**
   * Robertson and others, IEEE Trans. Magn. 47 (2011) 2045: discs of radius 20 mm and height 40 mm
   * with 1.3 T pull each other by 265.537 N at 50 mm between centres.
   */
  @Test
  void aPublishedPullLeadsToItsRemanence() {
    Response answer =
        get("/v1/magnet-estimates?diameterMm=40&heightMm=40&pairPullN=265.537&distanceMm=10");
    answer
        .then()
        .statusCode(200)
        .body("readings[0].kind", equalTo("pair-pull"))
        .body("atLeast", equalTo(false))
        .body("grades.code", hasItems("N42", "N40"))
        .body("caution", containsString("trained staff"))
        .body(
            "links.self",
            equalTo(
                "/v1/magnet-estimates?diameterMm=40&heightMm=40&pairPullN=265.537&distanceMm=10"));
    assertEquals(1.3, number(answer, "remanenceT"), 3e-6);
    assertTrue(number(answer, "remanenceLowT") < 1.28);
    assertTrue(number(answer, "remanenceHighT") > 1.32);
  }

  /**
   * The field on a disc's axis, J. M. Camacho and V. Sosa, Rev. Mex. Fis. E 59 (2013) 8: Br/2 ((z +
   * h)/hypot(R, z + h) - z/hypot(R, z)) at z from the face.
   */
  @Test
  void aFieldReadingLeadsToItsRemanence() {
    double perTesla = (65 / Math.hypot(7.5, 65) - 60 / Math.hypot(7.5, 60)) / 2;
    String field = DISC + "sensorDistanceMm=60&fieldMicrotesla=" + 1.2e6 * perTesla;
    Response difference = get(field + "&fieldReading=difference");
    assertEquals(1.2, number(difference, "remanenceT"), 1e-8);
    Response single = get(field);
    assertEquals(1.2, number(single, "remanenceT"), 1e-8);
    single.then().body("notes", hasItem(containsString("67 microtesla")));
    assertTrue(number(single, "remanenceLowT") < number(difference, "remanenceLowT"));
  }

  @Test
  void severalReadingsAreCombined() {
    String lift = "material=neodymium&liftDistanceMm=30&";
    Response one = get(DISC + lift);
    double remanence = number(one, "remanenceT");
    one.then().statusCode(200).body("readings.kind", equalTo(List.of("lift")));
    double weighed = 7500 * Math.PI * 7.5 * 7.5 * 5 * 1e-9 * 1000;
    assertEquals(
        remanence,
        number(get(DISC + "liftDistanceMm=30&liftMassG=" + weighed), "remanenceT"),
        1e-8);
    double perTesla = (65 / Math.hypot(7.5, 65) - 60 / Math.hypot(7.5, 60)) / 2;
    String field =
        "sensorDistanceMm=60&fieldReading=difference&fieldMicrotesla=" + 1e6 * remanence * perTesla;
    Response both = get(DISC + lift + field);
    both.then()
        .body("readings.kind", equalTo(List.of("lift", "field")))
        .body("agree", equalTo(true))
        .body("grades.material", not(hasItem("ferrite")));
    assertEquals(remanence, number(both, "remanenceT"), 1e-8);
    assertTrue(number(both, "remanenceHighT") <= number(one, "remanenceHighT"));
  }

  /** At contact the reading is a lower bound; with a spacer it is not. */
  @Test
  void contactTellsTheLeast() {
    get(DISC + "pullN=30")
        .then()
        .statusCode(200)
        .body("atLeast", equalTo(true))
        .body("readings[0].kind", equalTo("contact-pull"))
        .body("sentence", startsWith("The remanence is at least about"))
        .body("grades.code", hasItems("N42", "N52"))
        .body("grades.code", not(hasItem("Y30")))
        .body("notes", hasItem(allOf(containsString("thin"), containsString("plating"))));
    get(DISC + "pullN=12&spacerMm=1")
        .then()
        .body("atLeast", equalTo(false))
        .body("readings[0].kind", equalTo("spaced-pull"));
    get(DISC + "pullN=30&pairPullN=3.5&distanceMm=10")
        .then()
        .body("atLeast", equalTo(false))
        .body("readings.counted", equalTo(List.of(false, true)));
  }

  /** Unlike poles attract, and the needle's north end is a north pole. */
  @Test
  void aCompassTellsThePole() {
    String compass = "/v1/magnet-estimates?compass=";
    get(compass + "north-end-attracted")
        .then()
        .statusCode(200)
        .body("pole.face", equalTo("south"))
        .body("remanenceT", nullValue());
    assertEquals("north", get(compass + "south-end-attracted&value=pole").asString());
    assertEquals("none", get(compass + "south-end-attracted&value=remanenceT").asString());
    assertTrue(get(compass + "south-end-attracted&format=csv").asString().contains("north pole"));
  }

  @Test
  void allFormsAndCellsTellTheSame() throws Exception {
    String path =
        "/v1/magnet-estimates?lengthMm=20&widthMm=10&heightMm=5&pairPullN=4&distanceMm=10";
    Response json = get(path);
    json.then().statusCode(200).body("magnet.shape", equalTo("block"));
    assertEquals(
        new JsonMapper().readTree(json.asByteArray()).get("remanenceT"),
        new CBORMapper().readTree(get(path + "&format=cbor").asByteArray()).get("remanenceT"));
    String cell = get(path + "&value=remanenceT").asString();
    assertEquals(number(json, "remanenceT"), Double.parseDouble(cell));
    assertEquals(cell.replace('.', ','), get(path + "&value=remanenceT&decimal=comma").asString());
    String[] lines = get(path + "&format=csv").asString().split("\r\n");
    assertEquals("reading,remanence_t,remanence_low_t,remanence_high_t,at_least,grades", lines[0]);
    assertTrue(lines[1].startsWith("pair-pull," + cell + ","), lines[1]);
    assertTrue(lines[2].startsWith("all," + cell + ","), lines[2]);
    assertEquals(
        json.jsonPath().getString("grades[0].code"), get(path + "&value=grade").asString());
    String self = json.jsonPath().getString("links.self");
    assertEquals(json.asString(), get(self).asString());
    get("/v1/magnet-estimates?diameterMm=15&innerDiameterMm=5&heightMm=5&pullN=9&spacerMm=1")
        .then()
        .body("magnet.shape", equalTo("ring"))
        .body("magnet.innerDiameterMm", equalTo(5));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "diameterMm=15&heightMm=5 | ?pullN | give one or more of pullN",
        " | ?pullN | compass alone",
        "pullN=20&heightMm=5 | ?diameterMm | a disc needs diameterMm",
        "pullN=20&diameterMm=15 | ?heightMm | extent along its magnetisation",
        "pullN=20&lengthMm=15&heightMm=5 | ?widthMm | a block needs",
        "pullN=20&lengthMm=15&diameterMm=5&heightMm=5 | ?diameterMm | a block length and width",
        "pullN=20&diameterMm=15&innerDiameterMm=15&heightMm=5 | ?innerDiameterMm | less than diameterMm",
        "pairPullN=4&diameterMm=15&heightMm=5 | ?distanceMm | needs the distance",
        "distanceMm=4&diameterMm=15&heightMm=5 | ?distanceMm | nothing without pairPullN",
        "spacerMm=4&diameterMm=15&heightMm=5 | ?spacerMm | nothing without pullN",
        "liftDistanceMm=25&diameterMm=15&heightMm=5 | ?liftMassG | or give material",
        "fieldMicrotesla=500&diameterMm=15&heightMm=5 | ?sensorDistanceMm | distance from the face",
        "fieldMicrotesla=50&sensorDistanceMm=60&diameterMm=15&heightMm=5 | ?fieldMicrotesla | earth's field",
        "fieldMicrotesla=500&sensorDistanceMm=1&diameterMm=15&innerDiameterMm=5&heightMm=5 | ?sensorDistanceMm | turns round",
        "pullN=20&diameterMm=1&heightMm=0.3 | ?sizeUncertaintyMm | at most a quarter",
        "pullN=-3&diameterMm=15&heightMm=5 | ?pullN | a number from 0.001 to 10000",
        "pull=3&diameterMm=15&heightMm=5 | ?pull | did you mean pullN"
      })
  void whatLacksOrCannotBeIsNamed(@Nullable String query, String pointer, String detail) {
    get("/v1/magnet-estimates" + (query == null ? "" : "?" + query))
        .then()
        .statusCode(400)
        .contentType("application/problem+json")
        .body("errors.pointer", hasItem(pointer))
        .body("errors.detail", hasItem(containsString(detail)));
  }

  /** Faults of several kinds come at once. */
  @Test
  void allFaultsComeAtOnce() {
    get("/v1/magnet-estimates?pairPullN=4&fieldMicrotesla=500")
        .then()
        .statusCode(400)
        .body(
            "errors.pointer",
            hasItems("?distanceMm", "?sensorDistanceMm", "?diameterMm", "?heightMm"));
  }
}
