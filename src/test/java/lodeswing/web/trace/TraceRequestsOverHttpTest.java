package lodeswing.web.trace;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.matchesPattern;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.List;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Ways to ask for a trace, and what is refused, on a rig of one magnet. */
class TraceRequestsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String RIG =
      "{\"model\":\"bench\","
          + "\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":400,\"bobMassG\":40},"
          + "\"bobMagnet\":{\"shape\":\"disc\",\"diameterMm\":15,\"heightMm\":5,\"grade\":\"N35\","
          + "\"poleDown\":\"north\"},\"gapMm\":28,"
          + "\"magnets\":[{\"x\":35,\"y\":0,\"shape\":\"disc\",\"diameterMm\":25,\"heightMm\":5,"
          + "\"grade\":\"Y30\",\"poleUp\":\"south\",\"label\":\"Grove\"}],"
          + "\"damping\":{\"swingsToHalf\":30}}";
  private static final String RELEASE = "\"release\":{\"x\":60,\"y\":20},\"durationS\":4";

  private static Response post(String path, String body) {
    return SERVICE.given().contentType("application/json").body(body).post(path);
  }

  private static Response trace(String layout, String rest) {
    return post("/v1/traces", "{\"layout\":" + layout + "," + rest + "}");
  }

  private static String stored() {
    return post("/v1/layouts", RIG).path("layoutId");
  }

  @Test
  void storedLayoutWholeLayoutAndAddressGiveTheSameTrace() {
    Response whole = trace(RIG, RELEASE);
    Response byId = post("/v1/traces", "{\"layoutId\":\"" + stored() + "\"," + RELEASE + "}");

    assertArrayEquals(whole.asByteArray(), byId.asByteArray());
    SERVICE
        .given()
        .get("/v1/layouts/" + stored() + "/trace?x=60&y=20&durationS=4")
        .then()
        .statusCode(200)
        .header("Cache-Status", containsString("hit"))
        .body("traceId", equalTo(whole.path("traceId")));
  }

  /**
   * Between two places lies the cubic that has the places and velocities at its ends; the formula
   * is written here anew, from memory of any textbook of numerical mathematics (Hermite).
   */
  @Test
  void cubicsKeepToThePathAndComputeNothing() {
    Response all = trace(RIG, RELEASE + ",\"sampleIntervalS\":0.01");
    for (double thin : new double[] {0.1, 0.5, 3}) {
      Response few =
          trace(RIG, RELEASE + ",\"sampleIntervalS\":0.01,\"between\":\"cubics\",\"thin\":" + thin);

      few.then().statusCode(200).header("Cache-Status", containsString("hit"));
      double worst = farthest(few, all);
      assertTrue(worst <= thin, thin + " mm asked, " + worst + " mm found");
      assertTrue(column(few, "t").length * 4 < column(all, "t").length);
      assertEquals(4, column(few, "t")[column(few, "t").length - 1]);
    }
  }

  private static double[] column(Response trace, String name) {
    return trace.jsonPath().getList("samples." + name, Double.class).stream()
        .mapToDouble(Double::doubleValue)
        .toArray();
  }

  /** The greatest distance of a sample from the curve through the knots, at the sample's time. */
  private static double farthest(Response knots, Response samples) {
    double[] t = column(knots, "t");
    double[][] place = {column(knots, "x"), column(knots, "y")};
    double[][] velocity = {column(knots, "vx"), column(knots, "vy")};
    double[] times = column(samples, "t");
    double[][] sampled = {column(samples, "x"), column(samples, "y")};
    double worst = 0;
    int k = 0;
    for (int i = 0; i < times.length; i++) {
      while (k < t.length - 2 && t[k + 1] < times[i]) {
        k++;
      }
      double h = t[k + 1] - t[k];
      double u = (times[i] - t[k]) / h;
      double[] off = new double[2];
      for (int c = 0; c < 2; c++) {
        off[c] =
            place[c][k] * (1 + 2 * u) * (1 - u) * (1 - u)
                + place[c][k + 1] * u * u * (3 - 2 * u)
                + h * velocity[c][k] * u * (1 - u) * (1 - u)
                + h * velocity[c][k + 1] * u * u * (u - 1)
                - sampled[c][i];
      }
      worst = Math.max(worst, Math.hypot(off[0], off[1]));
    }
    return worst;
  }

  @Test
  void overrideOnTheWayIsTheVariant() {
    String variant =
        SERVICE
            .given()
            .get("/v1/layouts/" + stored() + "/variant?format=text&gapMm=29.5")
            .asString();

    SERVICE
        .given()
        .get("/v1/layouts/" + stored() + "/outcome?x=60&y=20&gapMm=29.5&wait=60")
        .then()
        .statusCode(200)
        .body("layoutId", equalTo(variant))
        .body("outcome.kind", equalTo("rest-point"))
        .body("outcome.label", equalTo("Grove"));
  }

  @Test
  void releaseIntoAMagnetIsRefusedWithMillimetres() {
    // from 10 to 15 mm high; the bob magnet from 8 mm, and 4.5 mm higher at 60 mm from the middle
    String tall = RIG.replace("\"gapMm\":28", "\"gapMm\":8").replace("35,", "60,\"bottomMm\":10,");

    trace(tall, "\"release\":{\"x\":60,\"y\":0}")
        .then()
        .statusCode(422)
        .body("code", equalTo("impossible-release"))
        .body("errors[0].pointer", equalTo("/release/x"))
        .body("errors[0].detail", containsString(" mm; release elsewhere"));
  }

  @Test
  void dryRunStoresNothing() {
    String id =
        post(
                "/v1/traces?dry-run=true",
                "{\"layout\":" + RIG + ",\"release\":{\"x\":61.25,\"y\":3}}")
            .path("traceId");

    SERVICE.given().get("/v1/traces/" + id).then().statusCode(404);
  }

  @Test
  void everySingleValueIsAFigureOrSaysThatItWasNotReached() {
    String url = "/v1/layouts/" + stored() + "/trace?x=60&y=20&durationS=4&value=";

    for (String value : List.of("sealedAtS", "settledAtS", "trustedUntilS", "foretoldUntilS")) {
      String text = SERVICE.given().get(url + value).asString();
      assertTrue(text.matches("\\d+(\\.\\d+)?|not reached"), text);
      assertEquals(
          text.replace('.', ','), SERVICE.given().get(url + value + "&decimal=comma").asString());
    }
  }

  @Test
  void swingSlowerThanAnyPaperUsesIsRefusedAndTheSlowestIsFollowed() {
    String slow = "{\"model\":\"textbook\",\"omega0\":%s,\"drag\":0.2,\"height\":0.3}";
    trace(slow.formatted("1e-100"), "\"release\":{\"x\":1,\"y\":0}")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/layout/omega0"))
        .body("errors[0].detail", containsString("from 0.001 to 1000"));

    String far =
        "{\"model\":\"textbook\",\"omega0\":0.001,\"drag\":1000,\"height\":0.001,\"magnets\":["
            + "{\"x\":1000,\"y\":-1000,\"strength\":1000}]}";
    String id = post("/v1/layouts", far).path("layoutId");
    int status = SERVICE.given().get("/v1/layouts/" + id + "/rest-points?wait=60").statusCode();
    assertEquals(200, status);
  }

  @Test
  void dryRunTellsWhatMakingTheLayoutReadyWillTake() {
    post("/v1/traces?dry-run=true", "{\"layout\":" + RIG + "," + RELEASE + "}")
        .then()
        .statusCode(200)
        .body("cost.preparingWork", greaterThan(1_000_000))
        .body("cost.preparingWorkLimit", equalTo(3_000_000_000L));
    post("/v1/layouts?dry-run=true", RIG)
        .then()
        .statusCode(200)
        .body("preparingWork", greaterThan(1_000_000));
  }

  @Test
  void layoutThatCostsTooMuchIsRefusedBeforeWorkBeginsAndTheWayOutIsAffordable() {
    String near = RIG.replace("\"gapMm\":28", "\"gapMm\":5.01").replace("\"x\":35", "\"x\":25");
    trace(near, RELEASE)
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors[0].pointer", equalTo("/layout/gapMm"))
        .body("errors[0].detail", matchesPattern("gapMm is 5.01 mm; raise it to [0-9]+ mm"));

    String id = post("/v1/layouts", near).path("layoutId");
    String detail =
        SERVICE
            .given()
            .get("/v1/layouts/" + id + "/rest-points")
            .then()
            .statusCode(422)
            .body("errors[0].pointer", equalTo("?gapMm"))
            .extract()
            .path("errors[0].detail");
    String gap = detail.replaceAll(".*raise it to ([0-9]+) mm", "$1");
    post(
            "/v1/traces?dry-run=true",
            "{\"layout\":" + near.replace("5.01", gap) + "," + RELEASE + "}")
        .then()
        .statusCode(200);
  }

  @Test
  void twoHundredMagnetsAreNotRefusedBeforeWorkBegins() {
    for (String shape :
        List.of(
            "\"shape\":\"dipole\",\"momentAm2\":0.3",
            "\"shape\":\"disc\",\"diameterMm\":12,\"heightMm\":4,\"grade\":\"N35\"")) {
      String crowd =
          RIG.replaceAll("\"magnets\":\\[.*?\\]", "")
              .replace(
                  "\"gapMm\":28,",
                  "\"gapMm\":25,\"stock\":{\"one\":{"
                      + shape
                      + ",\"poleUp\":\"south\"}},\"patterns\":[{\"kind\":\"grid\",\"columns\":20,"
                      + "\"rows\":10,\"spacingMm\":28,\"of\":\"one\"}]");
      post("/v1/traces?dry-run=true", "{\"layout\":" + crowd + "," + RELEASE + "}")
          .then()
          .statusCode(200);
    }
  }

  @Test
  void outcomeComesAsATableWhoseFirstColumnsAreThoseOfAList() {
    String url = "/v1/layouts/" + stored() + "/outcome?x=60&y=20&wait=60";
    Response document = SERVICE.given().get(url);

    String table = SERVICE.given().get(url + "&format=csv").asString();

    String[] rows = table.split("\r\n");
    assertEquals(2, rows.length, table);
    assertEquals(
        "x_mm,y_mm,outcome,settled_s,sealed_s,sure,trusted_until_s,foretold_until_s,map_outcome",
        rows[0]);
    String[] cells = rows[1].split(",", -1);
    assertEquals(9, cells.length, table);
    assertEquals(List.of("60", "20", "Grove"), List.of(cells).subList(0, 3));
    assertEquals(
        document.<Number>path("sealedAtS").doubleValue(), Double.parseDouble(cells[4]), 1e-4);
    assertEquals(document.path("sure").toString(), cells[5]);
    assertEquals(cells[5], SERVICE.given().get(url + "&value=sure").asString());
  }
}
