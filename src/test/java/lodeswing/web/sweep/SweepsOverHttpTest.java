package lodeswing.web.sweep;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import io.restassured.response.Response;
import java.util.Arrays;
import java.util.List;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sweeps over HTTP: figures against the world outside, documents, cells, pictures and faults. */
class SweepsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String PLANE =
      "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.4,\"height\":0.3,\"magnets\":["
          + "{\"x\":0.577,\"y\":0,\"strength\":1,\"label\":\"Tide\"},"
          + "{\"x\":-0.2885,\"y\":0.49969666,\"strength\":1,\"label\":\"Dune\"},"
          + "{\"x\":-0.2885,\"y\":-0.49969666,\"strength\":1,\"label\":\"Reef\"}]}";

  private static String sample(String name) {
    return SERVICE.given().get("/v1/sample-layouts/" + name).path("layoutId");
  }

  private static String plane() {
    return SERVICE
        .given()
        .contentType("application/json")
        .body(PLANE)
        .post("/v1/layouts")
        .path("layoutId");
  }

  private static Response sweep(String layout, String query) {
    return SERVICE.given().get("/v1/layouts/" + layout + "/sweep?wait=60&" + query);
  }

  private static Response post(String members, String query) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body("{\"layout\":" + PLANE + "," + members + "}")
        .post("/v1/sweeps?wait=60" + query);
  }

  private static List<List<Object>> rows(Response answer) {
    assertEquals(200, answer.statusCode(), answer.asString());
    return answer.path("rows");
  }

  private static double number(Object cell) {
    return ((Number) cell).doubleValue();
  }

  /**
   * Barriers of the sample layout at four gaps, found by code that shares nothing with this: exact
   * fields of charged faces over the bob's volume and a scan of the plane.
   */
  @Test
  void barriersByGapAreThoseOfIndependentCode() {
    double[] expected = {3.62e-3, 1.89e-3, 0.88e-3, 0.31e-3};

    Response answer =
        sweep(
            sample("three-stations"),
            "vary=gapMm&from=25&to=40&steps=4&measure=barrier,restPoints,contact,clearanceMm");

    List<List<Object>> rows = rows(answer);
    for (int k = 0; k < 4; k++) {
      assertEquals(25.0 + 5 * k, number(rows.get(k).get(0)));
      assertEquals(expected[k], number(rows.get(k).get(1)), 0.5e-5, "gap " + rows.get(k).get(0));
      assertEquals(3, number(rows.get(k).get(2)));
      assertEquals("none", rows.get(k).get(3));
      // The bob's face is the gap above the plate and hangs a little higher at a rest point.
      double clearance = number(rows.get(k).get(4));
      assertTrue(clearance > 15 + 5 * k && clearance < 25 + 5 * k, clearance + " mm");
    }
    answer
        .then()
        .body(
            "columns",
            equalTo(
                List.of("gapMm", "barrierJ", "restPoints", "contact", "clearanceMm", "problem")))
        .body("units.gapMm", equalTo("mm"))
        .body("units.barrierJ", equalTo("J"))
        .body("problems", equalTo(0))
        .body("sentence", containsString("Lowest barrier: from 0.0003"))
        .body("links.self", startsWith("/v1/sweeps/swp-"));
  }

  /**
   * Period by length: T = 2 pi (l/g)^(1/2) (1 + a^2/16 + 11 a^4/3072 + 173 a^6/737280), a the
   * greatest angle (R. A. Nelson, M. G. Olsson, The pendulum: rich physics from a simple system,
   * Am. J. Phys. 54 (1986) 112; coefficients from memory, checked by the next term's size here).
   */
  @Test
  void periodFollowsTheLengthThroughTheWholeSweep() {
    Response answer =
        sweep(
            sample("quiet-plate"),
            "vary=lengthMm&from=200&to=2000&steps=19&measure=periods,periodsAtRelease&x=80&y=0&format=csv");

    String[] lines = answer.asString().split("\r\n");
    assertEquals(20, lines.length);
    for (String line : List.of(lines).subList(1, lines.length)) {
      double[] row = Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray();
      double length = row[0] / 1000;
      double small = 2 * Math.PI * Math.sqrt(length / 9.80665);
      double angle = Math.asin(0.08 / length);
      double square = angle * angle;
      double large =
          small
              * (1
                  + square / 16
                  + 11 * square * square / 3072
                  + 173 * square * square * square / 737280);
      assertEquals(small, row[1], 1e-8 * small);
      assertEquals(small, row[2], 1e-8 * small);
      // The next term is 22931/1321205760 of the eighth power.
      double next = 22931 / 1321205760.0 * Math.pow(angle, 8);
      assertEquals(large, row[3], (2 * next + 5e-9) * small, "length " + length);
    }
  }

  /** By symmetry alone: as many equal chances as there are magnets on the ring. */
  @Test
  void ringOfEqualMagnetsHasEqualOddsForACentredZone() {
    Response answer =
        sweep(
            plane(),
            "vary=ring.count&values=2;3;4;6&measure=chance,restPoints&label=Tide&x=0&y=0"
                + "&kind=disc&spreadMm=1.5&width=0.03");

    for (List<Object> row : rows(answer)) {
      double fair = 1 / number(row.get(0));
      assertTrue(number(row.get(2)) <= fair && fair <= number(row.get(3)), row.toString());
      assertTrue(number(row.get(3)) - number(row.get(2)) <= 0.03, row.toString());
      assertEquals(number(row.get(0)), number(row.get(4)), "rest points");
    }
  }

  @Test
  void outcomesAreThoseOfSingleRequests() {
    String rig = sample("three-stations");
    String plane = plane();
    check(rig, "gapMm", "30", "&x=-70&y=30", 1);
    check(plane, "drag", "0.2;0.3", "&x=1.3&y=0.4", 2);
    check(plane, "magnet.2.y", "0.3;0.6", "&x=1.3&y=0.4", 2);
    check(plane, "x", "0.9;1.1;1.7", "&y=-0.7", 3);
  }

  private static void check(
      String layout, String quantity, String values, String release, int count) {
    Response answer =
        sweep(
            layout,
            "vary="
                + quantity
                + "&values="
                + values
                + "&measure=outcome,sure,sealedAtS,settledAtS"
                + release);
    List<List<Object>> rows = rows(answer);
    assertEquals(count, rows.size());
    for (List<Object> row : rows) {
      Response single =
          SERVICE
              .given()
              .get(
                  "/v1/layouts/"
                      + layout
                      + "/outcome?wait=60&"
                      + quantity
                      + "="
                      + row.get(0)
                      + release);
      assertEquals(single.<String>path("outcome.name"), row.get(1), quantity + row);
      assertEquals(single.<Boolean>path("sure"), row.get(2), quantity + row);
      assertEquals(number(single.path("sealedAtS")), number(row.get(3)), 1e-6, quantity + row);
      assertEquals(number(single.path("settledAtS")), number(row.get(4)), 1e-6, quantity + row);
    }
  }

  @Test
  void pointThatCannotBeBuiltHasARowWithTheReason() {
    Response answer =
        sweep(
            sample("quiet-plate"),
            "vary=gapMm&values=-3;20&measure=outcome,restPoints&x=60&y=0&format=csv");

    String[] lines = answer.asString().split("\r\n");
    assertEquals("gap_mm,outcome,rest_points,problem", lines[0]);
    assertTrue(lines[1].startsWith("-3,,,impossible-layout: gapMm"), lines[1]);
    assertEquals("20,the lowest point,1,", lines[2]);
    Response far = sweep(sample("quiet-plate"), "vary=x&values=60;490&measure=outcome&y=0");
    assertEquals("the lowest point", rows(far).get(0).get(1));
    assertEquals(null, rows(far).get(1).get(1));
    assertTrue(rows(far).get(1).get(2).toString().startsWith("impossible-release"));
    far.then().body("problems", equalTo(1)).body("sentence", containsString("490 mm"));
  }

  @Test
  void labelThatAPointLacksIsAProblemOfThatPoint() {
    Response answer = sweep(plane(), "vary=ring.count&values=2;3&measure=barrier&label=Reef");

    assertEquals(null, rows(answer).get(0).get(1));
    assertEquals("no magnet has the label Reef here", rows(answer).get(0).get(2));
    assertTrue(number(rows(answer).get(1).get(1)) > 0);
  }

  @Test
  void twoQuantitiesMakeAMapInWordsAndNumbers() {
    Response answer =
        post(
            "\"vary\":[{\"quantity\":\"x\",\"values\":[0.6,1,1.4]},"
                + "{\"quantity\":\"height\",\"from\":0.4,\"to\":0.2,\"steps\":2}],"
                + "\"measures\":[{\"measure\":\"outcome\"},{\"measure\":\"sealedAtS\"}],"
                + "\"release\":{\"y\":0.3}",
            "");

    assertEquals(6, rows(answer).size());
    assertEquals(List.of(0.6f, 0.4f), rows(answer).get(0).subList(0, 2));
    assertEquals(List.of(0.6f, 0.2f), rows(answer).get(1).subList(0, 2));
    String url = answer.header("Location");
    String svg =
        SERVICE
            .given()
            .get(url + "/plot?format=svg")
            .then()
            .statusCode(200)
            .header("Cache-Control", containsString("immutable"))
            .extract()
            .asString();
    assertTrue(svg.contains("<title") && svg.contains("A map of cells. 6 points"), svg);
    assertTrue(svg.contains(">Tide<"), svg);
    String times = SERVICE.given().get(url + "/plot?format=svg&column=sealedAtS").asString();
    assertNotEquals(svg, times);
    SERVICE
        .given()
        .get(url + "/plot?format=png&pixels=500")
        .then()
        .statusCode(200)
        .contentType("image/png");
    SERVICE
        .given()
        .get(url + "/plot?column=none")
        .then()
        .statusCode(400)
        .body("errors[0].detail", containsString("sealedAtS"));
    assertEquals(answer.asString(), SERVICE.given().get(url).asString());
  }

  @Test
  void cellsAreReadOneByOne() {
    String query = "vary=height&values=0.2;0.3;0.4&measure=barrier,restPoints&value=";
    String plane = plane();

    String first = sweep(plane, query + "cell&row=1").asString();
    assertEquals(first, sweep(plane, query + "greatest").asString());
    assertEquals("0.2", sweep(plane, query + "greatestAt").asString());
    assertEquals(
        "0,2",
        sweep(plane, query.replace("0.2;0.3;0.4", "0,2;0,3;0,4") + "greatestAt" + "&decimal=comma")
            .asString());
    assertEquals("3", sweep(plane, query + "cell&row=2&column=restPoints").asString());
    assertEquals("none", sweep(plane, query + "changes").asString());
    assertTrue(sweep(plane, query + "sentence").asString().startsWith("3 points"));
    sweep(plane, query + "cell&row=4").then().statusCode(400);
  }

  /** Pieces are named by what moves: a label more computes nothing again. */
  @Test
  void labelsComputeNothingAgain() {
    String members =
        "\"vary\":[{\"quantity\":\"drag\",\"values\":[0.31,0.32,0.33]}],"
            + "\"measures\":[{\"measure\":\"outcome\"}],\"release\":{\"x\":1,\"y\":0.2}";
    Response one = post(members, "");
    long before = pieces();
    Response other =
        SERVICE
            .given()
            .contentType("application/json")
            .body(
                "{\"layout\":"
                    + PLANE.replace("Tide", "Moor").replace("Dune", "Cliff").replace("Reef", "Bay")
                    + ","
                    + members
                    + "}")
            .post("/v1/sweeps?wait=60");

    assertEquals(before, pieces());
    assertNotEquals(one.<String>path("sweepId"), other.<String>path("sweepId"));
    assertTrue(List.of("Moor", "Cliff", "Bay").contains(rows(other).get(0).get(1)));
  }

  private static long pieces() {
    Timer timer =
        SERVICE
            .bean(MeterRegistry.class)
            .find("lodeswing.computations")
            .tags("kind", "sweep-piece", "end", "done")
            .timer();
    return timer == null ? 0 : timer.count();
  }

  @Test
  void smallMapTellsSharesAndEntropies() {
    Response answer =
        sweep(
            plane(),
            "vary=drag&values=0.2;0.4&measure=share,basinEntropy,boundaryBasinEntropy,boxDimension"
                + "&label=Tide&halfWidth=1.5");

    for (List<Object> row : rows(answer)) {
      // One third by symmetry, but for the square window.
      assertEquals(1.0 / 3, number(row.get(1)), 0.05);
      assertTrue(number(row.get(2)) < number(row.get(1)));
      double entropy = number(row.get(4));
      assertTrue(entropy > 0 && entropy < Math.log(3), row.toString());
    }
    double weak = number(rows(answer).get(0).get(4));
    double strong = number(rows(answer).get(1).get(4));
    assertTrue(weak > strong, "less loss mixes more");
    answer.then().body("notes", hasSize(greaterThan(0)));
  }

  @Test
  void dryRunTellsTheCostAndStoresNothing() {
    Response dry =
        post(
            "\"vary\":[{\"quantity\":\"drag\",\"from\":0.111,\"to\":0.911,\"steps\":9}],"
                + "\"measures\":[{\"measure\":\"restPoints\"}]",
            "&dry-run=true");

    dry.then()
        .statusCode(200)
        .body("points", equalTo(9))
        .body("pieces", equalTo(9))
        .body("costReleases", greaterThan(9 * 4_000));
    SERVICE.given().get("/v1/sweeps/" + dry.path("sweepId")).then().statusCode(404);
  }

  @Test
  void tooManyPointsSayHowManyAreAllowed() {
    post(
            "\"vary\":[{\"quantity\":\"drag\",\"from\":0.1,\"to\":0.9,\"steps\":31},"
                + "{\"quantity\":\"height\",\"from\":0.1,\"to\":0.9,\"steps\":30}],"
                + "\"measures\":[{\"measure\":\"restPoints\"}]",
            "")
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors[0].pointer", equalTo("/vary/0/steps"))
        .body("errors[0].detail", containsString("lower it to 30"));
    Response costly =
        post(
            "\"vary\":[{\"quantity\":\"drag\",\"from\":0.1,\"to\":0.9,\"steps\":900}],"
                + "\"measures\":[{\"measure\":\"repeatability\"}],\"release\":{\"x\":1,\"y\":1},"
                + "\"spread\":{\"kind\":\"disc\",\"radius\":1},\"width\":0.005",
            "");
    costly.then().statusCode(422).body("errors[0].pointer", equalTo("/vary/0/steps"));
    SERVICE.given().get("/v1/limits").then().body(containsString("sweepPoints"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "vary=drag&from=0.1&to=0.4&steps=0&measure=restPoints|?steps",
        "vary=drag&from=0.1&to=0.4&steps=1&measure=restPoints|?steps",
        "vary=drag&from=0.1&to=0.4&steps=1000000000&measure=restPoints|?steps",
        "vary=drag&from=0.1&to=0.1&steps=3&measure=restPoints|?to",
        "vary=drag&from=NaN&to=0.1&steps=3&measure=restPoints|?from",
        "vary=drag&from=0.1&steps=3&measure=restPoints|?to",
        "vary=drag&from=0&to=1&steps=3&spacing=log&measure=restPoints|?spacing",
        "vary=drak&values=0.1&measure=restPoints|?vary",
        "vary=gapMm&values=20&measure=restPoints|?vary",
        "vary=drag&values=0.1;0.1&measure=restPoints|?values",
        "vary=drag&values=0.1;soft&measure=restPoints|?values",
        "vary=drag&values=0.1&measure=outcome&x=1|?y",
        "vary=x&values=1&measure=restPoints|?vary",
        "vary=x&values=1e9&measure=outcome&y=0|?values",
        "vary=drag&values=0.1&measure=contact|?measure",
        "vary=drag&values=0.1&measure=chance&x=1&y=1&spreadMm=1|?label",
        "vary=drag&values=0.1&measure=chance&x=1&y=1&label=Tide|?spreadMm",
        "vary=drag&values=0.1&measure=barrier&label=Tidy|?label",
        "vary=ring.count&from=2&to=5&steps=3&measure=restPoints|?from",
        "vary=ring.poles&values=ns&measure=restPoints|?vary",
        "vary=drag&values=0.1&measure=nonsense|?measure"
      })
  void hostileRequestsAreRefused(String query, String pointer) {
    sweep(plane(), query).then().statusCode(400).body("errors.pointer", equalTo(List.of(pointer)));
  }

  @Test
  void rubbishForPolesAndTheSameQuantityTwiceAreRefused() {
    sweep(sample("three-stations"), "vary=ring.poles&values=ns;n%3Bx&measure=restPoints")
        .then()
        .statusCode(400)
        .body("errors[0].detail", containsString("letters n and s"));
    post(
            "\"vary\":[{\"quantity\":\"drag\",\"values\":[0.1]},"
                + "{\"quantity\":\"drag\",\"values\":[0.2]}],"
                + "\"measures\":[{\"measure\":\"restPoints\"},{\"measure\":\"restPoints\"}]",
            "")
        .then()
        .statusCode(400)
        .body("errors.pointer", equalTo(List.of("/vary/1/quantity", "/measures/1")));
  }
}
