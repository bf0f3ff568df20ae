package lodeswing.core.chance;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Normal in x and in y, alike and apart.
 *
 * @param deviation standard deviation along either axis, 0 or above
 */
public record NormalSpread(double deviation) implements Spread {

  private static final NormalDistribution STANDARD = new NormalDistribution(null, 0, 1);
  private static final double FAR = 4;

  @Override
  public boolean place(double u, double v, double[] place) {
    place[0] = deviation * quantile(u);
    place[1] = deviation * quantile(v);
    return true;
  }

  /** The standard normal quantile of a number between 0 and 1. */
  static double quantile(double u) {
    return STANDARD.inverseCumulativeProbability(u);
  }

  @Override
  public double size() {
    return deviation;
  }

  @Override
  public double reach() {
    return FAR * deviation;
  }
}
