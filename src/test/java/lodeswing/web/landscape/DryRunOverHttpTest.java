package lodeswing.web.landscape;

import static org.hamcrest.MatcherAssert.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.lessThan;

import io.restassured.path.json.JsonPath;
import lodeswing.RunningService;
import lodeswing.job.WorkCost;
import lodeswing.web.layout.LayoutStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Every dry run tells what its work costs, in one unit, by one member. */
class DryRunOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String RIG =
      """
      {"model": "bench", "pendulum": {"kind": "cord", "lengthMm": 431, "bobMassG": 47},
       "bobMagnet": {"shape": "dipole", "momentAm2": 0.4, "poleDown": "north"},
       "gapMm": %s,
       "magnets": [{"x": 37, "y": 0, "shape": "dipole", "momentAm2": 0.4, "poleUp": "south"},
                   {"x": -37, "y": 0, "shape": "dipole", "momentAm2": 0.4, "poleUp": "south"}],
       "damping": {"swingsToHalf": 12}}
      """;

  private static JsonPath post(String path, String body) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body(body)
        .post(path)
        .then()
        .extract()
        .jsonPath();
  }

  private static long cost(String path, String body) {
    JsonPath answer = post(path + "?dry-run=true", body);
    assertThat(path, answer.getBoolean("dryRun"), equalTo(true));
    return answer.getLong("costReleases");
  }

  @Test
  void everyDryRunTellsItsCostAndLessOnceTheLayoutIsReady() {
    String rig = RIG.formatted("41.5");
    long ready = cost("/v1/layouts", rig);
    String id = post("/v1/layouts", rig).getString("layoutId");
    String trace = "{\"layoutId\":\"" + id + "\",\"release\":{\"x\":20,\"y\":9}}";
    String map = "{\"layoutId\":\"" + id + "\"}";
    String list = "{\"x\":[20,21,22],\"y\":[9,9,9]}";
    String outcomes = "/v1/layouts/" + id + "/outcomes";
    long[] before = {cost("/v1/traces", trace), cost("/v1/basins", map), cost(outcomes, list)};

    SERVICE.given().get("/v1/layouts/" + id + "/rest-points?wait=60").then().statusCode(200);

    long[] after = {cost("/v1/traces", trace), cost("/v1/basins", map), cost(outcomes, list)};
    assertThat(ready, greaterThan(1L));
    for (int i = 0; i < after.length; i++) {
      assertThat(after[i], greaterThan(0L));
      assertThat(before[i] - after[i], equalTo(ready));
    }
    WorkCost told = SERVICE.bean(Landscapes.class).costOf(SERVICE.bean(LayoutStore.class).get(id));
    assertThat(after[0], equalTo(told.trace()));
    assertThat(after[1], equalTo(told.survey()));
    assertThat(after[2], equalTo(told.list(3, false)));
  }

  @Test
  void listsCostByTheirLengthAndSettlingTimesMore() {
    String id = post("/v1/layouts", RIG.formatted("42.5")).getString("layoutId");
    SERVICE.given().get("/v1/layouts/" + id + "/rest-points?wait=60").then().statusCode(200);
    String path = "/v1/layouts/" + id + "/outcomes";
    long one = cost(path, "{\"x\":[20],\"y\":[9]}");
    long two = cost(path, "{\"x\":[20,21],\"y\":[9,9]}");
    long settled =
        post(path + "?dry-run=true&settled=true", "{\"x\":[20],\"y\":[9]}").getLong("costReleases");
    assertThat(two, equalTo(2 * one));
    assertThat(one, lessThan(settled));
  }
}
