package lodeswing.config;

import static org.hamcrest.MatcherAssert.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;

import io.restassured.path.json.JsonPath;
import java.nio.file.Path;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(300)
class PaceOverHttpTest {

  @TempDir static Path folder;

  private static JsonPath computing(RunningService service) {
    return service
        .given()
        .get("/actuator/health/computing")
        .then()
        .statusCode(200)
        .extract()
        .jsonPath();
  }

  @Test
  void withoutAWarmUpThePaceIsAGuessUntilSomethingIsComputed() {
    try (var service = RunningService.onFolder(folder.resolve("cold")).start()) {
      assertThat(computing(service).get("components.pace.details.basis"), equalTo("guess"));
      String sample =
          service.given().get("/v1/sample-layouts/paper-triangle?format=text").asString();
      service
          .given()
          .get("/v1/layouts/" + sample + "/outcome?x=0.5&y=0.5&wait=60")
          .then()
          .statusCode(200);
      assertThat(computing(service).get("components.pace.details.basis"), equalTo("measured"));
    }
  }

  @Test
  void warmUpMeasuresThePace() throws InterruptedException {
    try (var service =
        RunningService.onFolder(folder.resolve("warm"), "lodeswing.warm-up=true").start()) {
      while (!computing(service).getBoolean("components.lanes.details.warm")) {
        Thread.sleep(100);
      }
      JsonPath warm = computing(service);
      assertThat(warm.get("components.pace.details.basis"), equalTo("measured"));
      assertThat(warm.getLong("components.pace.details.releasesPerSecond"), greaterThan(0L));
    }
  }
}
