package lodeswing.core.integrate;

/**
 * One accepted step, seen by a {@link StepObserver}; valid only during that call.
 *
 * <p>States are {q0, q1, v0, v1}.
 */
public interface Step {

  /** Time at the step's start. */
  double startTime();

  /** Time at the step's end. */
  double endTime();

  /**
   * One element of the state at the start.
   *
   * @param index 0 to 3
   */
  double start(int index);

  /**
   * One element of the state at the end.
   *
   * @param index 0 to 3
   */
  double end(int index);

  /**
   * Estimate of the error that this step added, the root of |dq|^2 + |dv|^2/w^2 with w the motion's
   * natural rate. It is on the safe side by far.
   */
  double localError();

  /**
   * State inside the step, from the dense output. With the Nystrom pair the first call in a step
   * costs two evaluations, with collocation none.
   *
   * @param time from {@link #startTime} to {@link #endTime}
   * @param out receives the state
   */
  void at(double time, double[] out);

  /**
   * State inside the step to fifth order, without any evaluation beyond the one that the next step
   * begins with: for looking where something may happen, not for results.
   *
   * @param time from {@link #startTime} to {@link #endTime}
   * @param out receives the state
   */
  void glimpse(double time, double[] out);

  /** Copies the state at the start. */
  default void startState(double[] out) {
    for (int i = 0; i < 4; i++) {
      out[i] = start(i);
    }
  }

  /** Copies the state at the end. */
  default void endState(double[] out) {
    for (int i = 0; i < 4; i++) {
      out[i] = end(i);
    }
  }
}
