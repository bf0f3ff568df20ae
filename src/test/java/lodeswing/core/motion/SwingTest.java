package lodeswing.core.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;
import lodeswing.core.suspension.BarPart;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Suspension;
import org.junit.jupiter.api.Test;

/** Swings without magnets against closed forms. */
class SwingTest {

  private static final double G = Rigs.GRAVITY;

  private static BenchMotion free(Suspension suspension) {
    return BenchMotion.withoutMagnets(Rigs.layout(suspension, LossLaw.none()));
  }

  /**
   * T = 4/omega K(sin(theta/2)) with K = pi/(2 agm(1, cos(theta/2))): NIST Digital Library of
   * Mathematical Functions, 22.19.1 and 19.8.5.
   */
  @Test
  void periodAtLargeAmplitudeIsTheCompleteEllipticIntegral() {
    for (Suspension suspension : Rigs.all()) {
      BenchMotion motion = free(suspension);
      for (double amplitude : new double[] {0.1, 0.5, 1.0}) {
        double expected = 2 * Math.PI / motion.naturalRate() / agm(1, Math.cos(amplitude / 2));
        double[] start = {amplitude, 0, 0, 0};
        double period = Runs.fallingZeros(motion, start, y -> y[2], 1).get(0)[0];
        assertEquals(expected, period, 1e-10 * expected);
      }
    }
  }

  @Test
  void swingInYOfTheYCordHasTheWholeLengthsPeriod() {
    BenchMotion motion = free(Rigs.YOKE);
    double amplitude = 0.7;
    double[] start = {0, amplitude, 0, 0};
    double expected =
        2 * Math.PI * Math.sqrt(0.5 / G) / agm(1, Math.cos(amplitude / 2)); // 0.15 + 0.35 m
    double period = Runs.fallingZeros(motion, start, y -> y[3], 1).get(0)[0];
    assertEquals(expected, period, 1e-10 * expected);
    assertEquals(Math.sqrt(G / 0.35), motion.naturalRate(), 1e-14);
    assertEquals(Math.sqrt(G / 0.5), Rigs.YOKE.body().rateY(G), 1e-14);
  }

  /** T = 2 pi sqrt(2 L/(3 g)), a thin rod on its end: any handbook, e.g. Meriam & Kraige. */
  @Test
  void compoundBarSwingsLikeAThinRodOnItsEnd() {
    double length = 0.6;
    BarPart rod = new BarPart(0.2, length / 2, 0.2 * length * length / 12, 0, length, 0);
    BenchMotion motion = free(new HookedBar(0, List.of(rod), length));
    double expected = 2 * Math.PI * Math.sqrt(2 * length / (3 * G));
    assertEquals(expected, 2 * Math.PI / motion.naturalRate(), 1e-14);
    double[] start = {0, 1e-4, 0, 0};
    double period = Runs.fallingZeros(motion, start, y -> y[3], 1).get(0)[0];
    assertEquals(expected, period, 1e-8 * expected);
  }

  @Test
  void amplitudeHalvesInTheCountedSwings() {
    for (Suspension suspension : Rigs.all()) {
      LossLaw loss = LossLaw.fromSwingsToHalf(12, suspension.body(), G);
      BenchMotion motion = BenchMotion.withoutMagnets(Rigs.layout(suspension, loss));
      double[] start = {0.001, 0, 0, 0};
      double[] last = Runs.fallingZeros(motion, start, y -> y[2], 12).get(11);
      assertEquals(0.5, last[1] / 0.001, 5e-5);
    }
  }

  /**
   * Q = 2 pi energy / energy lost a swing, for Q large: Landau & Lifshitz, Mechanics, section 25.
   */
  @Test
  void qualityFactorIsTheShareOfEnergyKeptPerRadian() {
    double quality = 300;
    LossLaw loss = LossLaw.fromQualityFactor(quality, Rigs.CORD.body(), G);
    BenchMotion motion = BenchMotion.withoutMagnets(Rigs.layout(Rigs.CORD, loss));
    double[] start = {0.001, 0, 0, 0};
    double[] last = Runs.fallingZeros(motion, start, y -> y[2], 10).get(9);
    double kept = motion.potential(last[1], 0) / motion.potential(0.001, 0);
    assertEquals(Math.exp(-2 * Math.PI * 10 / quality), kept, 1e-5);
  }

