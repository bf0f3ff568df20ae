package lodeswing.core.landscape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.rest.RestPoint;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The whole chain of a bench: parts, fields, table, rest points. The figures are those stated for
 * this bench in the service's specification, found there by independent code.
 */
class LandscapeTest {

  @ParameterizedTest
  @CsvSource({
    "0.025, 0.0409, 3.62e-3",
    "0.030, 0.0391, 1.89e-3",
    "0.035, , 0.88e-3",
    "0.040, 0.0320, 0.31e-3"
  })
  void wellsAndBarriersAreAsComputedApart(double gap, Double distance, double barrier) {
    Landscape landscape = Landscape.of(TrialLayouts.withGap("three-stations", gap));
    int wells = 0;
    for (RestPoint r : landscape.restPoints().list()) {
      if (Math.hypot(r.x(), r.y()) < 0.005) {
        // In the middle: a well of its own at wide gaps.
        continue;
      }
      if (distance != null) {
        assertEquals(distance, Math.hypot(r.x(), r.y()), 0.01 * distance);
      }
      // The figure for the widest gap has two digits.
      assertEquals(barrier, r.barrier().height(), 0.01 * barrier + (gap > 0.036 ? 0.005e-3 : 0));
      assertTrue(landscape.tableErrors().energy() < 1e-7 * r.barrier().height());
      wells++;
    }
    assertEquals(3, wells);
    assertTrue(landscape.restPoints().complete());
  }
}
