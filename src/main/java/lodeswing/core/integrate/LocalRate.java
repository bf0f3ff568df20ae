package lodeswing.core.integrate;

import lodeswing.core.motion.Motion;

/** How fast the motion about a path can change: for steps of the variational equation. */
public final class LocalRate {

  private final Motion motion;
  private final double[] jacobian = new double[8];

  /** Rates of a motion. */
  public LocalRate(Motion motion) {
    this.motion = motion;
  }

  /** Bound of the angular rate of small swings about a state, at least the natural rate. */
  public double at(double[] state) {
    motion.jacobian(state[0], state[1], state[2], state[3], jacobian);
    double fastest =
        Math.max(
            Math.abs(jacobian[0]) + Math.abs(jacobian[1]),
            Math.abs(jacobian[4]) + Math.abs(jacobian[5]));
    return Math.max(motion.naturalRate(), Math.sqrt(fastest));
  }
}
