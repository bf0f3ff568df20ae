package lodeswing.core.integrate;

import lodeswing.core.motion.Motion;

/**
 * Adaptive integration of one motion, one state at a time.
 *
 * <p>Where a uniform loss is the only dependence on speed it uses the Nystrom pair 8(6), else
 * collocation of order 14 at Lobatto's points; both under proportional-integral control. Immutable
 * and safe for several threads; an integration allocates a fixed small workspace and nothing per
 * step.
 */
public final class ScalarIntegrator {

  private final Motion motion;
  private final boolean nystrom;

  private ScalarIntegrator(Motion motion, boolean nystrom) {
    this.motion = motion;
    this.nystrom = nystrom;
  }

  /** The integrator that suits a motion. */
  public static ScalarIntegrator forMotion(Motion motion) {
    return new ScalarIntegrator(motion, motion.uniformLoss().isPresent());
  }

  /** Collocation, whatever the motion: for comparisons. */
  public static ScalarIntegrator general(Motion motion) {
    return new ScalarIntegrator(motion, false);
  }

  /**
   * Integrates from time 0 under {@link StepLimits#DEFAULT}.
   *
   * @see #integrate(double[], double, Tolerance, StepLimits, StepObserver)
   */
  public Arrival integrate(
      double[] state, double endTime, Tolerance tolerance, StepObserver observer) {
    return integrate(state, endTime, tolerance, StepLimits.DEFAULT, observer);
  }

  /**
   * Integrates from time 0 until the end time or until the observer stops.
   *
   * @param state {q0, q1, v0, v1} at time 0; left as it is
   * @param endTime end, 0 or more, in the motion's time unit
   * @param tolerance error allowed for a step
   * @param limits bounds on the work
   * @param observer sees each accepted step
   * @throws IntegrationFailure where numbers or limits run out
   */
  public Arrival integrate(
      double[] state,
      double endTime,
      Tolerance tolerance,
      StepLimits limits,
      StepObserver observer) {
    if (!(endTime >= 0 && endTime < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("end time not a finite number from 0: " + endTime);
    }
    return new Passage(stepper(), tolerance, limits).run(state, endTime, observer);
  }

  private Stepper stepper() {
    return nystrom ? new NystromPair(motion) : new LobattoCollocation(motion);
  }
}
