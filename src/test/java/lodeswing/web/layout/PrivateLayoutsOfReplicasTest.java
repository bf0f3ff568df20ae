package lodeswing.web.layout;

import static lodeswing.web.layout.LayoutBodies.bench;
import static lodeswing.web.layout.LayoutBodies.disc;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.file.Path;
import lodeswing.RunningService;
import lodeswing.StoppableDatabase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A private layout at two processes of one PostgreSQL. */
class PrivateLayoutsOfReplicasTest {

  @TempDir Path folder;

  private RunningService replica(StoppableDatabase database, String name) {
    return RunningService.onFolder(folder.resolve(name), database.settings().toArray(String[]::new))
        .with(OwnersByHeader.class)
        .start();
  }

  private static RequestSpecification tide(RunningService at) {
    return at.given().header(OwnersByHeader.FIELD, "tide");
  }

  @Test
  void whatOneDeletesIsGoneAtTheOtherThoughThatHadAnsweredIt() throws Exception {
    try (var database = new StoppableDatabase(folder.resolve("database"));
        RunningService one = replica(database, "one");
        RunningService other = replica(database, "other")) {
      String body = bench("25", disc("45", "0"), ",\"visibility\":\"private\"");
      String id = stored(one, body);
      String trace =
          tide(one)
              .contentType("application/json")
              .body("{\"layoutId\":\"" + id + "\",\"release\":{\"x\":60,\"y\":5},\"durationS\":1}")
              .post("/v1/traces?wait=60")
              .path("traceId");
      byte[] here = read(one, "/v1/traces/" + trace, 200).asByteArray();
      assertArrayEquals(here, read(other, "/v1/traces/" + trace, 200).asByteArray());
      assertEquals(id, stored(other, body));

      tide(other).delete("/v1/layouts/" + id).then().statusCode(204);

      for (RunningService at : new RunningService[] {one, other}) {
        read(at, "/v1/layouts/" + id, 404);
        read(at, "/v1/traces/" + trace, 404);
        read(at, "/v1/traces/" + trace + "/path", 404);
      }
    }
  }

  private static String stored(RunningService at, String body) {
    return tide(at).contentType("application/json").body(body).post("/v1/layouts").path("layoutId");
  }

  private static Response read(RunningService at, String path, int status) {
    Response answer = tide(at).get(path);
    assertEquals(status, answer.statusCode(), path);
    return answer;
  }
}
