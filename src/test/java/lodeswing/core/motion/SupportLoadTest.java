package lodeswing.core.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lodeswing.core.loss.LossLaw;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.Suspension;
import org.junit.jupiter.api.Test;

/** What the support carries, against the margins at which it goes slack. */
class SupportLoadTest {

  private static BenchMotion motion(Suspension suspension) {
    BenchLayout layout = Rigs.layout(suspension, LossLaw.none());
    return Rigs.over(layout, Rigs.attractor(layout));
  }

  private static Limit slack(BenchMotion motion) {
    return motion.limits().stream()
        .filter(limit -> limit.kind() == Limit.Kind.SUSPENSION_SLACK)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void loadAtRestIsTheMarginOfSlack() {
    for (Suspension suspension : new Suspension[] {Rigs.CORD, Rigs.BAR}) {
      BenchMotion motion = motion(suspension);
      for (double[] q : new double[][] {{0, 0}, {0.1, -0.2}, {-0.3, 0.15}}) {
        double margin = slack(motion).margin(new double[] {q[0], q[1], 0, 0});
        assertEquals(margin, motion.supportLoad().still(q[0], q[1]), 1e-12);
      }
    }
  }

  /** Huygens: a cord at the bottom of a swing pulls by 2 E/l more than at rest there. */
  @Test
  void speedOfACordAddsTwiceItsEnergyOverItsLength() {
    double joule = motion(Rigs.CORD).supportLoad().perJoule(0);
    assertEquals(2 / Rigs.CORD.length(), joule, 1e-12);
  }

  @Test
  void noSpeedAddsMoreThanIsTold() {
    for (Suspension suspension : Rigs.all()) {
      BenchMotion motion = motion(suspension);
      SupportLoad load = motion.supportLoad();
      for (int k = 0; k < 200; k++) {
        double[] state = {
          0.3 * Math.sin(k), 0.3 * Math.cos(1.7 * k), 2 * Math.sin(2.3 * k), 2 * Math.cos(3.1 * k)
        };
        double kinetic = motion.kinetic(state[0], state[1], state[2], state[3]);
        double most = load.still(state[0], state[1]) + load.perJoule(state[0]) * kinetic;
        assertTrue(slack(motion).margin(state) <= most + 1e-12, suspension + " " + k);
      }
    }
  }
}
