package lodeswing.analysis.trace;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Energy along traces: kept without loss, never rising with it. */
class TraceEnergyTest {

  private static final int SWINGS = 100;
  private static final double KEPT = 1e-9;
  private static final double KEPT_INSIDE = 3e-8;

  /**
   * Both by the table that traces run on and by the exact field. Inside the steps the dense output
   * is of lower order: there the speed of a sample is right to some 1e-8.
   */
  @ParameterizedTest
  @CsvSource({"0.06, 0.03, true", "-0.1, 0.05, true", "0.02, 0.12, true", "0.06, 0.03, false"})
  void hundredSwingsWithoutLossKeepTheirEnergy(double x, double y, boolean table) {
    BenchLayout layout = TrialLayouts.withLoss("three-stations", LossLaw.none());
    Landscape landscape = TrialLandscapes.of(layout);
    Motion motion = table ? landscape.motion() : TrialLayouts.exactMotion(layout);
    double[] start = TrialLandscapes.start(landscape, x, y, 0, 0);
    double first = TrialLandscapes.energy(motion, start);
    double[] state = new double[4];
    double[] most = new double[2];
    ScalarIntegrator.forMotion(motion)
        .integrate(
            start,
            SWINGS * 2 * Math.PI / motion.naturalRate(),
            Tolerance.TRACE,
            step -> {
              for (int k = 1; k <= 4; k++) {
                double part = 0.25 * k * (step.endTime() - step.startTime());
                step.at(Math.min(step.startTime() + part, step.endTime()), state);
                double off = Math.abs(TrialLandscapes.energy(motion, state) - first);
                int place = k == 4 ? 0 : 1;
                most[place] = Math.max(most[place], off);
              }
              return true;
            });
    double swing = TrialLandscapes.swingEnergy(landscape, start);
    assertTrue(most[0] < KEPT * swing, () -> "at the steps' ends: " + most[0] / swing);
    assertTrue(most[1] < KEPT_INSIDE * swing, () -> "inside the steps: " + most[1] / swing);
  }

  /** Linear loss on cord, bar and plane; air drag and friction at the pivot beside it. */
  @ParameterizedTest
  @ValueSource(strings = {"three-stations", "kitchen-drawer", "every-loss", "paper-triangle"})
  void energyNeverRisesAlongThePathWithLoss(String name) {
    boolean every = name.equals("every-loss");
    Layout layout = every ? TrialLayouts.everyLoss() : TrialLayouts.sample(name);
    Landscape landscape = TrialLandscapes.of(layout);
    double reach = TrialLandscapes.isBench(landscape) ? 0.12 : 1.5;
    SplittableRandom random = new SplittableRandom(3);
    int paths = 0;
    while (paths < 3) {
      double[] start =
          TrialLandscapes.start(
              landscape, reach * random.nextDouble(-1, 1), reach * random.nextDouble(-1, 1), 0, 0);
      if (TrialLandscapes.inside(landscape.motion(), start)) {
        TraceResult path = new Trace(landscape).run(TrialLandscapes.spec(20, 0.01), start);
        double[] energy = path.samples().energy();
        double swing = TrialLandscapes.swingEnergy(landscape, start);
        double rise = 0;
        for (int i = 1; i < energy.length; i++) {
          rise = Math.max(rise, energy[i] - energy[i - 1]);
        }
        assertTrue(rise <= 1e-10 * swing, "rise " + rise / swing);
        assertTrue(energy[energy.length - 1] < energy[0]);
        paths++;
      }
    }
  }
}
