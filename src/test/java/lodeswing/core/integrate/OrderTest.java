package lodeswing.core.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lodeswing.core.motion.Motion;
import lodeswing.core.motion.MotionSystem;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/**
 * Orders measured as the slope between a step and its quarter on the three-attractor plane, against
 * Gragg, Bulirsch and Stoer's method of Commons Math at 1e-14.
 */
class OrderTest {

  private static final double END = 1.6;
  private static final double[] START = {1.3, 0.4, 0.1, 0.5};
  private static final PlaneMotion MOTION = PlaneMotion.threeAttractors(0.3);

  @Test
  void nystromPairHasOrderEightAndDenseOutputOrderSeven() {
    double[] coarse = errors(new NystromPair(MOTION), 14);
    double[] fine = errors(new NystromPair(MOTION), 56);
    assertTrue(slope(coarse[0], fine[0]) > 7.6, () -> "ends " + slope(coarse[0], fine[0]));
    assertTrue(slope(coarse[1], fine[1]) > 6.6, () -> "dense " + slope(coarse[1], fine[1]));
  }

  @Test
  void comparisonPairHasOrderEight() {
    double[] coarse = errors(new DormandPrincePair(MOTION), 14);
    double[] fine = errors(new DormandPrincePair(MOTION), 56);
    assertTrue(slope(coarse[0], fine[0]) > 7.6, () -> "ends " + slope(coarse[0], fine[0]));
    assertTrue(slope(coarse[1], fine[1]) > 6.6, () -> "dense " + slope(coarse[1], fine[1]));
  }

  @Test
  void oneStepOfTheComparisonPairAgreesWithCommonsMath() {
    DormandPrincePair ours = new DormandPrincePair(DipoleBenchMotion.sample());
    double[] start = {0.11, -0.07, 0.4, 0.9};
    ours.begin(0, start);
    ours.advance();
    ours.scale(new Tolerance(1, 0));
    double h = 0.03;
    ours.attempt(h);
    double[] theirs = start.clone();
    new DormandPrince853Integrator(h, h, 1, 1)
        .integrate(equations(DipoleBenchMotion.sample()), 0, theirs, h, theirs);
    for (int i = 0; i < 4; i++) {
      assertEquals(theirs[i], ours.end(i), 1e-14 * (1 + Math.abs(theirs[i])));
    }
  }

  private static double slope(double coarse, double fine) {
    return Math.log(coarse / fine) / Math.log(4);
  }

  /** Largest errors of places at step ends and inside steps. */
  private static double[] errors(Stepper stepper, int n) {
    double ends = 0;
    double inside = 0;
    double[] at = new double[4];
    double[] reference = START.clone();
    double known = 0;
    stepper.begin(0, START);
    for (int i = 0; i < n; i++) {
      stepper.advance();
      stepper.scale(new Tolerance(1, 0));
      stepper.attempt(END / n);
      for (double theta : new double[] {0.3, 0.6, 1}) {
        double t = stepper.startTime() + theta * END / n;
        reference = ReferenceRun.of(MOTION, reference, t - known);
        known = t;
        stepper.at(t, at);
        double error = Math.hypot(at[0] - reference[0], at[1] - reference[1]);
        inside = Math.max(inside, error);
        ends = theta == 1 ? error : ends;
      }
    }
    return new double[] {ends, inside};
  }

  private static FirstOrderDifferentialEquations equations(Motion motion) {
    return MotionSystem.of(motion);
  }
}
