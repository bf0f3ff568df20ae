package lodeswing.core.rest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.rig.TextbookLayout.Attractor;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;

class RestPointFinderTest {

  private static RestPoints find(TextbookLayout layout) {
    return new RestPointFinder(AttractorPlane.of(layout), ScanRegion.of(layout)).find();
  }

  private static TextbookLayout layout(double height, Attractor... magnets) {
    return new TextbookLayout(0.5, 0.2, height, List.of(magnets));
  }

  /**
   * Three equal wells near the magnets and an unstable centre: Motter, Gruiz, Karolyi and Tel,
   * Physical Review Letters 111 (2013) 194101, whose scene this is (omega0 0.5, drag 0.2, height
   * 0.3, unit triangle; the paper's statement quoted from memory).
   */
  @Test
  void threeMagnetsOfThePapersGiveThreeEqualWells() {
    RestPoints found = find(AttractorPlane.threeMagnets());
    assertTrue(found.complete());
    assertEquals(3, found.list().size());
    RestPoint first = found.list().get(0);
    for (int k = 0; k < 3; k++) {
      RestPoint r = found.list().get(k);
      assertEquals(OptionalInt.of(k), r.surroundings().owner());
      double turn = 2 * Math.PI * k / 3;
      double x = Math.cos(turn) * first.x() - Math.sin(turn) * first.y();
      double y = Math.sin(turn) * first.x() + Math.cos(turn) * first.y();
      assertTrue(Math.hypot(r.x() - x, r.y() - y) < 1e-12);
      assertEquals(first.potential(), r.potential(), 1e-12);
      assertEquals(first.barrier().height(), r.barrier().height(), 1e-10);
      assertTrue(r.barrier().saddle().isPresent());
    }
  }

  /** On the symmetry axis the force has one component: roots by Brent (1973), Commons Math. */
  @Test
  void restPointAndSaddlesOfTheSymmetricSceneAreTheAxisRoots() {
    TextbookLayout layout = AttractorPlane.threeMagnets();
    AttractorPlane plane = AttractorPlane.of(layout);
    double[] d = new double[6];
    BrentSolver solver = new BrentSolver(1e-15, 1e-15);
    double rest =
        solver.solve(
            200,
            x -> {
              plane.potentialDerivatives(x, 0, d);
              return d[1];
            },
            0.45,
            0.65);
    double saddle =
        solver.solve(
            200,
            x -> {
              plane.potentialDerivatives(x, 0, d);
              return d[1];
            },
            -0.2,
            -0.02);
    RestPoints found = find(layout);
    RestPoint first = found.list().get(0);
    assertEquals(rest, first.x(), 1e-12);
    assertEquals(0, first.y(), 1e-12);
    double height = plane.potential(saddle, 0) - plane.potential(rest, 0);
    assertEquals(height, first.barrier().height(), 1e-12);
    assertEquals(3, found.saddles().size());
    assertEquals(1, found.census().maxima());
  }

  /** One attractor under the pivot: V = w x^2/2 - k/sqrt(x^2 + h^2), at rest in the middle. */
  @Test
  void oneAttractorUnderThePivotHoldsTheBobInTheMiddle() {
    RestPoints found = find(layout(0.3, new Attractor(0, 0, 1)));
    assertTrue(found.complete());
    assertEquals(1, found.list().size());
    RestPoint r = found.list().get(0);
    assertTrue(Math.hypot(r.x(), r.y()) < 1e-12);
    // rate squared = omega0^2 + k/h^3, in both directions, differentiated by hand
    double period = 2 * Math.PI / Math.sqrt(0.25 + 1 / (0.3 * 0.3 * 0.3));
    assertEquals(period, r.smallSwing().shortPeriod(), 1e-12);
    assertEquals(period, r.smallSwing().longPeriod(), 1e-12);
    assertEquals(new Side.Nothing(), r.barrier().beyond());
    assertEquals(0, found.sealRule(0).sealedWell(3, 2, 1e6));
  }

  /** By symmetry the saddle lies in the middle, at -2k/sqrt(c^2 + h^2). */
  @Test
  void twoAttractorsHaveTheirPassInTheMiddle() {
    RestPoints found = find(layout(0.3, new Attractor(0.6, 0, 1), new Attractor(-0.6, 0, 1)));
    assertTrue(found.complete());
    assertEquals(2, found.list().size());
    assertEquals(1, found.saddles().size());
    Saddle s = found.saddles().get(0);
    assertTrue(Math.hypot(s.x(), s.y()) < 1e-12);
    double middle = -2 / Math.sqrt(0.36 + 0.09);
    assertEquals(middle, s.potential(), 1e-13);
    for (RestPoint r : found.list()) {
      assertEquals(middle, r.barrier().passEnergy(), 1e-13);
      assertEquals(new Side.OfRestPoint(1 - r.index()), r.barrier().beyond());
    }
    assertEquals(List.of(0), found.mergeTree().reachable(0, middle - 1e-9).restPoints());
    assertEquals(List.of(0, 1), found.mergeTree().reachable(0, middle + 1e-9).restPoints());
  }

