package lodeswing.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.magnet.Ring;
import org.junit.jupiter.api.Test;

class FieldReachTest {

  private static final double HALF_MILLITESLA = 0.5e-3;

  /** B = mu0 m / (2 pi z^3) on the axis of a dipole (Jackson (1999), eq. 5.56). */
  @Test
  void dipoleReachesAsTheFormulaSays() {
    assertEquals(
        Math.cbrt(2e-7 * 0.5 / HALF_MILLITESLA),
        FieldReach.of(new Dipole(0.5), HALF_MILLITESLA),
        1e-9);
  }

  /** On the axis of a disc B is a closed form; there the distance gives the density back. */
  @Test
  void discReachesWhereItsAxisHasTheDensity() {
    double distance = FieldReach.of(new Disc(0.0075, 0.005, 1.195), HALF_MILLITESLA);
    assertEquals(
        HALF_MILLITESLA, HandWorkedSafetyTest.discAxis(7.5, 5, 1.195, 1e3 * distance), 1e-9);
  }

  /** Above a ring's hole the field turns round: near by, what is over the ring itself counts. */
  @Test
  void ringReachesOverItsFaceToo() {
    var ring = new Ring(0.012, 0.02, 0.004, 1.2);
    double[] b = new double[3];
    double distance = FieldReach.of(ring, 0.1);
    ring.field(0, 0, ring.halfHeight() + distance, b);
    assertTrue(Math.abs(b[2]) < 0.1);
    ring.field(0.016, 0, ring.halfHeight() + 0.9 * distance, b);
    assertTrue(Math.hypot(b[0], b[2]) > 0.1);
  }

  /** However magnets lie, beyond the distance of all together they have less, at any side. */
  @Test
  void nothingBeyondTheDistanceOfAllTogether() {
    var random = new Random(20260101);
    for (int set = 0; set < 20; set++) {
      List<PlacedMagnet> placed = new ArrayList<>();
      List<FieldReach.Share> shares = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        Magnet magnet =
            i % 2 == 0
                ? new Disc(
                    0.004 + 0.01 * random.nextDouble(), 0.002 + 0.01 * random.nextDouble(), 1.2)
                : new Block(0.01 + 0.02 * random.nextDouble(), 0.01, 0.005, 1.3);
        shares.add(new FieldReach.Share(magnet, 1));
        placed.add(
            new PlacedMagnet(
                magnet,
                new Vec3(0.03 * random.nextDouble(), 0.03 * random.nextDouble(), 0.02 * i),
                random.nextDouble(),
                random.nextBoolean() ? Pole.NORTH : Pole.SOUTH));
      }
      double distance = FieldReach.of(shares, HALF_MILLITESLA);
      var array = new MagnetArray(placed, Optional.empty());
      double[] b = new double[3];
      for (int i = 0; i < 500; i++) {
        Vec3 way = direction(random);
        // Farther than the distance from every magnet's body.
        double from = 0.06 + distance;
        double far = from * (1 + random.nextDouble());
        array.field(0.015 + far * way.x(), 0.015 + far * way.y(), 0.03 + far * way.z(), b);
        assertTrue(Math.hypot(b[2], Math.hypot(b[0], b[1])) <= HALF_MILLITESLA);
      }
    }
  }

  private static Vec3 direction(Random random) {
    double z = 2 * random.nextDouble() - 1;
    double angle = 2 * Math.PI * random.nextDouble();
    double across = Math.sqrt(1 - z * z);
    return new Vec3(across * Math.cos(angle), across * Math.sin(angle), z);
  }
}
