package lodeswing.core.motion;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/** A motion as the first-order system that Commons Math integrates. For one thread. */
public final class MotionSystem implements FirstOrderDifferentialEquations {

  private final Motion motion;
  private final double[] out = new double[3];

  private MotionSystem(Motion motion) {
    this.motion = motion;
  }

  /** The system of a motion. */
  public static MotionSystem of(Motion motion) {
    return new MotionSystem(motion);
  }

  @Override
  public int getDimension() {
    return 4;
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] derivatives) {
    motion.acceleration(y[0], y[1], y[2], y[3], out);
    derivatives[0] = y[2];
    derivatives[1] = y[3];
    derivatives[2] = out[0];
    derivatives[3] = out[1];
  }
}
