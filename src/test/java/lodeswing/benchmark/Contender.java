package lodeswing.benchmark;

import java.util.function.DoubleFunction;
import lodeswing.core.integrate.Arrival;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.StepObserver;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.motion.Motion;
import org.apache.commons.math3.ode.AbstractIntegrator;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStepHandler;

/**
 * An integrator in the comparison: every one runs the same force code and the same rule to stop.
 *
 * <p>The rule is looked at once a step, on the end state. Commons Math shows a step's end through
 * its interpolator, which in DormandPrince853 costs three evaluations; so the state of the last
 * evaluation is looked at instead, which after an accepted step is the end state (first same as
 * last). Both libraries are stopped by an exception without a stack trace, not by their event
 * machinery.
 */
abstract class Contender {

  /** Says when a release may stop. */
  interface Rule {
    boolean isOver(double[] state);
  }

  /** A release runs to its end time. */
  static final Rule NEVER = state -> false;

  private static final double SMALLEST_STEP = 1e-15;
  private static final double LARGEST_STEP = 10;

  long evaluations;

  /** End state of a release. */
  abstract double[] run(double[] start, double duration, double tolerance, Rule rule);

  /**
   * The contender of a name.
   *
   * @param name "ours", "ours general", or "CM" or "HP" and a scheme: DP853, DP54, HH54, GBS, AB
   *     and the number of steps, AM and the number of steps
   */
  static Contender of(String name, Motion motion) {
    if (name.startsWith("ours")) {
      return new Ours(
          name.equals("ours")
              ? ScalarIntegrator.forMotion(motion)
              : ScalarIntegrator.general(motion));
    }
    String scheme = name.substring(3);
    return name.startsWith("CM")
        ? new Commons(motion, t -> commons(scheme, t))
        : new Hipparchus(motion, t -> hipparchus(scheme, t));
  }

  private static AbstractIntegrator commons(String scheme, double t) {
    double least = SMALLEST_STEP;
    double most = LARGEST_STEP;
    int steps = Character.digit(scheme.charAt(scheme.length() - 1), 10);
    return switch (scheme) {
      case "DP853" ->
          new org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator(least, most, t, t);
      case "DP54" ->
          new org.apache.commons.math3.ode.nonstiff.DormandPrince54Integrator(least, most, t, t);
      case "HH54" ->
          new org.apache.commons.math3.ode.nonstiff.HighamHall54Integrator(least, most, t, t);
      case "GBS" ->
          new org.apache.commons.math3.ode.nonstiff.GraggBulirschStoerIntegrator(least, most, t, t);
      default ->
          scheme.startsWith("AB")
              ? new org.apache.commons.math3.ode.nonstiff.AdamsBashforthIntegrator(
                  steps, least, most, t, t)
              : new org.apache.commons.math3.ode.nonstiff.AdamsMoultonIntegrator(
                  steps, least, most, t, t);
    };
  }

  private static org.hipparchus.ode.AbstractIntegrator hipparchus(String scheme, double t) {
    double least = SMALLEST_STEP;
    double most = LARGEST_STEP;
    int steps = Character.digit(scheme.charAt(scheme.length() - 1), 10);
    return switch (scheme) {
      case "DP853" -> new org.hipparchus.ode.nonstiff.DormandPrince853Integrator(least, most, t, t);
      case "DP54" -> new org.hipparchus.ode.nonstiff.DormandPrince54Integrator(least, most, t, t);
      case "HH54" -> new org.hipparchus.ode.nonstiff.HighamHall54Integrator(least, most, t, t);
      case "GBS" -> new org.hipparchus.ode.nonstiff.GraggBulirschStoerIntegrator(least, most, t, t);
      default ->
          scheme.startsWith("AB")
              ? new org.hipparchus.ode.nonstiff.AdamsBashforthIntegrator(steps, least, most, t, t)
              : new org.hipparchus.ode.nonstiff.AdamsMoultonIntegrator(steps, least, most, t, t);
    };
  }

  /** Ends an integration of theirs. */
  private static final class Over extends RuntimeException {
    private static final long serialVersionUID = 1;

    Over() {
      super("over", null, false, false);
    }
  }

  private static final class Ours extends Contender {
    private final ScalarIntegrator integrator;
    private final double[] state = new double[4];

    Ours(ScalarIntegrator integrator) {
      this.integrator = integrator;
    }

    @Override
    double[] run(double[] start, double duration, double tolerance, Rule rule) {
      StepObserver observer =
          step -> {
            step.endState(state);
            return !rule.isOver(state);
          };
      Arrival arrival = integrator.integrate(start, duration, Tolerance.of(tolerance), observer);
      evaluations += arrival.work().evaluations();
      return arrival.state();
    }
  }

  private static final class Commons extends Contender
      implements FirstOrderDifferentialEquations, StepHandler {
    private final Motion motion;
    private final DoubleFunction<AbstractIntegrator> make;
    private final double[] last = new double[4];
    private final double[] out = new double[3];
    private Rule rule = NEVER;

    Commons(Motion motion, DoubleFunction<AbstractIntegrator> make) {
      this.motion = motion;
      this.make = make;
    }

    @Override
    double[] run(double[] start, double duration, double tolerance, Rule rule) {
      this.rule = rule;
      double[] end = start.clone();
      AbstractIntegrator integrator = make.apply(tolerance);
      if (rule != NEVER) {
        integrator.addStepHandler(this);
      }
      try {
        integrator.integrate(this, 0, end, duration, end);
        return end;
      } catch (Over over) {
        return last.clone();
      }
    }

    @Override
    public int getDimension() {
      return 4;
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] d) {
      evaluations++;
      System.arraycopy(y, 0, last, 0, 4);
      motion.acceleration(y[0], y[1], y[2], y[3], out);
      d[0] = y[2];
      d[1] = y[3];
      d[2] = out[0];
      d[3] = out[1];
    }

    @Override
    public void init(double t0, double[] y0, double t) {}

    @Override
    public void handleStep(StepInterpolator interpolator, boolean isLast) {
      if (rule.isOver(last)) {
        throw new Over();
      }
    }
  }

  private static final class Hipparchus extends Contender
      implements OrdinaryDifferentialEquation, ODEStepHandler {
    private final Motion motion;
    private final DoubleFunction<org.hipparchus.ode.AbstractIntegrator> make;
    private final double[] out = new double[3];
    private double[] last = new double[4];
    private Rule rule = NEVER;

    Hipparchus(Motion motion, DoubleFunction<org.hipparchus.ode.AbstractIntegrator> make) {
      this.motion = motion;
      this.make = make;
    }

    @Override
    double[] run(double[] start, double duration, double tolerance, Rule rule) {
      this.rule = rule;
      org.hipparchus.ode.AbstractIntegrator integrator = make.apply(tolerance);
      if (rule != NEVER) {
        integrator.addStepHandler(this);
      }
      try {
        ODEStateAndDerivative end = integrator.integrate(this, new ODEState(0, start), duration);
        return end.getPrimaryState();
      } catch (Over over) {
        return last.clone();
      }
    }

    @Override
    public int getDimension() {
      return 4;
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
      evaluations++;
      motion.acceleration(y[0], y[1], y[2], y[3], out);
      return new double[] {y[2], y[3], out[0], out[1]};
    }

    @Override
    public void handleStep(ODEStateInterpolator interpolator) {
      last = interpolator.getCurrentState().getPrimaryState();
      if (rule.isOver(last)) {
        throw new Over();
      }
    }
  }
}
