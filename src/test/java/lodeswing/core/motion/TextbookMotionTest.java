package lodeswing.core.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lodeswing.core.rig.TextbookLayout;
import org.junit.jupiter.api.Test;

/** The plane idealisation against closed forms. */
class TextbookMotionTest {

  /**
   * x = e^(-k t) (cos(w t) + k/w sin(w t)), k = drag/2: Landau & Lifshitz, Mechanics, section 25.
   */
  @Test
  void withoutMagnetsItIsTheDampedOscillator() {
    Motion motion = new TextbookMotion(new TextbookLayout(0.8, 0.2, 0.3, List.of()));
    double[] end = Runs.end(MotionSystem.of(motion), new double[] {1, -2, 0, 0}, 7);
    double w = Math.sqrt(0.64 - 0.01);
    double expected = Math.exp(-0.7) * (Math.cos(7 * w) + 0.1 / w * Math.sin(7 * w));
    assertEquals(expected, end[0], 1e-12);
    assertEquals(-2 * expected, end[1], 1e-12);
    assertEquals(0.2, motion.uniformLoss().orElseThrow());
  }

  /**
   * Force k rho / (rho^2 + h^2)^(3/2) is greatest at rho = h/sqrt(2), where it is 2k/(3^(3/2) h^2).
   */
  @Test
  void singleAttractorPullsHardestAtHeightOverRootTwo() {
    TextbookLayout layout =
        new TextbookLayout(0, 0, 0.3, List.of(new TextbookLayout.Attractor(0, 0, 2)));
    double[] f = new double[3];
    new TextbookMotion(layout).force(0.3 / Math.sqrt(2), 0, f);
    assertEquals(-2 * 2 / (3 * Math.sqrt(3) * 0.09), f[0], 1e-13);
    assertEquals(0, f[1]);
  }

  @Test
  void forcesPullInwardsEverywhereBeyondTheReach() {
    TextbookLayout layout =
        new TextbookLayout(
            0.2, 0, 0.3, List.of(new TextbookLayout.Attractor(1, 0, -5), attractor(-1, -3)));
    TextbookMotion motion = new TextbookMotion(layout);
    double[] f = new double[3];
    for (double turn = 0; turn < 6.3; turn += 0.1) {
      double x = motion.reach() * Math.cos(turn);
      double y = motion.reach() * Math.sin(turn);
      motion.force(x, y, f);
      assertTrue(f[0] * x + f[1] * y < 0);
    }
    assertTrue(motion.reach() >= 4 && motion.limits().isEmpty());
  }

  private static TextbookLayout.Attractor attractor(double x, double strength) {
    return new TextbookLayout.Attractor(x, 0, strength);
  }
}
