package lodeswing.core.rest;

import java.util.Optional;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;

/**
 * The rest point below one place: where a bob that creeps downhill from there comes to rest, found
 * without looking for all the others.
 *
 * <p>Newton's steps where the potential curves upwards both ways, steps down the slope elsewhere,
 * none longer than the detail of the potential, each taken only where the potential falls. For one
 * thread.
 */
public final class WellProbe {

  private static final int MOST_STEPS = 200;
  private static final double LONGEST_SHARE = 0.25;
  private static final double ARRIVED = 1e-7;

  private final Motion motion;
  private final double longest;

  /**
   * A probe.
   *
   * @param motion what moves
   * @param detail shortest change of coordinates over which the potential changes
   */
  public WellProbe(Motion motion, double detail) {
    this.motion = motion;
    this.longest = LONGEST_SHARE * detail;
  }

  /**
   * The rest point.
   *
   * @param from the two coordinates begun at
   * @return its two coordinates; empty where the way down ends at a border of the model
   */
  public Optional<double[]> below(double[] from) {
    double q0 = from[0];
    double q1 = from[1];
    double[] here = new double[6];
    double[] there = new double[6];
    motion.potentialDerivatives(q0, q1, here);
    double cap = longest;
    for (int n = 0; n < MOST_STEPS; n++) {
      double[] step = step(here, cap);
      double length = Math.hypot(step[0], step[1]);
      if (length < ARRIVED * longest) {
        return settled(q0, q1, here);
      }
      motion.potentialDerivatives(q0 + step[0], q1 + step[1], there);
      if (there[0] <= here[0] && inside(q0 + step[0], q1 + step[1])) {
        q0 += step[0];
        q1 += step[1];
        System.arraycopy(there, 0, here, 0, 6);
        cap = Math.min(longest, 2 * cap);
      } else {
        cap = length / 2;
      }
    }
    return settled(q0, q1, here);
  }

  private static double[] step(double[] d, double cap) {
    double determinant = d[3] * d[5] - d[4] * d[4];
    double s0 = -d[1];
    double s1 = -d[2];
    boolean bowl = d[3] > 0 && determinant > 0;
    if (bowl) {
      s0 = -(d[5] * d[1] - d[4] * d[2]) / determinant;
      s1 = -(d[3] * d[2] - d[4] * d[1]) / determinant;
    }
    double length = Math.hypot(s0, s1);
    if (length > 0 && (!bowl || length > cap)) {
      s0 *= cap / length;
      s1 *= cap / length;
    }
    return new double[] {s0, s1};
  }

  private boolean inside(double q0, double q1) {
    for (Limit limit : motion.limits()) {
      if (!(limit.leastMargin(q0, q1) > 0)) {
        return false;
      }
    }
    return true;
  }

  private Optional<double[]> settled(double q0, double q1, double[] d) {
    boolean bowl = d[3] > 0 && d[3] * d[5] - d[4] * d[4] > 0;
    return bowl && inside(q0, q1) ? Optional.of(new double[] {q0, q1}) : Optional.empty();
  }
}
