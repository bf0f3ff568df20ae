package lodeswing.core.integrate.lane;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.StepObserver;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.TextbookMotion;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.rig.TextbookLayout.Attractor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Schemes on lanes against closed forms, and their orders. */
class LaneKernelTest {

  private static final Watch NOTHING =
      new Watch(Double.NEGATIVE_INFINITY, Double.MAX_VALUE, Double.MAX_VALUE, 0, false);

  /** An oscillator with loss and no attractors has a closed form. */
  @Test
  void oscillatorWithLossFollowsItsClosedForm() {
    double rate = 0.5;
    double drag = 0.2;
    TextbookMotion motion = new TextbookMotion(new TextbookLayout(rate, drag, 0.3, List.of()));
    NystromKernel kernel =
        new NystromKernel(motion, LaneProvider.choose(), Tolerance.of(1e-10), NOTHING);
    for (int lane = 0; lane < LaneBlock.LANES; lane++) {
      kernel.start(lane, new double[] {1 + lane, -0.5, 0, 0});
    }
    for (int k = 0; k < 40; k++) {
      kernel.attempt();
    }
    double[] s = kernel.slots();
    double w = Math.sqrt(rate * rate - drag * drag / 4);
    for (int lane = 0; lane < LaneBlock.LANES; lane++) {
      double t = s[LaneBlock.TIME + lane];
      boolean moved = s[LaneBlock.ERROR + lane] <= 1;
      double decay = Math.exp(-drag / 2 * t);
      double wanted = (1 + lane) * decay * (Math.cos(w * t) + drag / (2 * w) * Math.sin(w * t));
      assertTrue(t > 5, "only at " + t);
      double found = s[(moved ? LaneBlock.NEW : LaneBlock.Q0) + lane];
      assertEquals(wanted, found, 1e-8 * (1 + lane), "lane " + lane);
    }
  }

  /** The error falls with the length of the steps as the order says, over all lanes. */
  @Test
  void nystromPairKeepsItsOrder() {
    TextbookMotion motion =
        new TextbookMotion(new TextbookLayout(1, 0.05, 1, List.of(new Attractor(0, 0, 1))));
    double[] errors = new double[2];
    double[] steps = new double[2];
    double[] tolerances = {1e-5, 1e-9};
    for (int k = 0; k < 2; k++) {
      NystromKernel kernel =
          new NystromKernel(motion, LaneProvider.choose(), Tolerance.of(tolerances[k]), NOTHING);
      double[][] starts = new double[LaneBlock.LANES][];
      for (int lane = 0; lane < LaneBlock.LANES; lane++) {
        starts[lane] = new double[] {1 + 0.01 * lane, 0, 0, 0.7};
        kernel.start(lane, starts[lane]);
      }
      double[] s = kernel.slots();
      while (s[LaneBlock.TIME] < 30) {
        kernel.attempt();
        steps[k]++;
      }
      errors[k] = medianError(motion, s, starts);
    }
    double order = Math.log(errors[0] / errors[1]) / Math.log(steps[1] / steps[0]);
    assertTrue(order > 7 && order < 10, "measured order " + order);
  }

  /** Median over the lanes of the distance from runs at a far tighter tolerance. */
  private static double medianError(TextbookMotion motion, double[] s, double[][] starts) {
    double[] errors = new double[LaneBlock.LANES];
    for (int lane = 0; lane < LaneBlock.LANES; lane++) {
      double[] end =
          ScalarIntegrator.forMotion(motion)
              .integrate(
                  starts[lane], s[LaneBlock.TIME + lane], Tolerance.of(1e-14), StepObserver.NONE)
              .state();
      boolean moved = s[LaneBlock.ERROR + lane] <= 1;
      int at = (moved ? LaneBlock.NEW : LaneBlock.Q0) + lane;
      errors[lane] = Math.hypot(s[at] - end[0], s[at + LaneBlock.LANES] - end[1]);
    }
    Arrays.sort(errors);
    return errors[LaneBlock.LANES / 2];
  }

  @ParameterizedTest
  @EnumSource(RungeKuttaPair.class)
  void pairsKeepTheirOrderOnTheBench(RungeKuttaPair pair) {
    BenchMotion motion = BenchMotion.withoutMagnets(TrialLayouts.bench("quiet-plate"));
    double[] drift = new double[2];
    double[] steps = new double[2];
    double[] tolerances = {1e-5, 1e-8};
    double[] start = {0.7, 0.3, 0.2, 1.5};
    for (int k = 0; k < 2; k++) {
      RungeKuttaKernel kernel =
          new RungeKuttaKernel(
              motion, pair, LaneProvider.choose(), Tolerance.of(tolerances[k]), NOTHING);
      kernel.start(0, start);
      double[] s = kernel.slots();
      while (s[LaneBlock.TIME] < 10) {
        kernel.attempt();
        steps[k]++;
      }
      drift[k] = Math.abs(energyLossError(motion, s, start));
    }
    double order = Math.log(drift[0] / drift[1]) / Math.log(steps[1] / steps[0]);
    double wanted = pair == RungeKuttaPair.ORDER_8 ? 8 : 5;
    assertTrue(Math.abs(order - wanted) < 2, pair + " measured order " + order);
  }

  /** Distance in energy from a run at a far tighter tolerance, at the same time. */
  private static double energyLossError(BenchMotion motion, double[] s, double[] start) {
    double time = s[LaneBlock.TIME];
    double[] end =
        ScalarIntegrator.forMotion(motion)
            .integrate(start, time, Tolerance.of(1e-14), lodeswing.core.integrate.StepObserver.NONE)
            .state();
    return s[LaneBlock.NEW_ENERGY] - motion.energy(end[0], end[1], end[2], end[3]);
  }

  @Test
  void attemptsAllocateNothing() {
    TextbookMotion motion =
        new TextbookMotion(new TextbookLayout(1, 0.1, 1, List.of(new Attractor(0, 0, 1))));
    LaneProvider provider = LaneProvider.scalar("a test");
    NystromKernel kernel = new NystromKernel(motion, provider, Tolerance.of(1e-6), NOTHING);
    var threads =
        (com.sun.management.ThreadMXBean) java.lang.management.ManagementFactory.getThreadMXBean();
    for (int k = 0; k < 2000; k++) {
      kernel.attempt();
    }
    long before = threads.getCurrentThreadAllocatedBytes();
    for (int k = 0; k < 2000; k++) {
      kernel.attempt();
    }
    long bytes = threads.getCurrentThreadAllocatedBytes() - before;
    assertTrue(bytes < 2000, bytes + " bytes");
  }
}
