package lodeswing.web.comparison;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.config.JsonPathConfig;
import io.restassured.path.json.config.JsonPathConfig.NumberReturnType;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import javax.imageio.ImageIO;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Comparisons over HTTP, of recordings that are made here. */
class ComparisonsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final JsonPathConfig DOUBLES = new JsonPathConfig(NumberReturnType.DOUBLE);
  private static final double LENGTH = 0.42;

  /** A cord of a length whose swing is halved in 25 of its swings. */
  private static String bare(double lengthMm, String more) {
    return "{\"model\":\"bench\",\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":"
        + lengthMm
        + ",\"bobMassG\":45},\"gapMm\":25,\"magnets\":[],\"damping\":{\"swingsToHalf\":25}"
        + more
        + "}";
  }

  /** Small swings of a cord of 420 mm, 25 of which halve it: the ideal damped oscillator. */
  private static String table(String header, double mirror, double unit) {
    Random random = new Random(2);
    double rate = Math.sqrt(9.80665 / LENGTH);
    double half = Math.log(2) / (25 * 2 * Math.PI / rate);
    StringBuilder csv = new StringBuilder(header);
    for (int i = 0; i <= 240; i++) {
      double t = i / 30.0;
      double left = Math.exp(-half * t);
      double x = 12 * left * Math.cos(rate * t) + 0.05 * random.nextGaussian();
      double y = 6 * left * Math.sin(rate * t) + 0.05 * random.nextGaussian();
      csv.append("\\n").append(number(t)).append(',').append(i == 50 ? "" : number(x / unit));
      csv.append(',').append(number(mirror * y / unit));
    }
    return "{\"csv\":\"" + csv + "\"}";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.5f", value);
  }

  private static final String TABLE = table("t,x,y", 1, 1);

  private static String request(String layout, String recording, String more) {
    return "{\"layout\":" + layout + ",\"recording\":" + recording + more + "}";
  }

  private static ValidatableResponse post(String body, String query) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body(body)
        .post("/v1/comparisons?wait=60" + query)
        .then();
  }

  private static double number(Response answer, String path) {
    return answer.jsonPath(DOUBLES).getDouble(path);
  }

  private static final String SAME = request(bare(420, ""), TABLE, "");
  private static final String LONGER = request(bare(428.4, ""), TABLE, "");

  @Test
  void aRigThatIsAsDescribedAgrees() {
    Response found = post(SAME, "").statusCode(200).extract().response();
    found
        .then()
        .body("verdict", equalTo("agrees"))
        .body("comparisonId", startsWith("cmp-"))
        .body("sentence", containsString("agrees with the rig all along"))
        .body("start.taken", equalTo("from-recording"))
        .body("reading.gaps", equalTo(1))
        .body("notReached", hasItem("partedAtS"))
        .body("hints.size()", equalTo(0));
    assertEquals(Math.sqrt(2) * 0.05, number(found, "rms"), 0.02);
    assertEquals(0.05, number(found, "noise"), 0.015);
    List<Double> times = found.jsonPath(DOUBLES).getList("track.t");
    assertEquals(times.size(), found.<List<Boolean>>path("track.trusted").size());
  }

  /** A layout that is 2 % too long foretells swings that are 1 % too slow. */
  @Test
  void aLengthThatIsTwoPercentOffIsFoundWithItsPeriod() {
    Response found = post(LONGER, "").statusCode(200).extract().response();
    found
        .then()
        .body("verdict", equalTo("parted-too-soon"))
        .body("hints[0].kind", equalTo("period"))
        .body("notes", hasItem(containsString("/v1/fits")));
    // The recording is the harmonic oscillator: of 13 mm a true cord is slower by 6e-5.
    double truth = 100 * (Math.sqrt(1 / 1.02) - 1);
    double low = number(found, "hints[0].changes[0].low");
    double high = number(found, "hints[0].changes[0].high");
    double slack = 0.006 + (high - low);
    assertEquals(truth, (low + high) / 2, slack);
    String cell = SERVICE.given().get(found.path("links.self") + "?value=periodPercent").asString();
    assertEquals(truth, Double.parseDouble(cell), slack);
  }

  @Test
  void tolerancesAndAStatedDistanceMakeItNoDifference() {
    String tolerant = bare(428.4, ",\"tolerances\":{\"lengthMm\":15}");
    post(request(tolerant, TABLE, ""), "").body("verdict", equalTo("agrees"));
    post(request(bare(428.4, ""), TABLE, ",\"agreesWithin\":12"), "")
        .body("verdict", equalTo("agrees"));
  }

  @Test
  void axesUnitsAndPixelsAreThoseOfFits() {
    String release = ",\"release\":{\"x\":12,\"y\":0,\"vx\":0,\"vy\":29},\"placingAccuracy\":0.2";
    String mirrored = table("t_s,x_cm,y_cm", -1, 10);
    post(request(bare(420, ""), mirrored, release), "")
        .body("verdict", equalTo("differs-from-start"));
    post(request(bare(420, ""), mirrored, release + ",\"frame\":{\"mirrored\":\"yes\"}"), "")
        .body("verdict", equalTo("agrees"))
        .body("start.taken", equalTo("told"))
        .body("reading.mirrored", equalTo(true));
    String pixels = table("t,x,y", 1, 0.25);
    post(
            request(
                bare(420, ""), pixels, ",\"frame\":{\"lengthUnit\":\"px\",\"mmPerPixel\":0.25}"),
            "")
        .body("verdict", equalTo("agrees"));
  }

  @Test
  void everyFormIsReadable() throws IOException {
    Response found = post(LONGER, "").statusCode(200).extract().response();
    String self = found.path("links.self");

    assertArrayEquals(found.asByteArray(), SERVICE.given().get(self).asByteArray());
    SERVICE
        .given()
        .get(self + "?format=csv")
        .then()
        .statusCode(200)
        .body(
            startsWith(
                "t_s,x_mm,y_mm,predicted_x_mm,predicted_y_mm,distance_mm,explained_mm,trusted,"
                    + "foretold"))
        .body(containsString(",true,true"));
    SERVICE.given().get(self + "?value=verdict").then().body(equalTo("parted-too-soon"));
    SERVICE.given().get(self + "?value=endsAgree").then().body(equalTo("undecided"));
    SERVICE.given().get(self + "?value=trustedUntilS").then().body(equalTo("not reached"));
    SERVICE.given().get(self + "?format=text").then().body(containsString("something differs"));
    for (String picture : List.of("/paths", "/distance")) {
      byte[] png = SERVICE.given().get(self + picture + "?format=png&pixels=500").asByteArray();
      assertEquals(500, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
      SERVICE.given().get(self + picture).then().statusCode(200).body(containsString("<svg"));
    }
    SERVICE.given().get("/v1/comparisons/cmp-none").then().statusCode(404);
  }

  @Test
  void damagedRecordingsAreRefusedAsByFits() {
    String layout = bare(420, "");
    post(request(layout, "{\"csv\":\"t,x,y\\n0,1,2\"}", ""), "")
        .statusCode(400)
        .body("errors[0].detail", containsString("needs at least"));
    post(request(layout, "{\"t\":[0,1],\"x\":[0,1]}", ""), "")
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/recording/y"));
    post(request(layout, TABLE.replaceFirst("0\\.10000,", "0.01000,"), ""), "")
        .statusCode(400)
        .body("errors[0].detail", containsString("not later than"));
    post(request(layout, TABLE, ",\"unknown\":[\"lengthMm\"]"), "")
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/unknown"));
    post(request(layout, TABLE, ",\"releaseTimeS\":0,\"placingAccuracy\":1"), "")
        .statusCode(400)
        .body("errors.pointer", equalTo(List.of("/placingAccuracy", "/releaseTimeS")));
    post(request(layout, TABLE, ",\"release\":{\"x\":12,\"y\":0},\"releaseTimeS\":9"), "")
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/releaseTimeS"));
    StringBuilder still = new StringBuilder("t,x,y");
    Random random = new Random(1);
    for (int i = 0; i < 50; i++) {
      still.append("\\n").append(i / 30.0).append(',');
      still.append(0.1 * random.nextGaussian()).append(',').append(0.1 * random.nextGaussian());
    }
    post(request(layout, "{\"csv\":\"" + still + "\"}", ""), "")
        .statusCode(400)
        .body("errors[0].detail", containsString("moving"));
  }

  /** Pixels that are taken for centimetres lie far off the plate. */
  @Test
  void aRecordingThatBeginsWhereNoBobCanBeSaysSo() {
    post(request(bare(420, ""), table("t,x,y", 1, 0.1), ",\"frame\":{\"lengthUnit\":\"cm\"}"), "")
        .statusCode(422)
        .body("code", equalTo("impossible-release"))
        .body("detail", containsString("unit and scale"))
        .body("errors[0].pointer", equalTo("/recording"));
  }

  @Test
  void aDryRunTellsTheCost() {
    post(SAME, "&dry-run=true")
        .statusCode(200)
        .body("costReleases", greaterThan(0))
        .body("places", equalTo(240))
        .body("comparisonId", startsWith("cmp-"));
  }

  @Test
  void aTextbookLayoutIsComparedInItsOwnUnits() {
    String id = SERVICE.given().get("/v1/sample-layouts/paper-triangle?format=text").asString();
    String path =
        SERVICE
            .given()
            .get(
                "/v1/layouts/"
                    + id
                    + "/trace?x=1.1&y=0.7&durationS=40&sampleIntervalS=0.2&format=csv&wait=60")
            .asString();
    StringBuilder csv = new StringBuilder("t,x,y");
    String[] rows = path.split("\r\n", -1);
    for (int i = 1; i < rows.length - 1; i++) {
      String[] cells = rows[i].split(",", -1);
      csv.append("\\n").append(cells[0]).append(',').append(cells[1]).append(',').append(cells[2]);
    }
    Response found =
        post("{\"layoutId\":\"" + id + "\",\"recording\":{\"csv\":\"" + csv + "\"}}", "")
            .statusCode(200)
            .extract()
            .response();
    found.then().body("model", equalTo("textbook"));
    String verdict = found.path("verdict");
    assertTrue(verdict.equals("agrees") || verdict.equals("parted-by-chance"), verdict);
  }
}
