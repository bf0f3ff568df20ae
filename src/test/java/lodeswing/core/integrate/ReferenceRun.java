package lodeswing.core.integrate;

import lodeswing.core.motion.Motion;
import lodeswing.core.motion.MotionSystem;
import org.apache.commons.math3.ode.nonstiff.GraggBulirschStoerIntegrator;

/** A motion integrated by Commons Math's extrapolation method at 1e-14: the outside truth. */
final class ReferenceRun {

  private ReferenceRun() {}

  static double[] of(Motion motion, double[] state, double time) {
    double[] end = state.clone();
    new GraggBulirschStoerIntegrator(1e-14, 10, 1e-14, 1e-14)
        .integrate(MotionSystem.of(motion), 0, state.clone(), time, end);
    return end;
  }
}
