package lodeswing.core.integrate;

import lodeswing.core.integrate.IntegrationFailure.Reason;

/** One integration under way: step sizes, acceptance, bounds. */
final class Passage {

  /** Steps below this part of the time (or of the first step) are lost in rounding. */
  private static final double SMALLEST_PART = 1e-14;

  private final Stepper stepper;
  private final Tolerance tolerance;
  private final StepLimits limits;
  private final StepControl control;
  private long accepted;
  private long rejected;

  Passage(Stepper stepper, Tolerance tolerance, StepLimits limits) {
    this.stepper = stepper;
    this.tolerance = tolerance;
    this.limits = limits;
    this.control = stepper.control();
  }

  Arrival run(double[] state, double endTime, StepObserver observer) {
    stepper.begin(0, state);
    if (endTime == 0) {
      return arrival(0, false);
    }
    stepper.advance();
    stepper.scale(tolerance);
    double size = FirstStep.size(stepper);
    if (!Double.isFinite(size)) {
      throw new IntegrationFailure(Reason.NOT_FINITE, 0);
    }
    while (true) {
      size = take(Math.min(size, limits.largestStep()), endTime);
      boolean on = observer.accept(stepper);
      boolean there = stepper.endTime() >= endTime;
      if (there || !on) {
        return arrival(stepper.endTime(), !on);
      }
      stepper.advance();
      stepper.scale(tolerance);
    }
  }

  /** Tries steps until one is accepted; returns the size for the next. */
  private double take(double first, double endTime) {
    double size = first;
    while (true) {
      double left = endTime - stepper.startTime();
      double step = size >= left ? left : (2 * size > left ? 0.5 * left : size);
      double error = attempt(step);
      if (error <= 1) {
        accepted++;
        double next = step * control.accept(error);
        return step < size ? Math.max(next, Math.min(size, 2 * step)) : next;
      }
      rejected++;
      size = step * (error < Double.POSITIVE_INFINITY ? control.reject(error) : 0.1);
      if (size < SMALLEST_PART * Math.max(stepper.startTime(), first)) {
        throw new IntegrationFailure(
            Double.isFinite(error) ? Reason.STEP_TOO_SMALL : Reason.NOT_FINITE,
            stepper.startTime());
      }
    }
  }

  private double attempt(double step) {
    if (accepted + rejected >= limits.mostSteps()) {
      throw new IntegrationFailure(Reason.TOO_MANY_STEPS, stepper.startTime());
    }
    double error = stepper.attempt(step);
    return error <= 1 && !stepper.endIsFinite() ? Double.NaN : error;
  }

  private Arrival arrival(double time, boolean stopped) {
    return new Arrival(
        time, stepper.endState, stopped, new Work(accepted, rejected, stepper.evaluations));
  }
}
