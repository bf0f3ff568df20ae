package lodeswing.web.sweep;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import io.restassured.response.Response;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;

/** A sweep of 30 by 30 points that is stopped in the middle goes on where it was. */
class SweepRestartTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final int PIECES = 30;

  /** Few, since the service goes on for two seconds while it stops; weak drag makes it last. */
  private static final int SOME = 2;

  private static final String SWEEP =
      "{\"layout\":{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,"
          + "\"magnets\":[{\"x\":0.577,\"y\":0,\"strength\":1,\"label\":\"Tide\"},"
          + "{\"x\":-0.2885,\"y\":0.4997,\"strength\":1,\"label\":\"Dune\"},"
          + "{\"x\":-0.2885,\"y\":-0.4997,\"strength\":1,\"label\":\"Reef\"}]},"
          + "\"vary\":[{\"quantity\":\"drag\",\"from\":0.0125,\"to\":0.05,\"steps\":30},"
          + "{\"quantity\":\"x\",\"from\":0.2,\"to\":2.13,\"steps\":30}],"
          + "\"measures\":[{\"measure\":\"outcome\"},"
          + "{\"measure\":\"settledAtS\"}],\"release\":{\"y\":0.4}}";

  private static Response ask(RunningService service, int wait) {
    return service
        .given()
        .contentType("application/json")
        .body(SWEEP)
        .post("/v1/sweeps?wait=" + wait);
  }

  private static byte[] table(RunningService service, String url) {
    return service.given().get(url).then().statusCode(200).extract().asByteArray();
  }

  private static int kept(RunningService service) {
    Integer kept =
        service
            .bean(JdbcTemplate.class)
            .queryForObject(
                "SELECT COUNT(*) FROM stored_result WHERE kind = 'sweep-piece'", Integer.class);
    return kept == null ? 0 : kept;
  }

  private static long computed(RunningService service) {
    Timer timer =
        service
            .bean(MeterRegistry.class)
            .find("lodeswing.computations")
            .tags("kind", "sweep-piece", "end", "done")
            .timer();
    return timer == null ? 0 : timer.count();
  }

  @Test
  void sweepOfThirtyByThirtyGoesOnAfterARestartWhereItWas(@TempDir Path folder) throws Exception {
    Response undisturbed = ask(SERVICE, 60);
    assertEquals(200, undisturbed.statusCode(), undisturbed.asString());
    String url = undisturbed.header("Location");
    assertEquals(900, undisturbed.<Integer>path("rows.size()"));

    var own = RunningService.onFolder(folder).start();
    try {
      Response asked = ask(own, 0);
      assertEquals(202, asked.statusCode(), asked.asString());
      String job = asked.header("Location");
      Instant end = Instant.now().plus(Duration.ofSeconds(30));
      while (kept(own) < SOME) {
        assertTrue(Instant.now().isBefore(end));
        Thread.sleep(5);
      }
      long first = computed(own);
      own.restart();
      while (!own.given().get(job).path("state").equals("done")) {
        assertTrue(Instant.now().isBefore(end));
        Thread.sleep(20);
      }

      long second = computed(own);
      assertTrue(first >= SOME && second > 0, first + " pieces before, " + second + " after");
      // Those that were done between the count and the stop are in neither.
      assertTrue(first + second <= PIECES, "a piece was computed twice: " + first + "+" + second);
      assertEquals(PIECES, kept(own));
      for (String form : new String[] {"", "?format=csv", "/plot?format=svg"}) {
        assertArrayEquals(table(SERVICE, url + form), table(own, url + form), form);
      }
    } finally {
      own.close();
    }
  }
}
