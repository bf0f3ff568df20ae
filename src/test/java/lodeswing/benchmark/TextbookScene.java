package lodeswing.benchmark;

import java.util.List;
import java.util.Random;
import lodeswing.core.motion.TextbookMotion;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.rig.TextbookLayout.Attractor;

/** Three attractors on a triangle, releases on a grid, and a rule to stop when sealed. */
final class TextbookScene {

  /** Longest run of a release. */
  static final double DURATION = 200;

  private static final int SIDE = 32;
  private static final double MARGIN = 1e-4;
  private static final double R = 1 / Math.sqrt(3);

  final TextbookMotion motion =
      new TextbookMotion(
          new TextbookLayout(
              0.5,
              0.2,
              0.3,
              List.of(
                  new Attractor(R, 0, 1),
                  new Attractor(-R / 2, 0.5, 1),
                  new Attractor(-R / 2, -0.5, 1))));

  final double[][] releases = grid();
  final Contender.Rule sealed;

  TextbookScene() {
    double pass = pass() - MARGIN;
    sealed = s -> motion.energy(s[0], s[1], s[2], s[3]) < pass;
  }

  /** By symmetry every way from well to well crosses one of three rays; the lowest point of one. */
  private double pass() {
    double least = Double.POSITIVE_INFINITY;
    for (double x = 0; x > -3; x -= 1e-4) {
      least = Math.min(least, motion.potential(x, 0));
    }
    return least;
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

  /** Nearest attractor, which is the well once sealed. */
  static int label(double[] state) {
    double angle = Math.atan2(state[1], state[0]);
    return Math.floorMod((int) Math.round(angle / (2 * Math.PI / 3)), 3);
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
