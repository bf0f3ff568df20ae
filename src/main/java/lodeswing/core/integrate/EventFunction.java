package lodeswing.core.integrate;

/** A continuous function along a motion whose roots are events. */
@FunctionalInterface
public interface EventFunction {

  /**
   * Value at a time.
   *
   * @param time motion's time
   * @param state {q0, q1, v0, v1} there; not to be kept or changed
   */
  double value(double time, double[] state);
}
