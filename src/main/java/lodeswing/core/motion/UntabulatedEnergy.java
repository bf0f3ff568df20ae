package lodeswing.core.motion;

import java.util.Arrays;

/**
 * The energy where a table has no cell: the exact one, counted, and 0 where nothing matters, since
 * there, deep within a magnet, the exact one is as costly as it is void.
 *
 * @param exact the exact energy
 * @param region where it matters
 * @param budget what its work is counted in
 */
record UntabulatedEnergy(AngleEnergy exact, Region region, WorkBudget budget)
    implements AngleEnergy {

  /** Slopes that the exact second derivatives take. */
  private static final int CURVATURE = 9;

  @Override
  public double value(double beta, double alpha) {
    if (!region.matters(beta, alpha, 0)) {
      return 0;
    }
    budget.spendAt(beta, alpha, 1);
    return exact.value(beta, alpha);
  }

  @Override
  public void gradient(double beta, double alpha, double[] out) {
    if (region.matters(beta, alpha, 0)) {
      budget.spendAt(beta, alpha, WorkBudget.SLOPES);
      exact.gradient(beta, alpha, out);
    } else {
      Arrays.fill(out, 0, 3, 0);
    }
  }

  @Override
  public void curvature(double beta, double alpha, double[] out) {
    if (region.matters(beta, alpha, 0)) {
      budget.spendAt(beta, alpha, CURVATURE * WorkBudget.SLOPES);
      exact.curvature(beta, alpha, out);
    } else {
      Arrays.fill(out, 0, 6, 0);
    }
  }
}
