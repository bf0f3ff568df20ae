package lodeswing.web.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.List;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** One magnet in the middle: where the bob may rest is a ring, no place of which is the one. */
class RoundValleyOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static String oneDisc(double gap, String poleUp) {
    return """
    {"model":"bench",
     "pendulum":{"kind":"cord","lengthMm":420,"bobMassG":45},
     "bobMagnet":{"shape":"disc","diameterMm":15,"heightMm":5,"grade":"N35","poleDown":"north"},
     "gapMm":%s,
     "magnets":[{"shape":"disc","diameterMm":25,"heightMm":5,"grade":"Y30","x":0,"y":0,
                 "poleUp":"%s"}],
     "damping":{"swingsToHalf":5}}
    """
        .formatted(gap, poleUp);
  }

  private static Response traced(String layout, double x, double y) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body(
            "{\"layout\":%s,\"release\":{\"x\":%s,\"y\":%s},\"durationS\":90,\"sampleIntervalS\":1}"
                .formatted(layout, x, y))
        .post("/v1/traces?wait=60");
  }

  private static double lastRadius(Response trace) {
    List<Number> x = trace.path("samples.x");
    List<Number> y = trace.path("samples.y");
    int last = x.size() - 1;
    return Math.hypot(x.get(last).doubleValue(), y.get(last).doubleValue());
  }

  @Test
  void magnetThatPushesLeavesARingAndTheAnswerSaysSo() {
    Response trace = traced(oneDisc(25, "north"), 0, -50);

    assertEquals(200, trace.statusCode(), trace.asString());
    assertNull(trace.path("outcome.x"));
    double radius = trace.<Number>path("outcome.ringRadius").doubleValue();
    assertEquals(radius, lastRadius(trace), 0.05);
    String name = trace.path("outcome.name");
    assertEquals("on the ring %.0f mm from the middle".formatted(radius), name);
    List<String> notes = trace.path("notes");
    assertTrue(
        notes.stream().anyMatch(note -> note.contains("no place of it is lower")), notes::toString);

    Response points =
        SERVICE.given().get("/v1/layouts/" + trace.path("layoutId") + "/rest-points?wait=60");
    assertEquals(radius, points.<Number>path("restPoints[0].ringRadius").doubleValue(), 1e-9);
    assertEquals(1, points.<List<Number>>path("restPoints[0].periodsS").size());
  }

  @Test
  void smallGapIsPreparedAndFollowedInTime() {
    Response trace = traced(oneDisc(10, "south"), 3, 0);

    assertEquals(200, trace.statusCode(), trace.asString());
    assertNotNull(trace.path("settledAtS"));
    assertTrue(lastRadius(trace) < 0.1);
    assertNull(trace.path("outcome.ringRadius"));
  }
}
