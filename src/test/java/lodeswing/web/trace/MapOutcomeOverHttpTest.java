package lodeswing.web.trace;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A single release and the map of the usual window name one end, or the release says that not. */
class MapOutcomeOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final int TILE = 256;

  /** So strong that a map takes a second. */
  private static final String LOSS = "swingsToHalf=4";

  /** Centre of a pixel of the sample's usual window whose end the map's tolerance changes. */
  private static final String APART = "x=-89.484375&y=91.640625";

  private static Response get(String path) {
    return SERVICE.given().get(path);
  }

  private static String sample(String name) {
    return get("/v1/sample-layouts/" + name + "?format=text").asString();
  }

  private static String outcome(String release) {
    return "/v1/layouts/" + sample("three-stations") + "/outcome?" + LOSS + "&wait=60&" + release;
  }

  @Test
  void everyPixelsLabelIsTheOutcomeOrTheMapOutcomeOfARelease() {
    String layout = sample("three-stations");
    Response map = get("/v1/layouts/" + layout + "/basin?format=json&wait=60&" + LOSS);
    double half = map.<Number>path("window.halfWidth").doubleValue();
    Map<Integer, Object> ends = new HashMap<>();
    List<Map<String, Object>> legend = map.path("legend");
    legend.forEach(line -> ends.put((Integer) line.get("index"), line.get("restPointId")));
    ByteBuffer tile =
        ByteBuffer.wrap(
                get("/v1/basins/" + map.path("basinId") + "/tiles/0/0/0?format=binary&wait=60")
                    .asByteArray())
            .order(ByteOrder.LITTLE_ENDIAN);
    int apart = 0;
    for (int column = 0; column < 24; column += 2) {
      double x = -half + (column + 0.5) * 2 * half / TILE;
      double y = half - half / TILE;
      Response outcome = get(outcome("x=" + x + "&y=" + y));
      Object shown = ends.get((int) tile.getShort(64 + 2 * column));
      Object other = outcome.path("mapOutcome.restPointId");
      apart += other == null ? 0 : 1;
      assertEquals(
          shown, other == null ? outcome.path("outcome.restPointId") : other, "column " + column);
    }
    assertTrue(apart > 0 && apart < 12, "" + apart);
  }

  @Test
  void aSureOutcomeSaysWhereTheMapNamesAnotherEnd() {
    Response document = get(outcome(APART));
    document.then().statusCode(200).body("sure", equalTo(true));
    String map = document.path("mapOutcome.name");
    assertTrue(!map.equals(document.path("outcome.name")), map);
    document
        .then()
        .body("mapOutcome.kind", equalTo("rest-point"))
        .body("notes", hasItem(containsString("shows another end here: " + map)));
    assertEquals(map, get(outcome(APART + "&value=mapOutcome")).asString());
    String[] rows = get(outcome(APART + "&format=csv")).asString().split("\r\n");
    assertTrue(rows[1].endsWith("," + map), rows[1]);
    get(outcome(APART).replace("/outcome?", "/trace?durationS=1&"))
        .then()
        .statusCode(200)
        .body("mapOutcome.name", equalTo(map));
  }

  @Test
  void whereBothAgreeOrNoMapShowsTheReleaseNothingIsAdded() {
    assertEquals("the same", get(outcome("x=20&y=30&value=mapOutcome")).asString());
    for (String release : List.of("x=20&y=30", APART + "&vx=1", "x=-93&y=0")) {
      get(outcome(release))
          .then()
          .statusCode(200)
          .body("mapOutcome", nullValue())
          .body("notes", not(hasItem(containsString("another end"))));
    }
    for (String release : List.of(APART + "&vx=1", "x=-93&y=0")) {
      assertEquals("not on the map", get(outcome(release + "&value=mapOutcome")).asString());
    }
  }
}
