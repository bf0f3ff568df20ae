package lodeswing.web.fit;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import javax.imageio.ImageIO;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Fits over HTTP, of recordings that are made here. */
class FitsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String PENDULUM =
      "\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":430,\"bobMassG\":45}";
  private static final String BARE =
      "{\"model\":\"bench\","
          + PENDULUM
          + ",\"gapMm\":25,\"magnets\":[],\"damping\":{\"linearNsPerM\":0.001}}";

  /** Small swings of a cord of 420 mm, 25 of which halve it: the ideal damped oscillator. */
  private static String table(String separator, String header, Random random, double noise) {
    double length = 0.42;
    double rate = Math.sqrt(9.80665 / length);
    double half = Math.log(2) / (25 * 2 * Math.PI / rate);
    StringBuilder csv = new StringBuilder(header);
    for (int i = 0; i <= 240; i++) {
      double t = i / 30.0;
      double left = Math.exp(-half * t);
      String x = number(12 * left * Math.cos(rate * t) + noise * random.nextGaussian());
      String y = number(6 * left * Math.sin(rate * t) + noise * random.nextGaussian());
      csv.append('\n').append(number(t)).append(separator).append(i == 50 ? "" : x);
      csv.append(separator).append(y);
    }
    String text = csv.toString();
    return separator.equals(";") ? text.replace('.', ',') : text;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.4f", value);
  }

  private static String request(String recording, String more) {
    return "{\"layout\":"
        + BARE
        + ",\"recording\":"
        + recording
        + ",\"unknown\":[\"lengthMm\",\"linearNsPerM\"]"
        + more
        + "}";
  }

  private static String csv(String table) {
    return "{\"csv\":\"" + table.replace("\n", "\\n") + "\"}";
  }

  private static ValidatableResponse post(String body) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body(body)
        .post("/v1/fits?wait=60")
        .then();
  }

  private static double value(Response fit, String name) {
    Number found = fit.path("parameters.find { it.name == '" + name + "' }.value");
    return found.doubleValue();
  }

  private static final String WHOLE =
      request(csv(table(",", "t_s,x_mm,y_mm", new Random(2), 0.05)), "");

  @Test
  void tellsLengthAndLossAndStoresTheFittedLayout() {
    Response fit = post(WHOLE).statusCode(200).extract().response();

    assertEquals(420, value(fit, "lengthMm"), 1.5);
    assertEquals("mm", fit.path("parameters.find { it.name == 'lengthMm' }.unit"));
    // c = 2 m gamma with amplitude going as exp(-gamma t): 2 x 0.045 x ln 2 / (25 T).
    double loss = 2 * 0.045 * Math.log(2) / (25 * 2 * Math.PI / Math.sqrt(9.80665 / 0.42));
    assertEquals(loss, value(fit, "linearNsPerM"), 0.05 * loss);
    fit.then()
        .body("endedBy", equalTo("whole"))
        .body("reading.gaps", equalTo(1))
        .body("reading.places", equalTo(240))
        .body("usedPlaces", equalTo(240))
        .body("fitId", startsWith("fit-"))
        .body("correlations.names", hasItem("lengthMm"));
    assertEquals(0.05, ((Number) fit.path("residualRms")).doubleValue(), 0.01);
    String layout = fit.path("links.fittedLayout");
    float fitted =
        SERVICE
            .given()
            .get(layout)
            .then()
            .statusCode(200)
            .extract()
            .path("layout.pendulum.lengthMm");
    assertEquals(420, fitted, 1.5);
  }

  @Test
  void sameRecordingInOtherUnitsAndSignsHasTheSameNumbers() {
    Map<String, Object> one = post(WHOLE).extract().path("parameters[0]");
    String centimetres = table(";", "t_s;x_mm;y_mm", new Random(2), 0.05);
    Map<String, Object> other = post(request(csv(centimetres), "")).extract().path("parameters[0]");
    assertEquals(one, other);
  }

  @Test
  void everyFormIsReadable() throws IOException {
    Response fit = post(WHOLE).statusCode(200).extract().response();
    String self = fit.path("links.self");

    assertArrayEquals(fit.asByteArray(), SERVICE.given().get(self).asByteArray());
    SERVICE
        .given()
        .get(self + "?format=csv")
        .then()
        .statusCode(200)
        .body(startsWith("t_s,x_mm,y_mm,fitted_x_mm,fitted_y_mm,distance_mm"));
    String length = SERVICE.given().get(self + "?value=value&parameter=lengthMm").asString();
    assertEquals(420, Double.parseDouble(length), 1.5);
    SERVICE.given().get(self + "?format=text").then().body(containsString("residuals"));
    SERVICE
        .given()
        .get(self + "?value=low")
        .then()
        .statusCode(400)
        .body(containsString("?parameter"));
    byte[] png = SERVICE.given().get(self + "/paths?format=png&pixels=500").asByteArray();
    assertEquals(500, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
    SERVICE.given().get(self + "/paths").then().statusCode(200).body(containsString("<svg"));
  }

  @Test
  void damagedRecordingsAreRefusedWithTheirPlaces() {
    String good = table(",", "t,x,y", new Random(2), 0.05);
    post(request(csv(good.replaceFirst("\n0\\.1000,[^,]*", "\n0.1000,six")), ""))
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/recording/csv/line/5/x"));
    post(request(csv(good.replaceFirst("\n0\\.1000,", "\n0.0100,")), ""))
        .statusCode(400)
        .body("errors[0].detail", containsString("not later than"));
    post(request(csv("t,x,y\n0,1,2"), ""))
        .statusCode(400)
        .body("errors[0].detail", containsString("needs at least"));
    post(request(csv("time,left,up\n0,1,2"), ""))
        .statusCode(400)
        .body("detail", containsString("t, x and y"));
    post(request("{\"t\":[0,1],\"x\":[0,1]}", ""))
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/recording/y"));
    StringBuilder long1 = new StringBuilder("t,x,y");
    for (int i = 0; i < 30_000; i++) {
      long1.append("\\n").append(i).append(",0,0");
    }
    post(request("{\"csv\":\"" + long1 + "\"}", ""))
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors[0].detail", containsString("20000"));
    StringBuilder endless = new StringBuilder("t,x,y");
    for (int i = 0; i < 1_000_000; i++) {
      endless.append("\\n").append(i).append(",0,0");
    }
    post(request("{\"csv\":\"" + endless + "\"}", "")).statusCode(413);
  }

  @Test
  void aBobThatStandsIsRefused() {
    StringBuilder standing = new StringBuilder("t,x,y");
    for (int i = 0; i < 40; i++) {
      standing.append("\\n").append(i).append(",3,-2");
    }
    post(request("{\"csv\":\"" + standing + "\"}", ""))
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/recording/x"))
        .body("errors[0].detail", containsString("never changes"));
  }

  @Test
  void aTableWithAByteOrderMarkIsRead() {
    String table = "\uFEFF" + table(",", "t,x,y", new Random(2), 0.05);
    SERVICE
        .given()
        .contentType("application/json")
        .body(request(csv(table), "").getBytes(StandardCharsets.UTF_8))
        .post("/v1/fits?dry-run=true")
        .then()
        .statusCode(200)
        .body("places", equalTo(240));
  }

  @Test
  void aHeaderWithAUnitThatIsNotKnownIsRefused() {
    Random noise = new Random(2);
    post(request(csv(table(",", "t,x_inch,y_inch", noise, 0.05)), ""))
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/recording/csv/line/1/x"))
        .body("errors[0].detail", containsString("inch"));
    post(request(csv(table(",", "t,x_mm,y_cm", noise, 0.05)), ""))
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/recording/csv/line/1/y"));
  }

  @Test
  void namesThatNothingHasAreRefused() {
    String recording = csv(table(",", "t,x,y", new Random(2), 0.05));
    SERVICE
        .given()
        .contentType("application/json")
        .body(
            "{\"layout\":"
                + BARE
                + ",\"recording\":"
                + recording
                + ",\"unknown\":[\"lenghtMm\",\"lengthMm\",\"lengthMm\",\"swingsToHalf\"],"
                + "\"start\":{\"gapMm\":3}}")
        .post("/v1/fits")
        .then()
        .statusCode(400)
        .body(
            "errors.pointer",
            equalTo(List.of("/unknown/0", "/unknown/2", "/unknown/3", "/start/gapMm")))
        .body("errors[0].detail", containsString("lengthMm"));
    post(request(recording, ",\"frame\":{\"lengthUnit\":\"px\"}"))
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/frame/mmPerPixel"));
  }

  @Test
  void aDryRunTellsTheCost() {
    SERVICE
        .given()
        .contentType("application/json")
        .body(WHOLE)
        .post("/v1/fits?dry-run=true")
        .then()
        .statusCode(200)
        .body("costReleases", greaterThan(0))
        .body("fitId", startsWith("fit-"));
  }
}
