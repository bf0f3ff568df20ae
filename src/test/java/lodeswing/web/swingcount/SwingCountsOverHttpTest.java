package lodeswing.web.swingcount;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.config.JsonPathConfig;
import io.restassured.path.json.config.JsonPathConfig.NumberReturnType;
import io.restassured.response.Response;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Counted swings, as a spreadsheet and a course site ask about them. */
class SwingCountsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final JsonPathConfig DOUBLES = new JsonPathConfig(NumberReturnType.DOUBLE);

  private static Response get(String sample, String query) {
    String id = SERVICE.given().get("/v1/sample-layouts/" + sample + "?format=text").asString();
    String path = "/v1/layouts/" + id + "/swing-count" + (query.isEmpty() ? "" : "?" + query);
    return SERVICE.given().urlEncodingEnabled(false).get(path);
  }

  private static double number(Response answer, String path) {
    return answer.jsonPath(DOUBLES).getDouble(path);
  }

  /** T = 2 pi (l/g)^(1/2) for 430 mm where the layout has 420 mm. */
  @Test
  void aLengthThatDisagreesIsNamedAndTheLayoutThatSwingsSoIsStored() {
    double time = 50 * 2 * Math.PI * Math.sqrt(0.43 / 9.80665);
    Response answer = get("three-stations", "swings=50&timeS=" + time + "&halfAfter=22");

    answer
        .then()
        .statusCode(200)
        .body("period.agrees", equalTo(false))
        .body("length.name", equalTo("lengthMm"))
        .body("notes", hasItem(containsString("magnets off the plate")))
        .body("sentence", containsString("would swing so"));
    // 22 swings to half lengthen a swing by 1/2 (ln 2/(2 pi 22))^2 = 1.3e-5.
    assertEquals(430, number(answer, "length.countedMm.value"), 0.02);
    assertTrue(number(answer, "length.countedMm.low") > 420);
    // Q = pi n/ln 2.
    assertEquals(Math.PI * 22 / Math.log(2), number(answer, "loss.qualityFactor.value"), 1e-3);
    assertEquals(25, number(answer, "loss.ownSwingsToHalf"), 1e-6);
    Response layout = SERVICE.given().get(answer.<String>path("links.suggestedLayout"));
    layout.then().statusCode(200);
    assertEquals(430, number(layout, "layout.pendulum.lengthMm"), 0.02);
    assertEquals(22, number(layout, "layout.damping.swingsToHalf"), 1e-3);
    SERVICE
        .given()
        .get(answer.<String>path("links.variant"))
        .then()
        .statusCode(200)
        .body("layoutId", equalTo(answer.path("suggestion.layoutId")));
    // The stored layout swings as counted.
    Response again =
        SERVICE
            .given()
            .get(
                answer.<String>path("links.suggestedLayout")
                    + "/swing-count?swings=50&halfAfter=22&timeS="
                    + time);
    again.then().body("period.agrees", equalTo(true));
    assertEquals(0, number(again, "period.offPercent.value"), 1e-3);
  }

  @Test
  void aRulersLengthIsAFigureOfTheLayout() {
    double time = 20 * 2 * Math.PI * Math.sqrt(0.41 / 9.81);
    String query = "swings=20&lengthMm=410&localGravityMPerS2=9.81&timeS=" + time;
    Response answer = get("three-stations", query);
    answer
        .then()
        .body("period.agrees", equalTo(true))
        .body("suggestion", nullValue())
        .body("notes", not(hasItem(containsString("Gravity"))));
    assertEquals(410, number(answer, "length.ownMm"), 1e-9);
  }

  @Test
  void aYokeAndABarHaveLengthsOfTheirOwn() {
    double leg = 10 * 2 * Math.PI * Math.sqrt(0.21 / 9.80665);
    Response yoke = get("y-cord", "swings=10&timeS=" + leg);
    yoke.then().body("length.name", equalTo("legMm"));
    assertEquals(210, number(yoke, "length.countedMm.value"), 0.05);
    double across = 10 * 2 * Math.PI * Math.sqrt(0.46 / 9.80665);
    Response along = get("y-cord", "swings=10&along=y&timeS=" + across);
    assertEquals(210, number(along, "length.countedMm.value"), 0.05);

    Response bar = get("heavy-bar", "swings=10&timeS=13.6&timeUncertaintyS=0.05");
    bar.then().statusCode(200).body("length.name", equalTo("bobFromTopMm"));
    assertTrue(number(bar, "length.changeMm") > 10);
    String hung = bar.path("links.suggestedLayout");
    Response again =
        SERVICE.given().get(hung + "/swing-count?swings=10&timeS=13.6&timeUncertaintyS=0.05");
    assertEquals(0, number(again, "period.offPercent.value"), 0.01);
    get("heavy-bar", "swings=10&timeS=3")
        .then()
        .body("length", nullValue())
        .body("sentence", containsString("no length"));
  }

  @Test
  void cellsAndTablesAreOffered() {
    String cell = get("three-stations", "swings=20&timeS=26.4&value=lengthMm").asString();
    assertEquals(432.8, Double.parseDouble(cell), 0.2);
    get("three-stations", "swings=20&timeS=26,4%3B26,2&format=text")
        .then()
        .statusCode(200)
        .body(startsWith("20 swings in 26.3 s"));
    get("three-stations", "halfAfter=20&value=smallPeriodS").then().body(equalTo("none"));
    get("three-stations", "swings=20&timeS=26.4&halfAfter=20&format=csv")
        .then()
        .body(startsWith("figure,unit,value,low,high,layout\r\nperiod,s,1.32,"));
  }

  @Test
  void theSecondHalvingTellsTheLaw() {
    get("three-stations", "halfAfter=20&quarterAfter=30")
        .then()
        .body("loss.law", equalTo("friction"));
    get("three-stations", "halfAfter=20&quarterAfter=40")
        .then()
        .body("loss.law", equalTo("linear"));
    get("three-stations", "halfAfter=20&quarterAfter=60").then().body("loss.law", equalTo("drag"));
  }

  @Test
  void whatIsMissingOrWrongIsToldAtOnce() {
    get("three-stations", "")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("?timeS"))
        .body("detail", containsString("halfAfter"));
    get("three-stations", "swings=20&quarterAfter=9&amplitudeMm=900")
        .then()
        .statusCode(400)
        .body("errors.pointer", hasItem("?quarterAfter"))
        .body("errors.pointer", hasItem("?amplitudeMm"))
        .body("errors.pointer", hasItem("?swings"));
    get("three-stations", "swings=20&timeS=0").then().statusCode(400);
    get("three-stations", "swings=20&timeS=26&amplitudeMm=4&amplitudeDeg=3")
        .then()
        .statusCode(400)
        .body("errors[0].detail", containsString("give one of them"));
    get("paper-triangle", "swings=20&timeS=26")
        .then()
        .statusCode(422)
        .body("code", equalTo("not-in-this-model"));
    get("three-stations", "swings=20&timeS=26&swngs=3&errors=inline&format=text")
        .then()
        .statusCode(200)
        .body(startsWith("ERROR "));
  }
}
