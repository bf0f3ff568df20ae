package lodeswing.core.motion;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.Suspension;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Power of every loss at random states, alone and together. */
class EnergyNeverRisesProperties {

  @Property(tries = 800)
  void energyNeverRises(
      @ForAll @IntRange(max = 2) int kind,
      @ForAll @IntRange(max = 3) int which,
      @ForAll @DoubleRange(min = -1, max = 1) double beta,
      @ForAll @DoubleRange(min = -1, max = 1) double alpha,
      @ForAll @DoubleRange(min = -8, max = 8) double v0,
      @ForAll @DoubleRange(min = -8, max = 8) double v1) {
    Suspension suspension = Rigs.all().get(kind);
    BenchLayout layout = Rigs.layout(suspension, loss(suspension, which));
    BenchMotion motion = Rigs.over(layout, Rigs.attractor(layout));
    double scale = motion.kinetic(beta, alpha, v0, v1) + 1e-3;
    assertTrue(power(motion, beta, alpha, v0, v1) <= 1e-10 * scale);
  }

  @Property(tries = 300)
  void energyStaysWithoutLoss(
      @ForAll @IntRange(max = 2) int kind,
      @ForAll @DoubleRange(min = -1, max = 1) double beta,
      @ForAll @DoubleRange(min = -1, max = 1) double alpha,
      @ForAll @DoubleRange(min = -8, max = 8) double v0,
      @ForAll @DoubleRange(min = -8, max = 8) double v1) {
    BenchLayout layout = Rigs.layout(Rigs.all().get(kind), LossLaw.none());
    BenchMotion motion = Rigs.over(layout, Rigs.attractor(layout));
    double scale = motion.kinetic(beta, alpha, v0, v1) + 1e-3;
    assertTrue(Math.abs(power(motion, beta, alpha, v0, v1)) <= 1e-10 * scale);
  }

  private static LossLaw loss(Suspension suspension, int which) {
    LossLaw all = Rigs.everyLoss(suspension);
    return switch (which) {
      case 0 -> new LossLaw(all.linear(), List.of(), 0);
      case 1 -> new LossLaw(0, all.drag(), 0);
      case 2 -> new LossLaw(0, List.of(), all.pivotTorque());
      default -> all;
    };
  }

  /** dE/dt = m0 v0 a0 + m1 v1 a1 + v0 dm1/dbeta v1^2/2 + v . grad V. */
  private static double power(BenchMotion motion, double b, double a, double v0, double v1) {
    double[] acceleration = new double[3];
    double[] v = new double[6];
    double[] m = new double[2];
    motion.acceleration(b, a, v0, v1, acceleration);
    motion.potentialDerivatives(b, a, v);
    motion.inertia(b, a, m);
    double step = 1e-3;
    double slope = 0;
    double[] weights = {-1.0 / 60, 3.0 / 20, -3.0 / 4, 0, 3.0 / 4, -3.0 / 20, 1.0 / 60};
    double[] near = new double[2];
    for (int k = -3; k <= 3; k++) {
      motion.inertia(b + k * step, a, near);
      slope += weights[k + 3] * near[1] / step;
    }
    return m[0] * v0 * acceleration[0]
        + m[1] * v1 * acceleration[1]
        + v0 * slope * v1 * v1 / 2
        + v0 * v[1]
        + v1 * v[2];
  }
}
