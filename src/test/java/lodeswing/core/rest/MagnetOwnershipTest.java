package lodeswing.core.rest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.rig.BenchLayout;
import lodeswing.web.layout.SampleLayouts;
import org.junit.jupiter.api.Test;

/** From which distance on a rest point is no magnet's own. */
class MagnetOwnershipTest {

  private static BenchLayout sample(String name) {
    return (BenchLayout) SampleLayouts.load().get(name).document().layout();
  }

  private static List<Double> radii(BenchLayout layout) {
    return ScanRegion.of(layout).magnets().stream().map(ScanRegion.MagnetPlace::radius).toList();
  }

  /** Discs of 25 mm whose centres are 77.94 mm apart: 12.5 mm and a quarter of 52.94 mm. */
  @Test
  void attractingMagnetOwnsAQuarterOfTheWayToTheNext() {
    for (double radius : radii(sample("three-stations"))) {
      assertEquals(12.5e-3 + 0.25 * (45e-3 * Math.sqrt(3) - 25e-3), radius, 1e-6);
    }
  }

  /** A gap of 40 mm draws the wells 13 mm off their magnets; 32 mm off is the middle's edge. */
  @Test
  void wellsOfTheWidestGapAreOwnedAndTheMiddleIsNot() {
    for (double radius : radii(TrialLayouts.withGap("three-stations", 0.040))) {
      assertTrue(13e-3 < radius && radius < 32e-3, radius + " m");
    }
  }

  @Test
  void repellingMagnetOwnsItsHalfWidthAlone() {
    for (double radius : radii(sample("closed-doors"))) {
      assertEquals(12.5e-3, radius, 1e-12);
    }
  }
}
