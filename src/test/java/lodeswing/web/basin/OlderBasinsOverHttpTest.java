package lodeswing.web.basin;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.nio.file.Path;
import java.time.Duration;
import lodeswing.RunningService;
import lodeswing.job.ComputationKey;
import lodeswing.job.StoredResult;
import lodeswing.store.ResultTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A map that an older engine computed. */
class OlderBasinsOverHttpTest {

  private static final int EARLIER = ComputationKey.ENGINE_REVISION - 1;

  /** Copies the one row of a kind to the id that it had under the earlier revision. */
  private static String copy(RunningService service, String kind, String prefix, String before) {
    String id =
        service
            .bean(JdbcClient.class)
            .sql("SELECT id FROM stored_result WHERE kind = :kind")
            .param("kind", kind)
            .query(String.class)
            .single();
    ResultTable table = service.bean(ResultTable.class);
    StoredResult row = table.find(id).orElseThrow();
    String older = new ComputationKey(prefix, before + row.canonicalRequest(), EARLIER).id();
    table.saveIfAbsent(
        StoredResult.readBack(
            older,
            row.engineRevision() == 0 ? kind : "older-" + kind,
            row.canonicalRequest(),
            row.bytes(),
            row.engineRevision() == 0 ? 0 : EARLIER,
            row.createdAt()),
        Duration.ofSeconds(1));
    return older;
  }

  @Test
  void documentAndTileAreReadUnderTheOlderId(@TempDir Path folder) {
    try (RunningService service = RunningService.onFolder(folder).start()) {
      String layout =
          service.given().get("/v1/sample-layouts/paper-triangle?format=text").asString();
      Response today =
          service
              .given()
              .contentType("application/json")
              .body("{\"layoutId\":\"" + layout + "\"}")
              .post("/v1/basins");
      String self = today.jsonPath().getString("links.self");
      byte[] tile = service.given().get(self + "/tiles/0/0/0").asByteArray();
      String older = "/v1/basins/" + copy(service, "basin-request", "bas", "basin|");
      copy(service, "basin-survey", "srv", "");
      service
          .given()
          .get(older + "/tiles/0/0/0")
          .then()
          .statusCode(200)
          .header("Link", not(containsString("latest-version")));
      copy(service, "basin-tile", "til", "");

      Response olderMap = service.given().get(older);
      assertTrue(
          olderMap.headers().getValues("Link").contains("<" + self + ">; rel=\"latest-version\""));
      olderMap
          .then()
          .statusCode(200)
          .body("links.self", equalTo(older))
          .body("links.self", not(equalTo(self)))
          .body("engineRevision", equalTo(EARLIER))
          .body("olderEngine", equalTo(true));
      Response olderTile = service.given().get(older + "/tiles/0/0/0");
      assertTrue(
          olderTile
              .headers()
              .getValues("Link")
              .contains("<" + self + "/tiles/0/0/0>; rel=\"latest-version\""));
      assertArrayEquals(tile, olderTile.asByteArray());
    }
  }
}
