package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lodeswing.core.geometry.Vec3;
import org.junit.jupiter.api.Test;

/** Forces between magnets of a plate. */
class PlateForcesTest {

  private static final Disc DISC = new Disc(0.0125, 0.005, 0.385);

  private static PlacedMagnet at(Magnet magnet, double x, double y, Pole up) {
    return new PlacedMagnet(magnet, new Vec3(x, y, magnet.halfHeight()), 0, up);
  }

  /** Jackson (1999), section 5.7: two upright dipoles beside each other, 3 mu0 m m/(4 pi r^4). */
  @Test
  void discsFarApartPushAsDipolesDo() {
    double r = 0.6;
    double m = DISC.moment();
    double expected = 3 * MagneticConstant.MU_0 * m * m / (4 * Math.PI * Math.pow(r, 4));
    Vec3 push = PlateForces.between(at(DISC, r, 0, Pole.SOUTH), at(DISC, 0, 0, Pole.SOUTH));
    assertEquals(expected, push.x(), 2e-3 * expected);
    Vec3 pull = PlateForces.between(at(DISC, r, 0, Pole.NORTH), at(DISC, 0, 0, Pole.SOUTH));
    assertEquals(-expected, pull.x(), 2e-3 * expected);
  }

  /** Coulomb's law of magnetic charges on both faces of both, summed over rings and sectors. */
  @Test
  void discsSideBySidePushAsTheirChargesDo() {
    double spacing = 0.031;
    Vec3 push = PlateForces.between(at(DISC, spacing, 0, Pole.NORTH), at(DISC, 0, 0, Pole.NORTH));
    double expected = 0;
    for (int upper = -1; upper <= 1; upper += 2) {
      for (int lower = -1; lower <= 1; lower += 2) {
        expected += upper * lower * charges(spacing, upper == lower ? 0 : DISC.height());
      }
    }
    assertEquals(expected, push.x(), 1e-3 * expected);
    assertEquals(0, push.y(), 1e-9);
    assertEquals(0, push.z(), 1e-9);
  }

  /** Force along x of two equally charged discs at a distance, one higher than the other. */
  private static double charges(double spacing, double height) {
    int rings = 40;
    int sectors = 80;
    double[][] points = new double[rings * sectors][];
    for (int i = 0; i < rings; i++) {
      double inner = DISC.radius() * i / rings;
      double outer = DISC.radius() * (i + 1) / rings;
      double area = Math.PI * (outer * outer - inner * inner) / sectors;
      double r = (inner + outer) / 2;
      for (int j = 0; j < sectors; j++) {
        double angle = 2 * Math.PI * (j + 0.5) / sectors;
        points[i * sectors + j] = new double[] {r * Math.cos(angle), r * Math.sin(angle), area};
      }
    }
    double sum = 0;
    for (double[] a : points) {
      for (double[] b : points) {
        double dx = spacing + a[0] - b[0];
        double dy = a[1] - b[1];
        double square = dx * dx + dy * dy + height * height;
        sum += a[2] * b[2] * dx / (square * Math.sqrt(square));
      }
    }
    return sum * DISC.remanence() * DISC.remanence() / (4 * Math.PI * MagneticConstant.MU_0);
  }

  @Test
  void actionIsReaction() {
    PlacedMagnet block =
        new PlacedMagnet(
            new Block(0.04, 0.02, 0.01, 0.4), new Vec3(0.05, 0.02, 0.005), 0.6, Pole.SOUTH);
    PlacedMagnet disc = at(DISC, 0.004, -0.003, Pole.NORTH);
    Vec3 one = PlateForces.between(block, disc);
    Vec3 other = PlateForces.between(disc, block);
    assertEquals(0, one.plus(other).length(), 1e-6 * one.length());
  }

  @Test
  void steelHoldsAMagnetAsItPullsIt() {
    PlateForces plate =
        new PlateForces(List.of(at(DISC, 0, 0, Pole.NORTH)), Optional.of(new SteelBacking(-0.002)));
    double pull = new SteelPull(DISC).at(0.002);
    assertEquals(-pull, plate.on(0).z(), 1e-9 * pull);
  }

  @Test
  void neighboursOverSteelPushLessAside() {
    List<PlacedMagnet> two = List.of(at(DISC, 0.02, 0, Pole.NORTH), at(DISC, -0.02, 0, Pole.NORTH));
    double bare = new PlateForces(two, Optional.empty()).on(0).x();
    double steel = new PlateForces(two, Optional.of(new SteelBacking(0))).on(0).x();
    assertTrue(bare > 0 && steel > 0, "like poles beside each other push apart");
    assertEquals(bare, PlateForces.between(two.get(0), two.get(1)).x(), 1e-12);
  }
}
