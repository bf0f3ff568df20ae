package lodeswing.core.suspension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Volumes and moments against integration in cylinder coordinates and against the usual table of
 * solids (e.g. Meriam & Kraige, Engineering Mechanics: Dynamics, Table D/4; from memory).
 */
class BarShapeTest {

  @Test
  void tableOfSolids() {
    BarShape.Cylinder disc = new BarShape.Cylinder(0.02, 0.006);
    assertEquals(0.5 * 0.01 * 0.01, disc.axialPerMass(), 1e-18);
    assertEquals((3 * 0.01 * 0.01 + 0.006 * 0.006) / 12, disc.transversePerMass(), 1e-18);
    BarShape.HollowCylinder tube = new BarShape.HollowCylinder(0.02, 0.01, 0.006);
    assertEquals(0.5 * (0.01 * 0.01 + 0.005 * 0.005), tube.axialPerMass(), 1e-18);
    assertEquals(
        (3 * (0.01 * 0.01 + 0.005 * 0.005) + 0.006 * 0.006) / 12, tube.transversePerMass(), 1e-18);
    assertEquals(0.4 * 0.01 * 0.01, new BarShape.Ball(0.02).axialPerMass(), 1e-18);
    assertEquals(0, new BarShape.Point().transversePerMass());
  }

  /** Machinery's Handbook: a full hexagon's second moment of area is 0.06 s^4 (two digits). */
  @Test
  void hexagonHasTheHandbooksSecondMomentOfArea() {
    double s = 0.013;
    BarShape.HexNut full = new BarShape.HexNut(s, 0, 0.001);
    double area = full.volume() / 0.001;
    assertEquals(0.866 * s * s, area, 1e-3 * area);
    assertEquals(0.06, area * full.axialPerMass() / 2 / Math.pow(s, 4), 2e-4);
  }

  @Test
  void cylinderIsItsIntegral() {
    compare(new BarShape.Cylinder(0.02, 0.05), 0.05, 0, (angle, z) -> 0.01);
  }

  @Test
  void hollowCylinderIsItsIntegral() {
    compare(new BarShape.HollowCylinder(0.02, 0.012, 0.03), 0.03, 0.006, (angle, z) -> 0.01);
  }

  @Test
  void nutIsItsIntegral() {
    compare(
        new BarShape.HexNut(0.013, 0.008, 0.0065),
        0.0065,
        0.004,
        (angle, z) -> {
          double sector = Math.PI / 3;
          double turn = angle - sector * Math.rint(angle / sector);
          return 0.0065 / Math.cos(turn);
        });
  }

  @Test
  void cuboidIsItsIntegral() {
    compare(
        new BarShape.Cuboid(0.04, 0.01, 0.006),
        0.006,
        0,
        (angle, z) ->
            Math.min(0.02 / Math.abs(Math.cos(angle)), 0.005 / Math.abs(Math.sin(angle))));
  }

  @Test
  void ballIsItsIntegral() {
    compare(
        new BarShape.Ball(0.03),
        0.03,
        0,
        (angle, z) -> Math.sqrt(Math.max(0, 0.015 * 0.015 - z * z)));
  }

  /** Midpoint rule; the transverse moment is the mean over all directions across the bar. */
  private static void compare(
      BarShape shape, double height, double bore, DoubleBinaryOperator outline) {
    int turns = 2400;
    int slices = 500;
    double volume = 0;
    double axial = 0;
    double along = 0;
    for (int j = 0; j < slices; j++) {
      double z = height * ((j + 0.5) / slices - 0.5);
      for (int i = 0; i < turns; i++) {
        double r = outline.applyAsDouble(2 * Math.PI * (i + 0.5) / turns, z);
        double cell = 2 * Math.PI / turns * height / slices;
        double section = (r * r - bore * bore) / 2 * cell;
        volume += section;
        axial += (Math.pow(r, 4) - Math.pow(bore, 4)) / 4 * cell;
        along += section * z * z;
      }
    }
    assertEquals(volume, shape.volume(), 2e-5 * volume);
    assertEquals(axial / volume, shape.axialPerMass(), 2e-5 * shape.axialPerMass());
    double transverse = (axial / 2 + along) / volume;
    assertEquals(transverse, shape.transversePerMass(), 2e-5 * transverse);
  }

  /** A rod on its end, m L^2/3, cut in two parts (parallel-axis theorem). */
  @Test
  void barOfTwoHalvesIsTheWholeRod() {
    BarPart upper = BarPart.weighed(new BarShape.Cylinder(1e-6, 0.3), 0.1, 0.15);
    BarPart lower = BarPart.weighed(new BarShape.Cylinder(1e-6, 0.3), 0.1, 0.45);
    TwoAxisBody body = new HookedBar(0.004, List.of(upper, lower), 0.6).body();
    assertEquals(0.2, body.mass(), 1e-16);
    assertEquals(0.2 * 0.3, body.firstMoment(), 1e-16);
    assertEquals(0.2 * 0.6 * 0.6 / 3, body.swingInertia(), 1e-12);
    assertEquals(0.004, body.axisOffset());
  }

  @Test
  void massFollowsFromMaterialAndVolume() {
    BarPart rod = BarPart.of(new BarShape.Cylinder(0.01, 1), Material.STEEL, 0.5);
    assertEquals(0.6165, rod.mass(), 1e-3); // EN 10060 lists 0.617 kg/m for a 10 mm round bar
  }

  @Test
  void everyMaterialHasADensityAndItsSource() {
    for (Material material : Material.values()) {
      assertTrue(material.density() > 100 && material.density() < 20_000);
      assertTrue(material.source().length() > 10);
    }
  }

  @Test
  void impossibleSizesAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new BarShape.Cylinder(0, 1));
    assertThrows(IllegalArgumentException.class, () -> new BarShape.HexNut(0.01, 0.01, 1));
    assertThrows(IllegalArgumentException.class, () -> new BarShape.Ball(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new HookedBar(0, List.of(), 1));
    BarPart above = BarPart.weighed(new BarShape.Point(), 0.1, -0.1);
    assertThrows(IllegalArgumentException.class, () -> new HookedBar(0, List.of(above), 1).body());
  }
}