  @Test
  void repelledBobRestsOverWeakFieldAndNotOverAMagnet() {
    RestPoints found =
        find(
            layout(
                0.3,
                new Attractor(0.6, 0, -1),
                new Attractor(-0.3, 0.52, -1),
                new Attractor(-0.3, -0.52, -1)));
    assertTrue(found.complete());
    assertFalse(found.list().isEmpty());
    for (RestPoint r : found.list()) {
      assertTrue(r.surroundings().owner().isEmpty());
      assertTrue(r.surroundings().overWeakField());
      assertEquals(2, r.surroundings().nearest().size());
      assertTrue(r.surroundings().nearest().get(0).distance() > 0.3);
    }
  }

  /** A repelling magnet under the pivot: w = k/(r^2 + h^2)^(3/2) all round at one radius. */
  @Test
  void repellingMagnetUnderThePivotMakesARoundValley() {
    RestPoints found = find(layout(0.3, new Attractor(0, 0, -1)));
    assertEquals(1, found.list().size());
    RestPoint r = found.list().get(0);
    assertTrue(r.continuum());
    double radius = Math.sqrt(Math.pow(1 / 0.25, 2.0 / 3) - 0.09);
    assertEquals(radius, Math.hypot(r.x(), r.y()), 1e-9);
    assertTrue(Double.isInfinite(r.smallSwing().longPeriod()));
    assertTrue(found.complete());
  }

  @Test
  void pendulumWithoutMagnetsRestsBelowThePivot() {
    RestPoints found = find(layout(0.3));
    assertTrue(found.complete());
    assertEquals(1, found.list().size());
    assertEquals(4 * Math.PI, found.list().get(0).smallSwing().longPeriod(), 1e-12);
  }

  @Test
  void wellWhoseMinimumIsInContactIsABlockedPlace() {
    TextbookLayout layout = AttractorPlane.threeMagnets();
    AttractorPlane plane =
        new AttractorPlane(layout, 4, List.of(new AttractorPlane.Post(1 / Math.sqrt(3), 0, 0.15)));
    RestPoints found = new RestPointFinder(plane, ScanRegion.of(layout)).find();
    assertEquals(2, found.list().size());
    assertEquals(1, found.blockedPlaces().size());
    UnsafeZone zone = found.blockedPlaces().get(0);
    assertEquals(UnsafeZone.Border.MAGNET_CONTACT, zone.border());
    assertEquals(0.15, Math.hypot(zone.x() - 1 / Math.sqrt(3), zone.y()), 0.05);
    // the lowest way out of either well leads over a saddle, as without the post
    double pass = find(layout).list().get(0).barrier().passEnergy();
    for (RestPoint r : found.list()) {
      assertEquals(pass, r.barrier().passEnergy(), 1e-12);
    }
  }

  @Test
  void loneWellIsShutOffByTheRimWhereTheModelEnds() {
    TextbookLayout layout = layout(0.3, new Attractor(0, 0, 1));
    AttractorPlane plane = new AttractorPlane(layout, 4, List.of(new AttractorPlane.Rim(2)));
    RestPoints found = new RestPointFinder(plane, ScanRegion.of(layout)).find();
    RestPoint r = found.list().get(0);
    assertInstanceOf(Side.OfZone.class, r.barrier().beyond());
    double rim = plane.potential(2, 0);
    assertTrue(r.barrier().passEnergy() <= rim + r.barrier().error());
    assertTrue(r.barrier().passEnergy() > plane.potential(1.6, 0));
    SealRule rule = found.sealRule(0);
    assertEquals(SealRule.NONE, rule.sealedWell(0.5, 0, rim));
    assertEquals(0, rule.sealedWell(0.5, 0, plane.potential(1.3, 0)));
  }

  @Test
  void sameLayoutGivesTheSameResultTwice() {
    RestPoints one = find(AttractorPlane.threeMagnets());
    RestPoints two = find(AttractorPlane.threeMagnets());
    assertEquals(two.list(), one.list());
    assertEquals(two.saddles(), one.saddles());
  }
}
