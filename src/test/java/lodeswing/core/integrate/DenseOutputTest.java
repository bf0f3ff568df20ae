package lodeswing.core.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import lodeswing.core.motion.Motion;
import org.junit.jupiter.api.Test;

class DenseOutputTest {

  private static void joinsAndFollows(
      Motion motion, double[] start, double duration, double bound) {
    double[] at = new double[4];
    ScalarIntegrator.forMotion(motion)
        .integrate(
            start,
            duration,
            Tolerance.TRACE,
            step -> {
              double[] begin = new double[4];
              step.startState(begin);
              step.at(step.startTime(), at);
              for (int i = 0; i < 4; i++) {
                assertEquals(step.start(i), at[i], 1e-13 * (1 + Math.abs(at[i])));
              }
              step.at(step.endTime(), at);
              for (int i = 0; i < 4; i++) {
                assertEquals(step.end(i), at[i], 1e-13 * (1 + Math.abs(at[i])));
              }
              for (double theta : new double[] {0.25, 0.5, 0.8}) {
                double t = theta * (step.endTime() - step.startTime());
                double[] truth = ReferenceRun.of(motion, begin, t);
                step.at(step.startTime() + t, at);
                assertEquals(truth[0], at[0], bound);
                assertEquals(truth[1], at[1], bound);
                double speedBound = 100 * bound * motion.naturalRate();
                assertEquals(truth[2], at[2], speedBound);
                assertEquals(truth[3], at[3], speedBound);
              }
              return true;
            });
  }

  @Test
  void nystromOutputJoinsAtTheEndsAndFollowsThePathInside() {
    joinsAndFollows(PlaneMotion.threeAttractors(0.2), new double[] {1.2, 0.5, 0, 0}, 6, 3e-10);
  }

  @Test
  void generalOutputJoinsAtTheEndsAndFollowsThePathInside() {
    joinsAndFollows(DipoleBenchMotion.sample(), new double[] {0.2, 0.1, 0, 0}, 1.5, 3e-10);
  }

  @Test
  void denseOutputCostsTwoEvaluationsAStepOrNone() {
    PlaneMotion motion = PlaneMotion.threeAttractors(0.2);
    assertEquals(2, evaluationsMoreAStep(ScalarIntegrator.forMotion(motion)));
    assertEquals(0, evaluationsMoreAStep(ScalarIntegrator.general(motion)));
  }

  private static long evaluationsMoreAStep(ScalarIntegrator integrator) {
    double[] start = {1.2, 0.5, 0, 0};
    double[] at = new double[4];
    Work plain = integrator.integrate(start, 6, Tolerance.TRACE, StepObserver.NONE).work();
    StepObserver sampler =
        step -> {
          for (int i = 0; i < 10; i++) {
            step.at(step.startTime(), at);
          }
          return true;
        };
    Work dense = integrator.integrate(start, 6, Tolerance.TRACE, sampler).work();
    return (dense.evaluations() - plain.evaluations()) / dense.acceptedSteps();
  }
}
