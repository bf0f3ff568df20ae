package lodeswing.core.rest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lodeswing.core.motion.TextbookMotion;
import lodeswing.core.rig.TextbookLayout;
import org.junit.jupiter.api.Test;

/** Rest points that are found by creeping downhill are those that the scan finds. */
class WellProbeTest {

  private static final TextbookLayout TRIANGLE =
      new TextbookLayout(
          0.5,
          0.2,
          0.3,
          List.of(
              new TextbookLayout.Attractor(0.577, 0, 1),
              new TextbookLayout.Attractor(-0.2885, 0.5, 1),
              new TextbookLayout.Attractor(-0.2885, -0.5, 1)));

  @Test
  void eachMagnetLeadsToItsOwnRestPoint() {
    var motion = new TextbookMotion(TRIANGLE);
    List<RestPoint> points = new RestPointFinder(motion, ScanRegion.of(TRIANGLE)).find().list();
    WellProbe probe = new WellProbe(motion, TRIANGLE.height());
    for (RestPoint point : points) {
      var magnet = TRIANGLE.magnets().get(point.surroundings().owner().orElseThrow());
      double[] found = probe.below(new double[] {magnet.x(), magnet.y()}).orElseThrow();
      assertEquals(point.q0(), found[0], 1e-6);
      assertEquals(point.q1(), found[1], 1e-6);
    }
    assertEquals(3, points.size());
  }

  @Test
  void placeFarOffLeadsToOneOfThemToo() {
    WellProbe probe = new WellProbe(new TextbookMotion(TRIANGLE), TRIANGLE.height());
    Optional<double[]> found = probe.below(new double[] {3, 0.2});
    assertTrue(found.isPresent());
    assertEquals(0.577, found.get()[0], 0.05);
  }
}
