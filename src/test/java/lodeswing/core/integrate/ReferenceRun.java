package lodeswing.core.integrate;

import lodeswing.core.motion.Motion;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.GraggBulirschStoerIntegrator;

/** A motion integrated by Commons Math's extrapolation method at 1e-14: the outside truth. */
final class ReferenceRun {

  private ReferenceRun() {}

  static double[] of(Motion motion, double[] state, double time) {
    double[] end = state.clone();
    new GraggBulirschStoerIntegrator(1e-14, 10, 1e-14, 1e-14)
        .integrate(equations(motion), 0, state.clone(), time, end);
    return end;
  }

  static FirstOrderDifferentialEquations equations(Motion motion) {
    double[] out = new double[3];
    return new FirstOrderDifferentialEquations() {
      @Override
      public int getDimension() {
        return 4;
      }

      @Override
      public void computeDerivatives(double t, double[] y, double[] d) {
        motion.acceleration(y[0], y[1], y[2], y[3], out);
        d[0] = y[2];
        d[1] = y[3];
        d[2] = out[0];
        d[3] = out[1];
      }
    };
  }
}
