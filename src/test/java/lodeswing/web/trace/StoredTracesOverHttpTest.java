package lodeswing.web.trace;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThanOrEqualTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;
import lodeswing.RunningService;
import lodeswing.job.ComputationKey;
import lodeswing.job.StoredResult;
import lodeswing.store.ResultTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What becomes of stored traces that are damaged, dropped or of an older engine. */
@Timeout(120)
class StoredTracesOverHttpTest {

  private static final int EARLIER = ComputationKey.ENGINE_REVISION - 1;
  private static final String LAYOUT =
      "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,\"magnets\":["
          + "{\"x\":0.57735,\"y\":0,\"strength\":1},"
          + "{\"x\":-0.28868,\"y\":0.5,\"strength\":1},"
          + "{\"x\":-0.28868,\"y\":-0.5,\"strength\":1}]}";

  private static Response post(RunningService service, double x) {
    String release = "{\"x\":" + x + ",\"y\":0.4}";
    String body = "{\"layout\":" + LAYOUT + ",\"release\":" + release + ",\"durationS\":4}";
    return service.given().contentType("application/json").body(body).post("/v1/traces");
  }

  private static StoredResult latest(RunningService service, String kind) {
    String id =
        service
            .bean(JdbcClient.class)
            .sql(
                "SELECT id FROM stored_result WHERE kind = :kind"
                    + " ORDER BY created_at DESC FETCH FIRST ROW ONLY")
            .param("kind", kind)
            .query(String.class)
            .single();
    return service.bean(ResultTable.class).find(id).orElseThrow();
  }

  /** Writes what an earlier engine would have left: its request and another path. */
  private static String writeEarlier(RunningService service, byte[] path) {
    ResultTable table = service.bean(ResultTable.class);
    StoredResult request = latest(service, "trace-request");
    StoredResult today = latest(service, "trace");
    var traceKey = new ComputationKey("trc", "trace|" + request.canonicalRequest(), EARLIER);
    var pathKey = new ComputationKey("pth", today.canonicalRequest(), EARLIER);
    Instant then = Instant.parse("2025-11-01T08:00:00Z");
    table.saveIfAbsent(
        StoredResult.document(
            traceKey.id(), "trace-request", request.canonicalRequest(), request.bytes(), then));
    table.saveIfAbsent(
        StoredResult.readBack(pathKey.id(), "trace", today.canonicalRequest(), path, EARLIER, then),
        Duration.ofSeconds(1));
    return traceKey.id();
  }

  @Test
  void aTraceOfAnOlderEngineIsReadUnderItsIdAndSaysSo(@TempDir Path folder) throws Exception {
    try (RunningService service = RunningService.onFolder(folder).start()) {
      String other = post(service, 1.3).jsonPath().getString("links.csv");
      byte[] path = latest(service, "trace").bytes();
      LockSupport.parkNanos(5_000_000);
      Response today = post(service, 1.2);
      String url = "/v1/traces/" + writeEarlier(service, path);

      Response older = service.given().get(url);
      older
          .then()
          .statusCode(200)
          .header("Cache-Status", containsString("hit"))
          .header(
              "Link",
              containsString(
                  "<" + today.jsonPath().getString("links.self") + ">; rel=\"latest-version\""))
          .body("links.self", equalTo(url))
          .body("engineRevision", equalTo(EARLIER))
          .body("olderEngine", equalTo(true));
      today.then().body("olderEngine", nullValue());

      String before = older.asString().replace(",\"olderEngine\":true", "");
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(before.getBytes(StandardCharsets.UTF_8));
      String tag = '"' + Base64.getUrlEncoder().encodeToString(hash).substring(0, 22) + "-gzip\"";
      assertEquals("W/" + tag, older.header("ETag"));
      service.given().header("If-None-Match", tag).get(url).then().statusCode(304);

      Response table = service.given().get(url + "?format=csv");
      Response ofThePath = service.given().get(other);
      assertEquals(ofThePath.asString(), table.asString());
      assertEquals(ofThePath.header("ETag"), table.header("ETag"));
      service
          .given()
          .get(today.jsonPath().getString("links.self"))
          .then()
          .statusCode(200)
          .body("engineRevision", equalTo(ComputationKey.ENGINE_REVISION))
          .body("olderEngine", nullValue());
    }
  }

  @Test
  void whereTheOlderPathIsGoneTodaysIsAnswered(@TempDir Path folder) {
    try (RunningService service = RunningService.onFolder(folder).start()) {
      Response today = post(service, 1.2);
      String url = "/v1/traces/" + writeEarlier(service, new byte[] {1});
      service
          .bean(JdbcClient.class)
          .sql("UPDATE stored_result SET body = :body WHERE engine_revision = :earlier")
          .param("body", new byte[] {2})
          .param("earlier", EARLIER)
          .update();
      assertEquals(today.asString(), service.given().get(url).asString());
    }
  }

  @Test
  void aDamagedRequestOrLayoutAsksToBePostedAgain(@TempDir Path folder) {
    try (RunningService service = RunningService.onFolder(folder).start()) {
      Response posted = post(service, 1.2);
      String self = posted.jsonPath().getString("links.self");
      String layout = posted.jsonPath().getString("links.layout");
      service
          .bean(JdbcClient.class)
          .sql("UPDATE stored_result SET body = :body")
          .param("body", "{}".getBytes(StandardCharsets.UTF_8))
          .update();
      service.restart();
      service
          .given()
          .get(self)
          .then()
          .statusCode(404)
          .body("code", equalTo("not-found"))
          .body("detail", containsString("post it again"));
      service
          .given()
          .get(layout)
          .then()
          .statusCode(404)
          .body("detail", containsString("post the layout again"));
      service
          .given()
          .get("/actuator/health/storing")
          .then()
          .statusCode(200)
          .body("components.store.details.damagedResults", greaterThanOrEqualTo(2));

      assertEquals(posted.asString(), post(service, 1.2).asString());
      assertEquals(posted.asString(), service.given().get(self).asString());
      service.given().get(layout).then().statusCode(200);
    }
  }

  @Test
  void aDroppedTraceIsComputedAgainToTheSameBytes(@TempDir Path folder) {
    long budget = 60_000;
    try (RunningService service =
        RunningService.onFolder(
                folder,
                "lodeswing.limits.stored-bytes=" + budget,
                "lodeswing.limits.memory-bytes=1")
            .start()) {
      Map<String, byte[]> answers = new LinkedHashMap<>();
      for (int i = 0; i < 16; i++) {
        Response posted = post(service, 1 + i / 20.0);
        answers.put(posted.jsonPath().getString("links.self"), posted.asByteArray());
      }
      ResultTable table = service.bean(ResultTable.class);
      while (table.budget().total() > budget) {
        LockSupport.parkNanos(1_000_000);
      }
      assertTrue(table.budget().dropped() > 0);
      int again = 0;
      for (Map.Entry<String, byte[]> answer : answers.entrySet()) {
        Response got = service.given().get(answer.getKey());
        assertArrayEquals(answer.getValue(), got.asByteArray());
        again += got.header("Cache-Status").contains("miss") ? 1 : 0;
      }
      assertFalse(again == 0);
    }
  }
}
