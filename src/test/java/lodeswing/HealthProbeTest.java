package lodeswing;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class HealthProbeTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  @Test
  void readyServiceIsWell() {
    assertTrue(HealthProbe.isWell(URI.create(SERVICE.uri() + "/actuator/health/readiness")));
  }

  @Test
  void otherAnswersAreNot() {
    assertFalse(HealthProbe.isWell(URI.create(SERVICE.uri() + "/actuator/health/none")));
  }

  @Test
  void nobodyThereIsNotWell() throws IOException {
    int port;
    try (var taken = new ServerSocket(0)) {
      port = taken.getLocalPort();
    }
    assertFalse(HealthProbe.isWell(URI.create("http://127.0.0.1:" + port + "/")));
  }
}