  @Test
  void sphericalPendulumKeepsEnergyAndVerticalAngularMomentum() {
    BenchMotion motion = free(Rigs.CORD);
    double[] state = motion.toState(new Release(0.2, -0.05, 0.3, 0.8)).orElseThrow();
    double energy = motion.energy(state[0], state[1], state[2], state[3]);
    double spin = spin(motion, state);
    double[] end = Runs.end(MotionSystem.of(motion), state, 20);
    assertEquals(energy, motion.energy(end[0], end[1], end[2], end[3]), 1e-11 * energy);
    assertEquals(spin, spin(motion, end), 1e-11 * Math.abs(spin));
  }

  private static double spin(Motion motion, double[] state) {
    double[] plan = new double[4];
    motion.toPlan(state, plan);
    return plan[0] * plan[3] - plan[1] * plan[2];
  }

  /**
   * A small ellipse with half-axes a and b turns at 3/8 omega a b / l^2, the way the bob goes
   * round: G. B. Airy, Mon. Not. R. Astron. Soc. 11 (1851) 160. The next order is (a/l)^2 smaller.
   */
  @Test
  void smallEllipseTurnsAtAirysRate() {
    BenchMotion motion = free(Rigs.CORD);
    double length = 0.42;
    double a = 0.02;
    double b = 0.008;
    double omega = motion.naturalRate();
    double[] start = motion.toState(new Release(a, 0, 0, omega * b)).orElseThrow();
    List<double[]> far = Runs.fallingZeros(motion, start, y -> radialSpeed(motion, y), 20);
    double[] last = far.get(19); // two farthest points a swing: ten swings
    double[] plan = new double[4];
    motion.toPlan(new double[] {last[1], last[2], last[3], last[4]}, plan);
    double rate = Math.atan2(plan[1], plan[0]) / last[0];
    double airy = 3.0 / 8 * omega * a * b / (length * length);
    assertEquals(airy, rate, 5 * a * a / (length * length) * airy);
  }

  private static double radialSpeed(Motion motion, double[] state) {
    double[] plan = new double[4];
    motion.toPlan(state, plan);
    return plan[0] * plan[2] + plan[1] * plan[3];
  }

  @Test
  void releaseComesBackFromItsState() {
    for (Suspension suspension : Rigs.all()) {
      BenchMotion motion = free(suspension);
      double[] plan = new double[4];
      motion.toPlan(motion.toState(new Release(0.11, -0.17, 0.4, 0.3)).orElseThrow(), plan);
      assertEquals(0.11, plan[0], 1e-16);
      assertEquals(-0.17, plan[1], 1e-15);
      assertEquals(0.4, plan[2], 1e-15);
      assertEquals(0.3, plan[3], 1e-15);
    }
  }

  @Test
  void placesBeyondSixtyDegreesHaveNoState() {
    BenchLayout layout = Rigs.layout(Rigs.CORD, LossLaw.none());
    BenchMotion motion = BenchMotion.withoutMagnets(layout);
    double edge = 0.42 * Math.sin(Math.PI / 3);
    assertEquals(true, motion.toState(new Release(edge - 1e-6, 0, 0, 0)).isPresent());
    assertEquals(true, motion.toState(new Release(edge + 1e-6, 0, 0, 0)).isEmpty());
    assertEquals(true, motion.toState(new Release(0, edge + 1e-6, 0, 0)).isEmpty());
    assertEquals(true, motion.toState(new Release(0.5, 0, 0, 0)).isEmpty());
    assertEquals(true, motion.toState(new Release(Double.NaN, 0, 0, 0)).isEmpty());
  }

  private static double agm(double a, double b) {
    double x = a;
    double y = b;
    for (int i = 0; i < 8; i++) {
      double mean = (x + y) / 2;
      y = Math.sqrt(x * y);
      x = mean;
    }
    return x;
  }
}
