package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lodeswing.core.geometry.Vec3;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class BobEnergyTest {

  private static final Disc DISC = new Disc(0.0075, 0.005, 1.195);
  private static final Ring RING = new Ring(0.003, 0.008, 0.004, 1.1);
  private static final Block BLOCK = new Block(0.018, 0.01, 0.005, 1.2);
  private static final Sphere SPHERE = new Sphere(0.006, 1.2);
  private static final Dipole DIPOLE = new Dipole(0.9);
  private static final Disc PLATE_DISC = new Disc(0.0125, 0.005, 0.385);

  private final double[] work = new double[BobEnergy.WORK_LENGTH];

  private static PlacedMagnet at(Magnet magnet, double x, double y, double turn, Pole poleUp) {
    return new PlacedMagnet(magnet, new Vec3(x, y, magnet.halfHeight()), turn, poleUp);
  }

  private static MagnetArray plate(Optional<SteelBacking> backing) {
    return new MagnetArray(
        List.of(
            at(PLATE_DISC, 0.03, 0.01, 0, Pole.SOUTH),
            at(RING, -0.02, 0.02, 0, Pole.NORTH),
            at(BLOCK, -0.01, -0.025, 0.6, Pole.SOUTH),
            at(SPHERE, 0.01, -0.05, 0, Pole.NORTH)),
        backing);
  }

  private static double[] pose(double x, double y, double z, double alpha, double beta) {
    double sa = Math.sin(alpha);
    double ca = Math.cos(alpha);
    double sb = Math.sin(beta);
    double cb = Math.cos(beta);
    return new double[] {
      x, y, z, cb, -sb * sa, sb * ca, 0, -ca, -sa, sb, cb * sa, -cb * ca,
    };
  }

  static Stream<Arguments> bobs() {
    return Stream.of(DISC, RING, BLOCK, SPHERE, DIPOLE)
        .flatMap(
            bob ->
                Stream.of(
                    Arguments.of(bob, Optional.<SteelBacking>empty()),
                    Arguments.of(bob, Optional.of(new SteelBacking(-0.001)))));
  }

  /** Force and torque are the slopes of the energy, by differences of order 6. */
  @ParameterizedTest
  @MethodSource("bobs")
  void forceAndTorqueAreTheEnergysSlopes(Magnet bob, Optional<SteelBacking> backing) {
    BobEnergy energy = BobEnergy.of(bob, Pole.NORTH, plate(backing));
    double[] pose = pose(0.008, -0.004, 0.032, 0.2, -0.15);
    double value = energy.energyAndLoad(pose, work);
    double[] load = work.clone();
    assertEquals(value, energy.energy(pose, work), 1e-10 * Math.abs(value));
    double[] weights = {3.0 / 4, -3.0 / 20, 1.0 / 60};
    double forceScale = Math.hypot(load[0], Math.hypot(load[1], load[2]));
    for (int axis = 0; axis < 3; axis++) {
      double shift = 0;
      double turn = 0;
      double h = 1e-4;
      double angle = 1e-2;
      for (int k = 1; k <= 3; k++) {
        for (int sign = -1; sign <= 1; sign += 2) {
          double[] moved = pose.clone();
          moved[axis] += sign * k * h;
          shift += sign * weights[k - 1] * energy.energy(moved, work) / h;
          double[] turned = turned(pose, axis, sign * k * angle);
          turn += sign * weights[k - 1] * energy.energy(turned, work) / angle;
        }
      }
      assertEquals(-shift, load[axis], 2e-6 * forceScale);
      assertEquals(-turn, load[3 + axis], 2e-6 * forceScale * 0.03);
    }
  }

  private static double[] turned(double[] pose, int axis, double angle) {
    double[] out = pose.clone();
    int i = (axis + 1) % 3;
    int j = (axis + 2) % 3;
    for (int v = 3; v < 12; v += 3) {
      out[v + i] = Math.cos(angle) * pose[v + i] - Math.sin(angle) * pose[v + j];
      out[v + j] = Math.sin(angle) * pose[v + i] + Math.cos(angle) * pose[v + j];
    }
    return out;
  }

  /**
   * U = -integral of M . B over the bob's volume, Jackson (1999), eq. 5.72, by plain quadrature.
   */
  @Test
  void energyIsTheVolumesIntegral() {
    MagnetArray plate = plate(Optional.empty());
    double[] pose = pose(0.008, -0.004, 0.032, 0.2, -0.15);
    assertEquals(
        discByVolume(plate, pose),
        BobEnergy.of(DISC, Pole.NORTH, plate).energy(pose, work),
        1e-9 * Math.abs(discByVolume(plate, pose)));
    double blockByVolume = blockByVolume(plate, pose);
    assertEquals(
        blockByVolume,
        BobEnergy.of(BLOCK, Pole.NORTH, plate).energy(pose, work),
        1e-9 * Math.abs(blockByVolume));
  }

  private static double discByVolume(MagnetArray plate, double[] p) {
    GaussIntegratorFactory factory = new GaussIntegratorFactory();
    GaussIntegrator radial = factory.legendre(10, 0, DISC.radius() * DISC.radius());
    GaussIntegrator axial = factory.legendre(10, -DISC.halfHeight(), DISC.halfHeight());
    double sum = 0;
    for (int i = 0; i < 10; i++) {
      double r = Math.sqrt(radial.getPoint(i));
      for (int k = 0; k < 10; k++) {
        for (int j = 0; j < 40; j++) {
          double angle = Math.PI * j / 20;
          double weight = radial.getWeight(i) * axial.getWeight(k) * Math.PI / 40;
          sum +=
              weight * along(plate, p, r * Math.cos(angle), r * Math.sin(angle), axial.getPoint(k));
        }
      }
    }
    return -DISC.remanence() / MagneticConstant.MU_0 * sum;
  }

  private static double blockByVolume(MagnetArray plate, double[] p) {
    GaussIntegratorFactory factory = new GaussIntegratorFactory();
    GaussIntegrator a = factory.legendre(16, -BLOCK.length() / 2, BLOCK.length() / 2);
    GaussIntegrator b = factory.legendre(14, -BLOCK.width() / 2, BLOCK.width() / 2);
    GaussIntegrator c = factory.legendre(10, -BLOCK.halfHeight(), BLOCK.halfHeight());
    double sum = 0;
    for (int i = 0; i < 16; i++) {
      for (int j = 0; j < 14; j++) {
        for (int k = 0; k < 10; k++) {
          double weight = a.getWeight(i) * b.getWeight(j) * c.getWeight(k);
          sum += weight * along(plate, p, a.getPoint(i), b.getPoint(j), c.getPoint(k));
        }
      }
    }
    return -BLOCK.remanence() / MagneticConstant.MU_0 * sum;
  }

  private static double along(MagnetArray plate, double[] p, double u, double v, double s) {
    double[] b = new double[3];
    plate.field(
        p[0] + u * p[3] + v * p[6] + s * p[9],
        p[1] + u * p[4] + v * p[7] + s * p[10],
        p[2] + u * p[5] + v * p[8] + s * p[11],
        b);
    return b[0] * p[9] + b[1] * p[10] + b[2] * p[11];
  }

  /** Jackson (1999), section 5.7: a dipole in a field has the energy -m . B. */
  @Test
  void dipolesEnergyIsMomentTimesField() {
    MagnetArray plate = plate(Optional.empty());
    double[] pose = pose(0.008, -0.004, 0.032, 0.2, -0.15);
    double expected = DIPOLE.moment() * along(plate, pose, 0, 0, 0);
    assertEquals(
        expected,
        BobEnergy.of(DIPOLE, Pole.SOUTH, plate).energy(pose, work),
        1e-10 * Math.abs(expected));
  }

  /**
   * A dipole over a plane of infinite permeability, by its image: U = -mu0 m^2 (1 + cos^2 t)/(64 pi
   * d^3), t its angle to the normal (Jackson (1999), problem 5.17, permeability to infinity).
   */
  @Test
  void bobIsDrawnToTheSteelByItsOwnImage() {
    MagnetArray steel = new MagnetArray(List.of(), Optional.of(new SteelBacking(0)));
    BobEnergy energy = BobEnergy.of(DIPOLE, Pole.NORTH, steel);
    double d = 0.03;
    for (double tilt : new double[] {0, 0.3, 1.2}) {
      double cos2 = Math.cos(tilt) * Math.cos(tilt);
      double expected =
          -MagneticConstant.MU_0
              * DIPOLE.moment()
              * DIPOLE.moment()
              * (1 + cos2)
              / (64 * Math.PI * d * d * d);
      double value = energy.energyAndLoad(pose(0.01, 0.02, d, tilt, 0), work);
      assertEquals(expected, value, 1e-12 * Math.abs(expected));
      assertEquals(3 * expected / d, work[2], 1e-9 * Math.abs(work[2]));
    }
  }

  /** On steel the horizontal flux density vanishes: lines of force enter it upright. */
  @Test
  void fieldEntersTheSteelUpright() {
    MagnetArray plate = plate(Optional.of(new SteelBacking(-0.002)));
    double[] b = new double[3];
    plate.field(0.004, 0.013, -0.002, b);
    assertEquals(0, b[0], 1e-14);
    assertEquals(0, b[1], 1e-14);
    assertTrue(Math.abs(b[2]) > 1e-3);
  }

  @Test
  void turningAPoleTurnsTheEnergysSign() {
    double[] pose = pose(0.008, -0.004, 0.032, 0.2, -0.15);
    MagnetArray plate = plate(Optional.empty());
    double north = BobEnergy.of(DISC, Pole.NORTH, plate).energy(pose, work);
    double south = BobEnergy.of(DISC, Pole.SOUTH, plate).energy(pose, work);
    assertEquals(north, -south);
  }

  @Test
  void unlikePolesFacingHaveNegativeEnergy() {
    MagnetArray plate =
        new MagnetArray(List.of(at(PLATE_DISC, 0, 0, 0, Pole.SOUTH)), Optional.empty());
    double[] pose = pose(0, 0, 0.03, 0, 0);
    assertTrue(BobEnergy.of(DISC, Pole.NORTH, plate).energy(pose, work) < 0);
    assertTrue(BobEnergy.of(DISC, Pole.SOUTH, plate).energy(pose, work) > 0);
  }
}
