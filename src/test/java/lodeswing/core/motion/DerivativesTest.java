package lodeswing.core.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.suspension.Suspension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Closed derivatives against central differences of order 4. */
class DerivativesTest {

  static Stream<Motion> motions() {
    List<Motion> motions = new ArrayList<>();
    for (Suspension suspension : Rigs.all()) {
      for (LossLaw loss : List.of(LossLaw.none(), Rigs.everyLoss(suspension))) {
        BenchLayout layout = Rigs.layout(suspension, loss);
        motions.add(Rigs.over(layout, Rigs.attractor(layout)));
      }
    }
    motions.add(new TextbookMotion(textbook()));
    return motions.stream();
  }

  static TextbookLayout textbook() {
    return new TextbookLayout(
        0.5,
        0.2,
        0.3,
        List.of(
            new TextbookLayout.Attractor(0.577, 0, 1),
            new TextbookLayout.Attractor(-0.2885, 0.5, 1.2),
            new TextbookLayout.Attractor(-0.2885, -0.5, -0.7)));
  }

  @ParameterizedTest
  @MethodSource("motions")
  void jacobianIsTheDerivativeOfTheAcceleration(Motion motion) {
    Random random = new Random(7);
    double[] jacobian = new double[8];
    for (int trial = 0; trial < 40; trial++) {
      double[] state = state(random, motion);
      motion.jacobian(state[0], state[1], state[2], state[3], jacobian);
      for (int column = 0; column < 4; column++) {
        double[] slope = accelerationSlope(motion, state, column);
        double scale = 1 + Math.abs(slope[0]) + Math.abs(slope[1]);
        assertEquals(slope[0], jacobian[column], 2e-8 * scale);
        assertEquals(slope[1], jacobian[4 + column], 2e-8 * scale);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("motions")
  void potentialDerivativesAreThoseOfThePotential(Motion motion) {
    Random random = new Random(8);
    double[] all = new double[6];
    double[] near = new double[6];
    for (int trial = 0; trial < 40; trial++) {
      double[] q = state(random, motion);
      motion.potentialDerivatives(q[0], q[1], all);
      assertEquals(motion.potential(q[0], q[1]), all[0], 1e-15 * (1 + Math.abs(all[0])));
      for (int axis = 0; axis < 2; axis++) {
        double[] slopes = new double[6];
        for (int k = -2; k <= 2; k++) {
          double[] moved = q.clone();
          moved[axis] += k * STEP;
          motion.potentialDerivatives(moved[0], moved[1], near);
          for (int i = 0; i < 6; i++) {
            slopes[i] += WEIGHTS[k + 2] * near[i] / STEP;
          }
        }
        assertEquals(slopes[0], all[1 + axis], 2e-10 * (1 + Math.abs(slopes[0])));
        assertEquals(slopes[1], all[3 + axis], 2e-9 * (1 + Math.abs(slopes[1])));
        assertEquals(slopes[2], all[4 + axis], 2e-9 * (1 + Math.abs(slopes[2])));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("motions")
  void restingBobIsDrivenByThePotentialAlone(Motion motion) {
    double[] a = new double[3];
    double[] v = new double[6];
    double[] m = new double[2];
    motion.acceleration(0.21, -0.13, 0, 0, a);
    motion.potentialDerivatives(0.21, -0.13, v);
    motion.inertia(0.21, -0.13, m);
    assertEquals(-v[1], m[0] * a[0], 1e-13);
    assertEquals(-v[2], m[1] * a[1], 1e-13);
  }

  private static final double STEP = 2e-4;
  private static final double[] WEIGHTS = {1.0 / 12, -2.0 / 3, 0, 2.0 / 3, -1.0 / 12};

  private static double[] accelerationSlope(Motion motion, double[] state, int column) {
    double[] slope = new double[2];
    double[] a = new double[3];
    for (int k = -2; k <= 2; k++) {
      double[] s = state.clone();
      s[column] += k * STEP;
      motion.acceleration(s[0], s[1], s[2], s[3], a);
      slope[0] += WEIGHTS[k + 2] * a[0] / STEP;
      slope[1] += WEIGHTS[k + 2] * a[1] / STEP;
    }
    return slope;
  }

  private static double[] state(Random random, Motion motion) {
    double size = Math.min(0.9, motion.reach());
    return new double[] {
      size * (2 * random.nextDouble() - 1),
      size * (2 * random.nextDouble() - 1),
      0.2 + 2 * random.nextDouble(),
      -0.2 - 2 * random.nextDouble()
    };
  }
}
