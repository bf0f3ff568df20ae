package lodeswing.core.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Supplier;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.Motion;
import org.junit.jupiter.api.Test;

class LobattoCollocationTest {

  private static final int N = LobattoNodes.COUNT;

  /** Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 25.6, n = 8. */
  @Test
  void pointsAndWeightsAreTheHandbooks() {
    double[] points = {0.20929_92179, 0.59170_01814, 0.87174_01485, 1};
    double[] weights = {0.41245_87946, 0.34112_26924, 0.21070_42271, 0.03571_42857};
    for (int i = 0; i < 4; i++) {
      assertEquals(points[i], 2 * LobattoNodes.C[4 + i] - 1, 1e-10);
      assertEquals(weights[i], 2 * LobattoNodes.SPEED[N - 1][4 + i], 1e-10);
      assertEquals(weights[i], 2 * LobattoNodes.SPEED[N - 1][3 - i], 1e-10);
    }
  }

  /**
   * B(14), C(8) and D(6) hold, so the order is 14: Hairer and Wanner, Solving Ordinary Differential
   * Equations II (1996), theorem IV.5.1 (Butcher 1964).
   */
  @Test
  void simplifyingAssumptionsOfOrderFourteenHold() {
    double[] c = LobattoNodes.C;
    double[] b = LobattoNodes.SPEED[N - 1];
    for (int q = 1; q <= 14; q++) {
      assertEquals(1.0 / q, sum(b, powers(q - 1)), 1e-15, "B" + q);
    }
    assertTrue(Math.abs(sum(b, powers(14)) - 1.0 / 15) > 1e-12, "B15");
    for (int q = 1; q <= 8; q++) {
      for (int i = 0; i < N; i++) {
        double speed = Math.pow(c[i], q) / q;
        double place = Math.pow(c[i], q + 1) / (q * (q + 1));
        assertEquals(speed, sum(LobattoNodes.SPEED[i], powers(q - 1)), 1e-15, "C" + q);
        assertEquals(place, sum(LobattoNodes.PLACE[i], powers(q - 1)), 1e-15, "C" + q);
      }
    }
    for (int q = 1; q <= 6; q++) {
      for (int j = 0; j < N; j++) {
        double sum = 0;
        for (int i = 0; i < N; i++) {
          sum += b[i] * Math.pow(c[i], q - 1) * LobattoNodes.SPEED[i][j];
        }
        assertEquals(b[j] * (1 - Math.pow(c[j], q)) / q, sum, 1e-15, "D" + q);
      }
    }
  }

  private static double[] powers(int exponent) {
    double[] powers = new double[N];
    for (int i = 0; i < N; i++) {
      powers[i] = Math.pow(LobattoNodes.C[i], exponent);
    }
    return powers;
  }

  private static double sum(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < N; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  @Test
  void localErrorEstimateBoundsTheErrorOfAStepOnTheBench() {
    Motion motion = DipoleBenchMotion.sample();
    for (double tolerance : new double[] {1e-6, 1e-8, 1e-10}) {
      ScalarIntegrator.forMotion(motion)
          .integrate(
              new double[] {0.2, 0.1, 0, 0},
              3,
              Tolerance.of(tolerance),
              step -> {
                double[] state = new double[4];
                step.startState(state);
                double[] truth = ReferenceRun.of(motion, state, step.endTime() - step.startTime());
                double off = Math.hypot(step.end(0) - truth[0], step.end(1) - truth[1]);
                assertTrue(off < step.localError() + 3e-14, () -> off + " at " + step.endTime());
                return true;
              });
    }
  }

  /** Where the bob nearly stops, drag and friction change over a small part of a step. */
  @Test
  void stepsPastAStandstillAreAsExactAsAsked() {
    Motion motion = BenchMotion.withoutMagnets(TrialLayouts.everyLoss());
    double rate = motion.naturalRate();
    for (double tolerance : new double[] {1e-8, 1e-10}) {
      ScalarIntegrator.forMotion(motion)
          .integrate(
              new double[] {0.2, 0.001, 0, 0.01},
              5,
              Tolerance.of(tolerance),
              step -> {
                double[] s = new double[4];
                step.startState(s);
                double[] truth = ReferenceRun.of(motion, s, step.endTime() - step.startTime());
                double place = Math.hypot(step.end(0) - truth[0], step.end(1) - truth[1]);
                double speed = Math.hypot(step.end(2) - truth[2], step.end(3) - truth[3]);
                double swing = Math.hypot(Math.hypot(s[0], s[1]), Math.hypot(s[2], s[3]) / rate);
                double off = Math.hypot(place, speed / rate) / (tolerance * (1 + swing));
                assertTrue(off < 2, () -> off + " times the tolerance at " + step.endTime());
                return true;
              });
    }
  }

  /** Evaluations at equal measured error: the loosest tolerance of each with a mean of 1e-7. */
  @Test
  void collocationNeedsFarFewerEvaluationsThanTheExplicitPair() {
    Motion motion = DipoleBenchMotion.sample();
    double ours = evaluationsFor(1e-7, motion, () -> new LobattoCollocation(motion));
    double explicit = evaluationsFor(1e-7, motion, () -> new DormandPrincePair(motion));
    assertTrue(ours < 0.7 * explicit, () -> ours + " against " + explicit);
  }

  private static double evaluationsFor(double error, Motion motion, Supplier<Stepper> stepper) {
    double[][] starts = {{0.2, 0.1, 0, 0}, {-0.15, 0.12, 0, 0}, {0.05, -0.2, 0, 0}, {0.1, 0, 0, 1}};
    double duration = 2;
    double[][] truth = new double[starts.length][];
    for (int i = 0; i < starts.length; i++) {
      truth[i] = ReferenceRun.of(motion, starts[i], duration);
    }
    for (int n = 16; n < 56; n++) {
      Tolerance tolerance = Tolerance.of(Math.pow(10, -n / 4.0));
      double sum = 0;
      double evaluations = 0;
      for (int i = 0; i < starts.length; i++) {
        Arrival end =
            new Passage(stepper.get(), tolerance, StepLimits.DEFAULT)
                .run(starts[i], duration, StepObserver.NONE);
        double[] s = end.state();
        sum += Math.log(Math.hypot(s[0] - truth[i][0], s[1] - truth[i][1]));
        evaluations += end.work().evaluations();
      }
      if (Math.exp(sum / starts.length) < error) {
        return evaluations;
      }
    }
    throw new AssertionError("error not reached");
  }
}
