package lodeswing.benchmark;

import java.util.List;
import java.util.Random;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Motion;
import lodeswing.core.rest.SealRule;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.rig.TextbookLayout.Attractor;

/** Three attractors on a triangle, releases on a grid, and the service's rule for a sealed end. */
final class TextbookScene {

  /** Longest run of a release. */
  static final double DURATION = 200;

  private static final int SIDE = 32;
  private static final double R = 1 / Math.sqrt(3);

  final Landscape landscape =
      Landscape.of(
          new TextbookLayout(
              0.5,
              0.2,
              0.3,
              List.of(
                  new Attractor(R, 0, 1),
                  new Attractor(-R / 2, 0.5, 1),
                  new Attractor(-R / 2, -0.5, 1))));

  final Motion motion = landscape.motion();
  final double[][] releases = grid();
  final Contender.Rule sealed = state -> label(state) != SealRule.NONE;

  /** The well that a state can no longer leave, or {@link SealRule#NONE}. */
  int label(double[] s) {
    return landscape.sealRule().sealedWell(s[0], s[1], motion.energy(s[0], s[1], s[2], s[3]));
  }

  private static double[][] grid() {
    double[][] releases = new double[SIDE * SIDE][];
    for (int i = 0; i < SIDE; i++) {
      for (int j = 0; j < SIDE; j++) {
        double x = -2 + (i + 0.5) * 4 / SIDE;
        double y = -2 + (j + 0.5) * 4 / SIDE;
        releases[i * SIDE + j] = new double[] {x, y, 0, 0};
      }
    }
    return releases;
  }

  /** Some releases anywhere on the grid's square, always the same. */
  static double[][] sample(int count, double halfWidth) {
    Random random = new Random(5);
    double[][] sample = new double[count][];
    for (int i = 0; i < count; i++) {
      double x = halfWidth * (2 * random.nextDouble() - 1);
      double y = halfWidth * (2 * random.nextDouble() - 1);
      sample[i] = new double[] {x, y, 0, 0};
    }
    return sample;
  }
}
