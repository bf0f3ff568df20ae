package lodeswing.core.landscape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.motion.AngleEnergy;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.PotentialTable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a table states of its errors, against the exact energy at places of no fit and no check. */
class TableErrorsTest {

  private static final int PLACES = 400;

  @ParameterizedTest
  @ValueSource(strings = {"three-stations", "y-cord", "closed-doors"})
  void everyPlaceHasACellWithinTheErrorsStated(String name) {
    Landscape landscape = Landscape.of(TrialLayouts.bench(name));
    BenchMotion motion = (BenchMotion) landscape.motion();
    PotentialTable table = (PotentialTable) motion.potentialEnergy();
    AngleEnergy exact = TrialLayouts.exactMotion(TrialLayouts.bench(name)).potentialEnergy();
    Random random = new Random(3);
    double[] expected = new double[3];
    double[] found = new double[3];
    for (int i = 0; i < PLACES; i++) {
      double width = i % 2 == 0 ? BenchMotion.MAX_ANGLE : 0.3;
      double beta = width * (2 * random.nextDouble() - 1);
      double alpha = width * (2 * random.nextDouble() - 1);
      exact.gradient(beta, alpha, expected);
      table.gradient(beta, alpha, found);
      assertEquals(expected[0], found[0], table.energyError());
      assertEquals(expected[1], found[1], table.slopeError());
      assertEquals(expected[2], found[2], table.slopeError());
    }
    assertEquals(0, table.uncovered(BenchMotion.MAX_ANGLE));
    assertTrue(table.energyError() < 1e-8 * landscape.restPoints().shallowestBarrier());
  }
}
