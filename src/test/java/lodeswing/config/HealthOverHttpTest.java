package lodeswing.config;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.health.actuate.endpoint.HealthEndpointGroup;
import org.springframework.boot.health.actuate.endpoint.HealthEndpointGroups;

class HealthOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  @ParameterizedTest
  @ValueSource(strings = {"liveness", "readiness"})
  void probesAreAnsweredWithoutDetails(String probe) {
    SERVICE
        .given()
        .get("/actuator/health/" + probe)
        .then()
        .statusCode(200)
        .body("status", equalTo("UP"))
        .body("components", nullValue());
  }

  @ParameterizedTest
  @ValueSource(strings = {"env", "beans", "configprops", "heapdump", "loggers", "metrics"})
  void nothingElseOfTheInsideIsShown(String endpoint) {
    SERVICE.given().get("/actuator/" + endpoint).then().statusCode(404);
  }

  /** Which parts an answer rests on is not shown over HTTP. */
  @Test
  void readyNeedsDatabaseAndLanesAndAliveNeither() {
    HealthEndpointGroups groups = SERVICE.bean(HealthEndpointGroups.class);
    HealthEndpointGroup ready = Objects.requireNonNull(groups.get("readiness"));
    HealthEndpointGroup alive = Objects.requireNonNull(groups.get("liveness"));
    for (String part : new String[] {"db", "lanes"}) {
      assertTrue(ready.isMember(part), part);
      assertFalse(alive.isMember(part), part);
    }
  }
}
