package lodeswing.web.layout;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lodeswing.web.body.DamagedBodies;
import lodeswing.web.problem.ProblemException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class DamagedLayoutProperties {

  private static final int BODIES_PER_SEED = 10;
  private static final List<String> SAMPLES =
      SampleLayouts.load().all().stream().map(sample -> sample.sent().toJson()).toList();

  /** A thousand bodies: each is a layout or a problem, nothing else. */
  @Property(tries = 100)
  void damagedBodyIsReadOrRefusedWithItsFaults(@ForAll long seed) {
    var damaged = new DamagedBodies(SAMPLES, seed);
    for (int i = 0; i < BODIES_PER_SEED; i++) {
      try {
        assertTrue(LayoutDocument.read(damaged.next()).layout().magnetCount() <= 200);
      } catch (ProblemException e) {
        assertFalse(e.faults().isEmpty());
        assertTrue(e.code().status() == 400 || e.code().status() == 422);
      }
    }
  }
}
