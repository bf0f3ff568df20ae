package lodeswing.web.trace;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lodeswing.core.rig.Release;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.body.DamagedBodies;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.web.problem.ProblemException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class DamagedTraceProperties {

  private static final int BODIES_PER_SEED = 10;
  private static final SampleLayouts SAMPLES = SampleLayouts.load();

  /** Of a layout by its id, of a whole bench, of a whole plane, with every member. */
  private static final List<String> REQUESTS =
      List.of(
          request("\"layoutId\":\"" + SAMPLES.get("one-well").document().layoutId() + "\""),
          request("\"layout\":" + SAMPLES.get("one-well").sent().toJson()),
          request("\"layout\":" + SAMPLES.get("paper-triangle").sent().toJson()));

  private static String request(String layout) {
    return "{"
        + layout
        + ",\"release\":{\"x\":-70,\"y\":30,\"vx\":5,\"vy\":-2.5},\"durationS\":12,"
        + "\"sampleIntervalS\":0.02,\"placingAccuracy\":1,\"thin\":0.1}";
  }

  /** A thousand bodies: each is a trace with finite figures or a problem, nothing else. */
  @Property(tries = 100)
  void damagedBodyIsReadOrRefusedWithItsFaults(@ForAll long seed) {
    var damaged = new DamagedBodies(REQUESTS, seed);
    for (int i = 0; i < BODIES_PER_SEED; i++) {
      try {
        assertSound(read(damaged.next()));
      } catch (ProblemException e) {
        assertFalse(e.faults().isEmpty());
        assertTrue(e.code().status() == 400 || e.code().status() == 422);
      }
    }
  }

  private static TraceRequest read(byte[] bytes) {
    Body read = BodyReader.read(bytes, TraceShapes.REQUEST);
    Optional<Body> whole = read.findObject("layout");
    LayoutDocument layout =
        whole.map(LayoutDocument::of).orElseGet(() -> SAMPLES.get("one-well").document());
    return TraceRequest.of(layout, read);
  }

  private static void assertSound(TraceRequest trace) {
    assertTrue(trace.durationS() > 0 && trace.sampleIntervalS() > 0);
    assertTrue(trace.samples() >= 1);
    List<Double> r = trace.release();
    Release release = new Release(r.get(0), r.get(1), r.get(2), r.get(3));
    assertTrue(Double.isFinite(release.x() + release.y() + release.vx() + release.vy()));
    Body again =
        BodyReader.read(
            trace.stored().toJson().getBytes(java.nio.charset.StandardCharsets.UTF_8),
            TraceShapes.STORED);
    assertTrue(TraceRequest.of(trace.layout(), again).id().equals(trace.id()));
  }
}
