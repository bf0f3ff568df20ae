package lodeswing.core.integrate;

/** Sees every accepted step, in order. */
@FunctionalInterface
public interface StepObserver {

  /** Sees nothing and goes on. */
  StepObserver NONE = step -> true;

  /**
   * Looks at a step.
   *
   * @param step valid only during this call
   * @return whether to go on
   */
  boolean accept(Step step);
}
