package lodeswing.web.basin;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lodeswing.RunningService;
import lodeswing.core.statistics.Proportion;
import lodeswing.render.csv.CellText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Summaries of maps over HTTP, on the sample plane whose three magnets are alike. */
class SummariesOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final int SIDE = 256;
  private static final double LN_2 = Math.log(2);

  private static Response get(String path) {
    return SERVICE.given().urlEncodingEnabled(false).get(path);
  }

  private static String layout() {
    return get("/v1/sample-layouts/paper-triangle?format=text").asString();
  }

  private static Response post(String layoutId, double halfWidth) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body("{\"layoutId\":\"" + layoutId + "\",\"window\":{\"halfWidth\":" + halfWidth + "}}")
        .post("/v1/basins?wait=60");
  }

  private static String basin() {
    return "/v1/basins/" + post(layout(), 2).path("basinId");
  }

  private static double number(Response answer, String path) {
    return answer.<Number>path(path).doubleValue();
  }

  private static int[] indices(String basin) {
    ByteBuffer tile =
        ByteBuffer.wrap(get(basin + "/tiles/0/0/0?format=binary&wait=60").asByteArray())
            .order(ByteOrder.LITTLE_ENDIAN);
    int[] indices = new int[SIDE * SIDE];
    for (int i = 0; i < indices.length; i++) {
      indices[i] = tile.getShort(64 + 2 * i);
    }
    return indices;
  }

  /**
   * Turned by a third the layout is itself again, to its magnets' last digit: in a round window
   * each has a third, within the count's interval. The map's square is only mirrored: two are
   * equal.
   */
  @Test
  void threeMagnetsAlikeShareTheReleasesAlike() {
    String basin = basin();
    Response summary = get(basin + "/summary?wait=60");
    int[] tile = indices(basin);
    int[] within = new int[3];
    for (int i = 0; i < tile.length; i++) {
      int row = i / SIDE;
      if (Math.hypot(i % SIDE - 127.5, row - 127.5) < 127) {
        within[tile[i]]++;
      }
    }

    summary.then().statusCode(200).body("releases", equalTo(65_536)).body("side", equalTo(SIDE));
    List<Map<String, Object>> shares = summary.path("shares");
    assertEquals(3, shares.size());
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double share = number(summary, "shares[" + i + "].share");
      sum += share;
      assertEquals(1.0 / 3, share, 0.02);
      assertTrue(number(summary, "shares[" + i + "].low") < share);
      assertTrue(number(summary, "shares[" + i + "].high") > share);
      assertEquals("rest-point", shares.get(i).get("kind"));
      var inside = new Proportion(within[i], within[0] + within[1] + within[2]);
      assertTrue(inside.clopperPearson(0.99).contains(1.0 / 3), inside + " of " + i);
    }
    assertEquals(1, sum, 1e-12);
    assertEquals(
        number(summary, "shares[1].share"), number(summary, "shares[2].share"), 1e-3, "mirrored");
  }

  /** At 256 pixels this map is mixed too finely; closer releases give what it cannot. */
  @Test
  void closerReleasesGiveTheExponentThatPixelsCannot() {
    Response summary = get(basin() + "/summary?wait=60");

    summary
        .then()
        .body("drawn.releases", equalTo(39_936))
        .body("drawn.seed", equalTo(1))
        .body("notes[1]", containsString("39936 more releases"));
    Map<String, Object> members = summary.path("$");
    assertTrue(!members.containsKey("boxDimension"));
    double alpha = number(summary, "uncertaintyExponent.value");
    assertTrue(alpha > 0 && alpha < 1, "" + alpha);
    Response other = get(basin() + "/summary?seed=2&wait=60");
    double again = number(other, "uncertaintyExponent.value");
    assertTrue(alpha != again);
    assertTrue(number(summary, "uncertaintyExponent.low") < again);
    assertTrue(number(summary, "uncertaintyExponent.high") > again);
  }

  @Test
  void sharesAreThoseOfTheTile() {
    String basin = basin();
    Response summary = get(basin + "/summary?wait=60");
    Map<Integer, Integer> counted = new HashMap<>();
    for (int index : indices(basin)) {
      counted.merge(index, 1, Integer::sum);
    }

    List<Integer> listed = summary.path("shares.index");
    assertEquals(counted.size(), listed.size());
    for (int i = 0; i < listed.size(); i++) {
      assertEquals(counted.get(listed.get(i)), (int) summary.path("shares[" + i + "].releases"));
    }
  }

  /** By the definition in Sci. Rep. 6 (2016) 31416, from the tile alone. */
  @Test
  void basinEntropyIsThatOfTheTile() {
    String basin = basin();
    int[] tile = indices(basin);
    double sum = 0;
    double onBorder = 0;
    int boxes = 0;
    int borders = 0;
    for (int row = 0; row + 5 <= SIDE; row += 5) {
      for (int column = 0; column + 5 <= SIDE; column += 5) {
        int[] counts = new int[64];
        for (int n = 0; n < 25; n++) {
          int down = n / 5;
          counts[tile[(row + down) * SIDE + column + n % 5]]++;
        }
        double entropy = 0;
        for (int count : counts) {
          entropy -= count == 0 ? 0 : count / 25.0 * Math.log(count / 25.0);
        }
        sum += entropy;
        boxes++;
        onBorder += entropy;
        borders += entropy > 0 ? 1 : 0;
      }
    }

    Response summary = get(basin + "/summary?wait=60");

    assertEquals(sum / boxes, number(summary, "basinEntropy.value"), 1e-6);
    assertEquals(onBorder / borders, number(summary, "boundaryBasinEntropy.value"), 1e-6);
    assertTrue(number(summary, "boundaryBasinEntropy.low") > LN_2, "the border is a fractal");
  }

  @Test
  void everyFigureHasItsIntervalAndItsSource() {
    Response summary = get(basin() + "/summary?side=512&wait=60");

    for (String figure :
        List.of("boxDimension", "uncertaintyExponent", "basinEntropy", "boundaryBasinEntropy")) {
      double value = number(summary, figure + ".value");
      assertTrue(number(summary, figure + ".low") <= value, figure);
      assertTrue(number(summary, figure + ".high") >= value, figure);
      assertTrue(summary.<String>path(figure + ".source").matches(".*\\(\\d{4}\\) \\d+"), figure);
    }
    double dimension = number(summary, "boxDimension.value");
    assertTrue(dimension > 1 && dimension < 2, "" + dimension);
    assertEquals(2, dimension + number(summary, "uncertaintyExponent.value"), 0.1, "d = 2 - alpha");
    summary
        .then()
        .header("Cache-Control", containsString("immutable"))
        .body("engineRevision", equalTo(lodeswing.job.ComputationKey.ENGINE_REVISION))
        .body("units.length", equalTo(get(basin()).path("units.length")))
        .body("shareSource", containsString("1934"))
        .body("wada.indices.size()", equalTo(3))
        .body("links.basin", equalTo(basin()));
    assertTrue(
        List.of("wada", "partly-wada", "not-wada").contains(summary.<String>path("wada.verdict")));
  }

  @Test
  void documentOfTheMapLeadsToIt() {
    String link = get(basin()).path("links.summary");

    get(link + "?wait=60").then().statusCode(200).body("basinId", startsWith("bas-"));
  }

  @Test
  void sheetReadsSentenceTableAndSingleValues() {
    String url = "/v1/layouts/" + layout() + "/basin/summary?halfWidth=2&side=512&wait=60";
    Response summary = get(basin() + "/summary?side=512&wait=60");
    String name = summary.path("shares[0].name");
    double share = number(summary, "shares[0].share");

    get(url + "&format=text").then().body(equalTo(CellText.line(summary.path("sentence"))));
    get(url + "&value=basinId").then().body(equalTo(summary.path("basinId")));
    get(url + "&value=releases").then().body(equalTo("262144"));
    get(url + "&value=wada").then().body(equalTo(summary.path("wada.verdict")));
    String dimension = get(url + "&value=boxDimension").asString();
    assertEquals(number(summary, "boxDimension.value"), Double.parseDouble(dimension), 1e-4);
    get(url + "&value=boxDimension&decimal=comma")
        .then()
        .contentType("text/plain;charset=UTF-8")
        .body(equalTo(dimension.replace('.', ',')));
    String cell = get(url + "&value=share&outcome=" + name).asString();
    assertEquals(share, Double.parseDouble(cell), 1e-6);
    double low = Double.parseDouble(get(url + "&value=shareLow&outcome=" + name).asString());
    assertEquals(number(summary, "shares[0].low"), low, 1e-6);
    String[] rows = get(url + "&format=csv").asString().split("\r\n");
    assertEquals("figure,index,outcome,value,low,high,releases,source", rows[0]);
    assertEquals(9, rows.length);
    assertTrue(rows[1].startsWith("share,0," + name + ",0.3"), rows[1]);
    assertTrue(rows[4].startsWith("boxDimension,,,1."), rows[4]);
    assertTrue(rows[8].startsWith("wada,," + summary.path("wada.verdict")), rows[8]);
    get(url.replace("512", "64") + "&drag=0.8&value=basinEntropy").then().statusCode(200);
  }

  @Test
  void newLabelComputesNothing() {
    String body =
        "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.8,\"height\":0.3,\"magnets\":["
            + "{\"x\":0.577,\"y\":0,\"strength\":1,\"label\":\"Tide\"},"
            + "{\"x\":-0.577,\"y\":0,\"strength\":1,\"label\":\"Dune\"}]}";
    List<String> names = new ArrayList<>();
    for (String sent : List.of(body, body.replace("Tide", "Harbour"))) {
      String id = post(stored(sent), 1).path("basinId");
      Response summary = get("/v1/basins/" + id + "/summary?side=64&wait=60");
      names.add(summary.path("shares[0].label") + " " + summary.path("shares[1].label"));
      if (sent.contains("Harbour")) {
        summary.then().header("Cache-Status", containsString("hit"));
      }
    }

    assertEquals(names.get(0).replace("Tide", "Harbour"), names.get(1));
    assertTrue(names.get(1).contains("Harbour"), names.get(1));
  }

  private static String stored(String layout) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body(layout)
        .post("/v1/layouts")
        .path("layoutId");
  }

  /** A single magnet in the middle: every release ends there, and there is no border. */
  @Test
  void mapWithoutABorderHasSharesAlone() {
    String layout =
        stored(
            "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.8,\"height\":0.3,"
                + "\"magnets\":[{\"x\":0,\"y\":0,\"strength\":1,\"label\":\"Tide\"}]}");
    String url = "/v1/layouts/" + layout + "/basin/summary?halfWidth=1&side=64&wait=60";
    Response summary = get(url);

    assertEquals(1, number(summary, "shares[0].share"));
    Map<String, Object> members = summary.path("$");
    for (String absent : List.of("boxDimension", "uncertaintyExponent", "boundaryBasinEntropy")) {
      assertTrue(!members.containsKey(absent), absent);
      get(url + "&value=" + absent).then().statusCode(200).body(equalTo("none"));
    }
    summary.then().body("wada.verdict", equalTo("too-few-labels"));
  }

  @Test
  void hostileParametersGiveProblems() {
    String basin = basin();
    String byAddress = "/v1/layouts/" + layout() + "/basin/summary";
    for (String url : List.of(basin + "/summary", byAddress)) {
      for (String query :
          List.of(
              "side=63",
              "side=-1",
              "side=1e3",
              "side=99999999999999999999",
              "side=256&side=256",
              "seed=-1",
              "seed=NaN",
              "seed=4294967296",
              "value=everything&format=json",
              "value=share&format=json",
              "value=shareLow&outcome=&format=json",
              "halfwidth=1e999",
              "decimal=;")) {
        get(url + "?" + query).then().statusCode(400).body("errors.size()", equalTo(1));
      }
      get(url + "?wait=60&value=share&outcome=%3Cscript%3E")
          .then()
          .statusCode(400)
          .contentType("text/plain;charset=UTF-8")
          .body(startsWith("ERROR "));
      get(url + "?side=8192")
          .then()
          .statusCode(422)
          .body("code", equalTo("too-costly"))
          .body("errors[0].detail", equalTo("is 8192; lower it to 1024"));
      get(url + "?format=png").then().statusCode(406);
    }
    get("/v1/basins/bas-nothing/summary").then().statusCode(404);
    get("/v1/layouts/lay-nothing/basin/summary").then().statusCode(404);
    get(byAddress + "?halfWidth=0").then().statusCode(400);
  }

  /** Tiles wait for the survey of their window; none of them may hold a thread that it needs. */
  @Test
  void tilesSummaryAndSurveyAskedAtOnceAllCome() throws Exception {
    String layout = layout();
    var callers = Executors.newFixedThreadPool(8);
    try {
      for (int round = 0; round < 3; round++) {
        String halfWidth = "0." + (5 + round);
        SERVICE
            .given()
            .contentType("application/json")
            .body("{\"layoutId\":\"" + layout + "\",\"window\":{\"halfWidth\":" + halfWidth + "}}")
            .post("/v1/basins?wait=0");
        String basin = "/v1/basins/" + dryId(layout, halfWidth);
        List<Callable<Integer>> calls = new ArrayList<>();
        for (String path :
            List.of(
                "/tiles/0/0/0",
                "/tiles/1/0/0",
                "/tiles/1/1/0",
                "/summary?side=64",
                "",
                "/tiles/1/0/1",
                "/preview?width=32",
                "/tiles/1/1/1")) {
          String url = basin + path + (path.contains("?") ? "&" : "?") + "wait=60";
          calls.add(() -> get(url).statusCode());
        }
        for (Future<Integer> status : callers.invokeAll(calls)) {
          assertEquals(200, status.get());
        }
      }
    } finally {
      callers.shutdownNow();
    }
  }

  private static String dryId(String layout, String halfWidth) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body("{\"layoutId\":\"" + layout + "\",\"window\":{\"halfWidth\":" + halfWidth + "}}")
        .post("/v1/basins?dry-run=true")
        .path("basinId");
  }
}
