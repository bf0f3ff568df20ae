package lodeswing.config;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;

import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class LaneHealthOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  @Test
  void healthSaysWhatReleasesAreComputedOn() {
    given()
        .get("/actuator/health/computing")
        .then()
        .statusCode(200)
        .body("status", equalTo("UP"))
        .body("components.lanes.details.onVectors", equalTo(true))
        .body("components.lanes.details.reason", containsString("vector module"));
  }
}
