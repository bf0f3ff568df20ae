package lodeswing.core.motion;

import java.util.Arrays;

/** The energy of a bob over a bare plate: zero everywhere. */
final class NoEnergy implements AngleEnergy {

  @Override
  public void gradient(double beta, double alpha, double[] out) {
    Arrays.fill(out, 0, 3, 0);
  }

  @Override
  public void curvature(double beta, double alpha, double[] out) {
    Arrays.fill(out, 0, 6, 0);
  }

  @Override
  public double value(double beta, double alpha) {
    return 0;
  }
}
