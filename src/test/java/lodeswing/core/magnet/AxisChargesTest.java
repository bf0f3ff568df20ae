package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Charges on the axis against the plain product rule of 40 circles and 160 spokes on the faces. */
class AxisChargesTest {

  private static final double DIGITS = Math.log(1e11);
  private static final Disc SOURCE = new Disc(0.0125, 0.005, 0.385);

  @ParameterizedTest
  @CsvSource({
    "0, 0.0075, 0.0025",
    "0, 0.01, 0.005",
    "0, 0.003, 0.01",
    "0.003, 0.008, 0.002",
    "0, 0.01, 0.0005"
  })
  void chargesStandForTheFacesFromTheirDistanceOn(double inner, double outer, double half) {
    List<AxisCharges> ladder = AxisCharges.ladder(inner, outer, half, DIGITS);
    FaceRule faces = FaceRule.annulus(inner, outer, outer, 160, 160 * Math.log(2));
    SourceKernel exact = new ExactKernel(SOURCE);
    SourceKernel tabulated = new TabulatedKernel(SOURCE);
    double area = 2 * Math.PI * (outer * outer - inner * inner) * half;
    Random random = new Random(4);
    double[] work = new double[Work.LENGTH];
    assertFalse(ladder.isEmpty());
    for (AxisCharges charges : ladder) {
      double distance = charges.from() + SOURCE.radius();
      double pair = area * SOURCE.moment() / (2 * Math.PI * Math.pow(distance, 3));
      for (int i = 0; i < 50; i++) {
        System.arraycopy(pose(random, distance), 0, work, Work.POSE, 12);
        double expected = exact.faceIntegralAndLoad(faces, half, work);
        double force = work[Work.SUM + 2];
        assertEquals(expected, exact.faceIntegral(charges.rule(), half, work), 3e-11 * pair);
        double found = tabulated.faceIntegralAndLoad(charges.rule(), half, work);
        assertEquals(expected, found, 1e-10 * pair);
        double pull = 3 * MagneticConstant.MU_0 * pair / distance;
        assertEquals(force, work[Work.SUM + 2], 1e-8 * pull);
      }
    }
  }

  @Test
  void fewerChargesAreForFartherSources() {
    List<AxisCharges> ladder = AxisCharges.ladder(0, 0.0075, 0.0025, DIGITS);
    for (int i = 1; i < ladder.size(); i++) {
      assertTrue(ladder.get(i).rule().size() > ladder.get(i - 1).rule().size());
      assertTrue(ladder.get(i).from() < ladder.get(i - 1).from());
    }
  }

  private static double[] pose(Random random, double distance) {
    double alpha = 2 * random.nextDouble() - 1;
    double beta = 2 * random.nextDouble() - 1;
    double sa = Math.sin(alpha);
    double ca = Math.cos(alpha);
    double sb = Math.sin(beta);
    double cb = Math.cos(beta);
    double up = random.nextDouble();
    double out = distance * Math.sqrt(1 - up * up);
    double turn = 2 * Math.PI * random.nextDouble();
    double x = out * Math.cos(turn);
    double y = out * Math.sin(turn);
    return new double[] {
      x, y, distance * up, cb, -sb * sa, sb * ca, 0, -ca, -sa, sb, cb * sa, -cb * ca
    };
  }
}
