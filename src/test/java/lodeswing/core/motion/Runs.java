package lodeswing.core.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.nonstiff.GraggBulirschStoerIntegrator;

/** Time stepping by Commons Math for the tests of this package. */
final class Runs {

  private Runs() {}

  /** The state after a time, by extrapolation at a tolerance of 1e-13. */
  static double[] end(FirstOrderDifferentialEquations system, double[] start, double time) {
    double[] y = start.clone();
    new GraggBulirschStoerIntegrator(1e-9, 0.05, 1e-13, 1e-13).integrate(system, 0, y, time, y);
    return y;
  }

  /** Times and states {t, state...} at the first falling zeros of a function. */
  static List<double[]> fallingZeros(
      Motion motion, double[] start, ToDoubleFunction<double[]> function, int count) {
    List<double[]> found = new ArrayList<>();
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(1e-9, 0.05, 1e-13, 1e-13);
    integrator.addEventHandler(
        new EventHandler() {
          @Override
          public void init(double t0, double[] y0, double t) {}

          @Override
          public double g(double t, double[] y) {
            return function.applyAsDouble(y);
          }

          @Override
          public Action eventOccurred(double t, double[] y, boolean increasing) {
            if (!increasing && t > 1e-3) {
              found.add(new double[] {t, y[0], y[1], y[2], y[3]});
            }
            return found.size() >= count ? Action.STOP : Action.CONTINUE;
          }

          @Override
          public void resetState(double t, double[] y) {}
        },
        0.02,
        1e-13,
        100);
    integrator.integrate(MotionSystem.of(motion), 0, start.clone(), 1000, new double[4]);
    return found;
  }
}
