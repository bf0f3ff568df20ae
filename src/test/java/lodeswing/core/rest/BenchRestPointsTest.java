package lodeswing.core.rest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.magnet.BobEnergy;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.motion.AngleEnergy;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.PotentialTable;
import lodeswing.core.motion.Region;
import lodeswing.core.motion.RigPotential;
import lodeswing.core.motion.WorkBudget;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.Cord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Three ferrite discs attract a small neodymium disc on a cord of 420 mm, 45 g. Distances and
 * barriers were computed apart from this code, by volume quadrature in another language.
 */
class BenchRestPointsTest {

  private static final double CORD = 0.42;

  private static BenchLayout layout(double gap) {
    Disc ferrite = new Disc(0.0125, 0.005, 0.385);
    List<PlacedMagnet> plate = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double angle = 2 * Math.PI * i / 3;
      Vec3 centre = new Vec3(0.045 * Math.cos(angle), 0.045 * Math.sin(angle), 0.0025);
      plate.add(new PlacedMagnet(ferrite, centre, 0, Pole.SOUTH));
    }
    Disc bob = new Disc(0.0075, 0.005, 1.195);
    return new BenchLayout(
        new Cord(CORD, 0.045),
        Optional.of(new BenchLayout.BobMagnet(bob, Pole.NORTH)),
        gap,
        plate,
        Optional.empty(),
        9.80665,
        LossLaw.none());
  }

  @ParameterizedTest
  @CsvSource({"0.025, 0.0409, 3.62e-3"})
  void wellsAndBarriersOfTheBenchAreAsComputedApart(double gap, double distance, double barrier) {
    BenchLayout layout = layout(gap);
    PotentialTable table =
        PotentialTable.fit(
                new RigPotential(
                    layout.suspension().body(), layout.gravity(), new CordEnergy(layout)),
                BenchMotion.MAX_ANGLE,
                Region.EVERYWHERE,
                WorkBudget.unlimited())
            .table(1e-7, 1e-5);
    BenchMotion motion = new BenchMotion(layout, table, (beta, alpha) -> 0);
    RestPoints found = new RestPointFinder(motion, ScanRegion.of(layout)).find();
    int overMagnets = 0;
    for (RestPoint r : found.list()) {
      assertEquals(OptionalInt.of(overMagnets), r.surroundings().owner());
      assertEquals(distance, Math.hypot(r.x(), r.y()), 0.01 * distance);
      assertEquals(barrier, r.barrier().height(), 0.01 * barrier + 0.005e-3);
      overMagnets++;
    }
    assertEquals(3, overMagnets);
    assertTrue(found.complete(), () -> found.census().toString());
  }

  /** Energy of the bob magnet on a cord, slopes from force and torque. */
  private record CordEnergy(BenchLayout layout, BobEnergy bob) implements AngleEnergy {

    private CordEnergy(BenchLayout layout) {
      this(
          layout,
          BobEnergy.of(
              layout.bob().orElseThrow().magnet(),
              layout.bob().orElseThrow().poleDown(),
              new MagnetArray(layout.magnets(), layout.backing())));
    }

    private double[] pose(double beta, double alpha) {
      double sb = Math.sin(beta);
      double cb = Math.cos(beta);
      double sa = Math.sin(alpha);
      double ca = Math.cos(alpha);
      double z = layout.axisHeight() - CORD * cb * ca;
      return new double[] {
        CORD * sb, CORD * cb * sa, z, cb, -sb * sa, sb * ca, 0, ca, sa, sb, cb * sa, -cb * ca
      };
    }

    @Override
    public double value(double beta, double alpha) {
      return bob.energy(pose(beta, alpha), new double[BobEnergy.WORK_LENGTH]);
    }

    @Override
    public void gradient(double beta, double alpha, double[] out) {
      double[] p = pose(beta, alpha);
      double[] w = new double[BobEnergy.WORK_LENGTH];
      out[0] = bob.energyAndLoad(p, w);
      // turning by beta shifts the bob along ex and turns it about t x ex
      double along = w[0] * p[3] + w[1] * p[4] + w[2] * p[5];
      double turning =
          w[3] * (p[10] * p[5] - p[11] * p[4])
              + w[4] * (p[11] * p[3] - p[9] * p[5])
              + w[5] * (p[9] * p[4] - p[10] * p[3]);
      out[1] = -CORD * along - turning;
      // turning by alpha is a turn about the x axis
      out[2] = -CORD * (-w[1] * p[11] + w[2] * p[10]) - w[3];
    }

    @Override
    public void curvature(double beta, double alpha, double[] out) {
      double h = 1e-5;
      double[] plus = new double[3];
      double[] minus = new double[3];
      gradient(beta, alpha, out);
      gradient(beta + h, alpha, plus);
      gradient(beta - h, alpha, minus);
      out[3] = (plus[1] - minus[1]) / (2 * h);
      out[4] = (plus[2] - minus[2]) / (2 * h);
      gradient(beta, alpha + h, plus);
      gradient(beta, alpha - h, minus);
      out[5] = (plus[2] - minus[2]) / (2 * h);
    }
  }
}
