package lodeswing.web.basin;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Maps of a rig whose bob can run into a magnet that stands up from the plate. */
class BenchBasinsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String RIG =
      "{\"model\":\"bench\","
          + "\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":400,\"bobMassG\":20},"
          + "\"bobMagnet\":{\"shape\":\"sphere\",\"diameterMm\":10,\"grade\":\"N35\","
          + "\"poleDown\":\"north\"},\"gapMm\":10,"
          + "\"magnets\":[{\"shape\":\"sphere\",\"grade\":\"N35\",\"diameterMm\":12,\"x\":60,\"y\":0,"
          + "\"bottomMm\":13,\"poleUp\":\"north\",\"label\":\"Grove\"}],"
          + "\"damping\":{\"swingsToHalf\":2}}";

  private static Response get(String path) {
    return SERVICE.given().get(path);
  }

  @Test
  void touchesHaveAClassOfTheirOwnThatTracesConfirm() {
    Response map =
        SERVICE
            .given()
            .contentType("application/json")
            .body("{\"layout\":" + RIG + ",\"window\":{\"halfWidth\":300}}")
            .post("/v1/basins?wait=60");
    assertTrue(map.statusCode() < 300, map.asString());
    String basin = "/v1/basins/" + map.path("basinId");
    Map<Integer, String> kinds = new HashMap<>();
    List<Integer> indices = map.path("legend.index");
    List<String> words = map.path("legend.kind");
    for (int i = 0; i < indices.size(); i++) {
      kinds.put(indices.get(i), words.get(i));
    }
    int side = 24;
    ByteBuffer file =
        ByteBuffer.wrap(get(basin + "/preview?format=binary&wait=60&width=" + side).asByteArray())
            .order(ByteOrder.LITTLE_ENDIAN);
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < side * side; i++) {
      String kind = String.valueOf(kinds.get((int) file.getShort(64 + 2 * i)));
      if (seen.add(kind)) {
        double x = -300 + (i % side + 0.5) * 600 / side;
        int row = i / side;
        double y = 300 - (row + 0.5) * 600 / side;
        confirm(map.path("layoutId"), x, y, kind);
      }
    }
    assertTrue(seen.containsAll(List.of("cannot-start", "magnet-contact")), "" + seen);
  }

  /** Ends that are no rest point keep their number from map to summary. */
  @Test
  void touchesAreSharesOfTheirOwn() {
    String layout =
        SERVICE
            .given()
            .contentType("application/json")
            .body(RIG)
            .post("/v1/layouts")
            .path("layoutId");
    String url = "/v1/layouts/" + layout + "/basin";
    int side = 64;
    Response summary = get(url + "/summary?halfWidth=300&wait=60&side=" + side);
    String basin = "/v1/basins/" + summary.path("basinId");
    ByteBuffer file =
        ByteBuffer.wrap(get(basin + "/preview?format=binary&wait=60&width=" + side).asByteArray())
            .order(ByteOrder.LITTLE_ENDIAN);
    Map<Integer, Integer> counted = new HashMap<>();
    for (int i = 0; i < side * side; i++) {
      counted.merge((int) file.getShort(64 + 2 * i), 1, Integer::sum);
    }
    Map<Integer, String> kinds = new HashMap<>();
    List<Map<String, Object>> legend = get(basin).path("legend");
    legend.forEach(line -> kinds.put((Integer) line.get("index"), (String) line.get("kind")));
    List<Map<String, Object>> shares = summary.path("shares");
    Set<Object> seen = new HashSet<>();
    for (Map<String, Object> share : shares) {
      seen.add(share.get("kind"));
      assertEquals(kinds.get(share.get("index")), share.get("kind"));
      assertEquals(counted.get(share.get("index")), share.get("releases"));
    }
    assertEquals(counted.size(), shares.size());
    assertTrue(seen.containsAll(List.of("cannot-start", "magnet-contact")), "" + seen);
  }

  private static void confirm(String layout, double x, double y, String kind) {
    Response outcome = get("/v1/layouts/" + layout + "/outcome?wait=60&x=" + x + "&y=" + y);
    if (kind.equals("cannot-start")) {
      outcome.then().statusCode(422).body("code", equalTo("impossible-release"));
    } else {
      outcome.then().statusCode(200);
      assertEquals(kind, outcome.path("outcome.kind"), x + " " + y);
    }
  }

  @Test
  void usualWindowHoldsTheMagnetsWithAMargin() {
    String layout =
        SERVICE
            .given()
            .contentType("application/json")
            .body(RIG)
            .post("/v1/layouts")
            .path("layoutId");

    SERVICE
        .given()
        .contentType("application/json")
        .body("{\"layoutId\":\"" + layout + "\"}")
        .post("/v1/basins?dry-run=true")
        .then()
        .statusCode(200)
        .body("window.halfWidth", equalTo(110));
  }

  @Test
  void windowThatNoReleaseReachesIsRefused() {
    SERVICE
        .given()
        .contentType("application/json")
        .body("{\"layout\":" + RIG + ",\"window\":{\"x\":2000,\"halfWidth\":100}}")
        .post("/v1/basins")
        .then()
        .statusCode(422)
        .body("code", equalTo("impossible-release"))
        .body("errors[0].detail", containsString("move it towards the middle"));
  }
}
