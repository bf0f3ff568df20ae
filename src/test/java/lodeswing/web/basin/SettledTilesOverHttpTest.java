package lodeswing.web.basin;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Tiles with settling times, which are asked for apart. */
class SettledTilesOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final int PIXELS = 256 * 256;

  private static Response get(String path) {
    return SERVICE.given().get(path);
  }

  private static String layout() {
    return get("/v1/sample-layouts/paper-triangle?format=text").asString().trim();
  }

  private static String tile() {
    Response map =
        SERVICE
            .given()
            .contentType("application/json")
            .body("{\"layoutId\":\"" + layout() + "\",\"window\":{\"halfWidth\":1.5}}")
            .post("/v1/basins?wait=60");
    assertTrue(map.statusCode() < 300, map.asString());
    return "/v1/basins/" + map.path("basinId") + "/tiles/0/0/0";
  }

  @Test
  void tableHoldsTheSettlingTimesOfTraces() {
    String tile = tile();
    String[] plain = get(tile + "?format=csv&wait=60").asString().split("\r\n");
    String[] lines = get(tile + "?format=csv&settled=true&wait=60").asString().split("\r\n");
    assertEquals("x,y,index,outcome,sealed_s", plain[0]);
    assertEquals("x,y,index,outcome,sealed_s,settled_s", lines[0]);
    for (int i = 1; i < lines.length; i += PIXELS / 7) {
      assertTrue(lines[i].startsWith(plain[i] + ","), lines[i]);
      String[] cells = lines[i].split(",");
      Response trace =
          get(
              "/v1/layouts/"
                  + layout()
                  + "/trace?format=text&value=settledAtS&durationS=200&wait=60&x="
                  + cells[0]
                  + "&y="
                  + cells[1]);
      double expected = Double.parseDouble(trace.asString().trim());
      assertEquals(expected, Double.parseDouble(cells[5]), 1e-3 * expected, lines[i]);
    }
  }

  @Test
  void fileSaysThatSettlingTimesFollow() {
    String tile = tile();
    byte[] plain = get(tile + "?format=binary&wait=60").asByteArray();
    byte[] settled = get(tile + "?format=binary&settled=true&wait=60").asByteArray();
    ByteBuffer file = ByteBuffer.wrap(settled).order(ByteOrder.LITTLE_ENDIAN);
    assertEquals(64 + 6 * PIXELS, plain.length);
    assertEquals(64 + 10 * PIXELS, settled.length);
    assertEquals(1, file.getInt(20));
    for (int i = 0; i < PIXELS; i += 997) {
      float sealedAt = file.getFloat(64 + 2 * PIXELS + 4 * i);
      float settledAt = file.getFloat(64 + 6 * PIXELS + 4 * i);
      assertTrue(settledAt >= sealedAt, sealedAt + " " + settledAt);
    }
  }

  @Test
  void pictureAndNonsenseAreRefused() {
    String tile = tile();
    get(tile + "?settled=true")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("?settled"))
        .body("errors[0].detail", containsString("format=csv"));
    Response nonsense = get(tile + "?settled=maybe&format=csv");
    assertEquals(400, nonsense.statusCode());
    assertTrue(nonsense.asString().contains("settled is 'maybe'"), nonsense.asString());
    get(tile + "?settled=false&wait=60").then().statusCode(200).contentType(not("text/csv"));
  }
}
