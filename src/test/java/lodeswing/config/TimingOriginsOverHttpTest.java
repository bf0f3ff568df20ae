package lodeswing.config;

import static org.hamcrest.Matchers.containsString;

import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class TimingOriginsOverHttpTest {

  private static final String ORIGINS = "https://club.example,https://school.example";

  @RegisterExtension
  static final RunningService SERVICE =
      RunningService.shared("lodeswing.cors.allowed-origins=" + ORIGINS);

  @Test
  void onlyPagesThatMayAskMayReadTheTimes() {
    // W3C, Resource Timing, Timing-Allow-Origin: a list of origins.
    SERVICE
        .given()
        .get("/v1/limits")
        .then()
        .header("Timing-Allow-Origin", "https://club.example, https://school.example")
        .header("Server-Timing", containsString("total;dur="));
    SERVICE
        .given()
        .header("Origin", "https://school.example")
        .get("/v1/limits")
        .then()
        .statusCode(200)
        .header("Access-Control-Allow-Origin", "https://school.example");
    SERVICE
        .given()
        .header("Origin", "https://elsewhere.example")
        .get("/v1/limits")
        .then()
        .statusCode(403);
  }
}
