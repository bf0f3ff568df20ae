package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.core.geometry.Vec3;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A whole bench: three ferrite discs attract a small neodymium disc on a cord of 420 mm, 45 g. The
 * figures are those stated for this bench in the service's specification, two to three digits each.
 */
class BenchWellsTest {

  private static final double CORD = 0.42;
  private static final double MASS = 0.045;
  private static final double GRAVITY = 9.80665;

  private static BobEnergy bench() {
    Disc ferrite = new Disc(0.0125, 0.005, 0.385);
    List<PlacedMagnet> plate = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double angle = 2 * Math.PI * i / 3;
      Vec3 centre = new Vec3(0.045 * Math.cos(angle), 0.045 * Math.sin(angle), 0.0025);
      plate.add(new PlacedMagnet(ferrite, centre, 0, Pole.SOUTH));
    }
    return BobEnergy.of(
        new Disc(0.0075, 0.005, 1.195), Pole.NORTH, new MagnetArray(plate, Optional.empty()));
  }

  /** Energy with the bob at a distance from the axis, in the direction of an azimuth. */
  private static double energy(BobEnergy bench, double gap, double rho, double azimuth) {
    double sin = rho / CORD;
    double cos = Math.sqrt(1 - sin * sin);
    double c = Math.cos(azimuth);
    double s = Math.sin(azimuth);
    double z = gap + 0.0025 + CORD * (1 - cos);
    double[] pose = {rho * c, rho * s, z, cos * c, cos * s, sin, -s, c, 0, sin * c, sin * s, -cos};
    return MASS * GRAVITY * CORD * (1 - cos)
        + bench.energy(pose, new double[BobEnergy.WORK_LENGTH]);
  }

  private static double lowest(
      BobEnergy bench, double gap, double azimuth, double from, double to) {
    double best = from;
    for (int i = 0; i <= 2000; i++) {
      double rho = from + (to - from) * i / 2000;
      if (energy(bench, gap, rho, azimuth) < energy(bench, gap, best, azimuth)) {
        best = rho;
      }
    }
    return best;
  }

  /** Pass between two wells: lies on the line of symmetry between them, lowest along it. */
  @ParameterizedTest
  @CsvSource({"0.025, 0.0409, 3.62e-3", "0.030, 0.0391, 1.89e-3", "0.040, 0.0320, 0.31e-3"})
  void wellsAndBarriersAreAsComputedApart(double gap, double distance, double barrier) {
    BobEnergy bench = bench();
    double well = lowest(bench, gap, 0, 0, 0.08);
    double pass = lowest(bench, gap, Math.PI / 3, 0, 0.08);
    double height = energy(bench, gap, pass, Math.PI / 3) - energy(bench, gap, well, 0);
    assertEquals(distance, well, 0.01 * distance);
    assertEquals(barrier, height, 0.01 * barrier + 0.005e-3);
  }

  @ParameterizedTest
  @CsvSource({"0.035, 0.88e-3"})
  void barrierFallsWithTheGap(double gap, double barrier) {
    BobEnergy bench = bench();
    double well = lowest(bench, gap, 0, 0, 0.08);
    double pass = lowest(bench, gap, Math.PI / 3, 0, 0.08);
    double height = energy(bench, gap, pass, Math.PI / 3) - energy(bench, gap, well, 0);
    assertEquals(barrier, height, 0.01 * barrier);
  }

  @ParameterizedTest
  @CsvSource({"0.025"})
  void noRestPointInTheMiddleAtASmallGap(double gap) {
    BobEnergy bench = bench();
    double middle = energy(bench, gap, 0, 0);
    assertTrue(energy(bench, gap, 0.004, 0) < middle, "falls towards a magnet");
    assertTrue(energy(bench, gap, 0.004, Math.PI / 3) < middle, "falls between them");
  }
}
