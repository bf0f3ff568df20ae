package lodeswing.benchmark;

import java.util.List;
import java.util.Optional;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.motion.AngleEnergy;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.PotentialTable;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.Cord;

/**
 * Force evaluations a release on the bench at equal measured error: a table of contenders and
 * errors, for the exact energy of point dipoles and for its table over the angles.
 *
 * <p>24 releases within 0.2 rad, 4 s; an error is a geometric mean in radians.
 */
public final class EvaluationCountReport {

  private static final double GRAVITY = 9.80665;
  private static final double DURATION = 4;
  private static final List<String> CONTENDERS =
      List.of(
          "ours",
          "CM DP853",
          "CM DP54",
          "CM GBS",
          "CM AB6",
          "CM AB7",
          "CM AM6",
          "CM AM7",
          "HP DP853",
          "HP DP54",
          "HP GBS",
          "HP AB6",
          "HP AB7",
          "HP AM6",
          "HP AM7");
  private static final double[] ERRORS = {1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9};

  private EvaluationCountReport() {}

  /** Prints the report. */
  public static void main(String[] args) {
    AngleEnergy exact = new DipolePlate(0.42, 0.03);
    print("exact energy", exact);
    print(
        "table, slopes to 1e-9 J", PotentialTable.fit(exact, 0.6, 1e-13, 1e-11).table(1e-11, 1e-9));
  }

  private static void print(String title, AngleEnergy magnets) {
    Cord cord = new Cord(0.42, 0.045);
    BenchLayout layout =
        new BenchLayout(
            cord,
            Optional.empty(),
            0.03,
            List.of(),
            Optional.empty(),
            GRAVITY,
            LossLaw.fromSwingsToHalf(25, cord.body(), GRAVITY));
    BenchMotion motion = new BenchMotion(layout, magnets, (beta, alpha) -> 0);
    AccuracyMatch match = new AccuracyMatch(motion, TextbookScene.sample(24, 0.2), DURATION);
    System.out.printf("%s%n%-10s", title, "error");
    for (double error : ERRORS) {
      System.out.printf("%9.0e", error);
    }
    System.out.println();
    for (String name : CONTENDERS) {
      System.out.printf("%-10s", name);
      for (double evaluations : match.evaluations(Contender.of(name, motion), ERRORS)) {
        System.out.printf("%9.0f", evaluations);
      }
      System.out.println();
    }
  }
}
