package lodeswing.core.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.suspension.Cord;
import org.junit.jupiter.api.Test;

/** Rigs that share tables, against each rig's own exact energy. */
class NearbyMotionTest {

  private static final double REACH = 0.07;
  private static final double[] STEPS = {0.00525, 0.0003125, 0.02, 0.1};

  private static final List<List<Double>> BUILT = new ArrayList<>();

  /** One for all: its tables take some seconds. */
  private static final NearbyMotion FAMILY =
      new NearbyMotion(NearbyMotionTest::counted, STEPS, REACH);

  /** Length [m], gap [m], remanence of the first magnet [T], loss [N s/m]. */
  private static Layout rig(List<Double> figures) {
    List<PlacedMagnet> magnets = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      double angle = 2 * Math.PI * k / 3;
      double remanence = k == 0 ? figures.get(2) : 0.385;
      magnets.add(
          new PlacedMagnet(
              new Disc(0.0125, 0.0025, remanence),
              new Vec3(0.045 * Math.cos(angle), 0.045 * Math.sin(angle), 0.0025),
              0,
              Pole.SOUTH));
    }
    return new BenchLayout(
        new Cord(figures.get(0), 0.045),
        Optional.of(new BenchLayout.BobMagnet(new Disc(0.0075, 0.0025, 1.195), Pole.NORTH)),
        figures.get(1),
        magnets,
        Optional.empty(),
        9.80665,
        new LossLaw(figures.get(3), List.of(), 0));
  }

  private static Optional<Layout> counted(List<Double> figures) {
    BUILT.add(figures);
    return figures.get(1) < 0.02225 ? Optional.empty() : Optional.of(rig(figures));
  }

  private static double[] slopes(Motion motion, double beta, double alpha) {
    double[] out = new double[6];
    motion.potentialDerivatives(beta, alpha, out);
    return out;
  }

  /** Greatest slope of the magnets' energy along both axes: what errors are a share of. */
  private static double magnetsForce(Motion exact, List<Double> figures) {
    BenchLayout bench = (BenchLayout) rig(figures);
    double most = 0;
    for (double beta = -0.2; beta < 0.2; beta += 0.01) {
      double[] with = slopes(exact, beta, 0.03);
      double[] without = slopes(BenchMotion.withoutMagnets(bench), beta, 0.03);
      most = Math.max(most, Math.abs(with[1] - without[1]));
    }
    return most;
  }

  @Test
  void everyRigOfABoxHasItsOwnForceToATenThousandth() {
    Random random = new Random(3);
    for (int i = 0; i < 12; i++) {
      List<Double> figures =
          List.of(
              0.42 + 0.0105 * (random.nextDouble() - 0.5),
              0.025 + 0.000625 * (random.nextDouble() - 0.5),
              0.4 + 0.04 * (random.nextDouble() - 0.5),
              random.nextDouble());
      Motion near = FAMILY.of(figures).orElseThrow();
      Motion exact = new ExactMotion().of(rig(figures));
      double force = magnetsForce(exact, figures);
      for (int k = 0; k < 10; k++) {
        double beta = 0.32 * (random.nextDouble() - 0.5);
        double alpha = 0.32 * (random.nextDouble() - 0.5);
        double[] found = slopes(near, beta, alpha);
        double[] wanted = slopes(exact, beta, alpha);
        assertEquals(wanted[1], found[1], 1e-4 * force, figures + " at " + beta + ", " + alpha);
        assertEquals(wanted[2], found[2], 1e-4 * force, figures + " at " + beta + ", " + alpha);
        // The exact second derivatives are differences over a thousandth.
        for (int d = 3; d < 6; d++) {
          assertEquals(wanted[d], found[d], 1e-3 * force / 0.05, "derivative " + d);
        }
      }
    }
  }

  @Test
  void gradientAndSlopesAndCurvatureAreOfOneFunction() {
    BenchMotion motion = (BenchMotion) FAMILY.of(List.of(0.42, 0.025, 0.4, 0.1)).orElseThrow();
    AngleEnergy energy = motion.potentialEnergy();
    double step = 1e-4;
    double slope = (energy.value(0.1 + step, 0.05) - energy.value(0.1 - step, 0.05)) / (2 * step);
    double[] out = slopes(motion, 0.1, 0.05);
    assertEquals(slope, out[1], 1e-6 * Math.abs(slope));
    double[] first = new double[3];
    energy.gradient(0.1, 0.05, first);
    assertEquals(first[2], out[2], 1e-12);
  }

  @Test
  void lossesAloneTakeNoTableOfTheirOwn() {
    FAMILY.of(List.of(0.42, 0.025, 0.4, 0.1));
    int before = BUILT.size();
    FAMILY.of(List.of(0.42, 0.025, 0.4, 5.0));
    assertEquals(before + 1, BUILT.size());
  }

  @Test
  void beyondTheTablesAndWhereANeighbourCannotBeBuiltTheExactEnergyAnswers() {
    // The box of this gap reaches below what can be BUILT.
    List<Double> low = List.of(0.42, 0.0225, 0.4, 0.1);
    for (List<Double> figures : List.of(low, List.of(0.42, 0.025, 0.4, 0.1))) {
      Motion near = FAMILY.of(figures).orElseThrow();
      Motion exact = new ExactMotion().of(rig(figures));
      double beyond = figures.equals(low) ? 0.1 : 0.5;
      assertEquals(slopes(exact, beyond, 0)[1], slopes(near, beyond, 0)[1], 0);
    }
    assertTrue(FAMILY.of(List.of(0.42, 0.02, 0.385, 0.1)).isEmpty());
  }
}
