package lodeswing.core.integrate;

import lodeswing.core.motion.Motion;

/**
 * Growth of an infinitesimal shift of a release beside the path of a motion, seen in plan.
 *
 * <p>The shift is carried in {q0, q1, v0/w, v1/w} with w the natural rate ({@link TangentGrowth});
 * its size is read in plan, as the root of dx^2 + dy^2 + (dvx^2 + dvy^2)/w^2. Not safe for several
 * threads.
 */
public final class MotionTangent {

  /** Part of a state by which the derivative of the way to plan is taken. */
  private static final double SPAN = 1e-6;

  private final Motion motion;
  private final double rate;
  private final TangentGrowth growth;
  private final double[] derivatives = new double[8];
  private final double[] first = new double[16];
  private final double[] middle = new double[16];
  private final double[] last = new double[16];
  private final double[] direction = new double[4];
  private final double[] state = new double[4];
  private final double[] ahead = new double[4];
  private final double[] behind = new double[4];
  private final double logStart;

  /**
   * Begins at a release.
   *
   * @param motion what moves
   * @param start its state
   * @param shift a shift of that state {q0, q1, v0, v1}, not 0; only its direction counts
   */
  public MotionTangent(Motion motion, double[] start, double[] shift) {
    this.motion = motion;
    this.rate = motion.naturalRate();
    this.growth =
        new TangentGrowth(new double[] {shift[0], shift[1], shift[2] / rate, shift[3] / rate});
    this.logStart = Math.log(sizeInPlan(start));
  }

  /**
   * Goes on by one step.
   *
   * @param begin state at its begin
   * @param half state in its middle
   * @param end state at its end
   * @param length its length in time
   */
  public void advance(double[] begin, double[] half, double[] end, double length) {
    jacobian(begin, first);
    jacobian(half, middle);
    jacobian(end, last);
    growth.flow(first, middle, last, length);
  }

  /**
   * Natural logarithm of the factor by which the shift has grown in plan.
   *
   * @param at the state where the last step ended
   */
  public double logGrowth(double[] at) {
    return growth.logGrowth() + Math.log(sizeInPlan(at)) - logStart;
  }

  /** The Jacobian in the weighted components. */
  private void jacobian(double[] at, double[] out) {
    motion.jacobian(at[0], at[1], at[2], at[3], derivatives);
    out[2] = rate;
    out[7] = rate;
    for (int row = 0; row < 2; row++) {
      int to = 8 + 4 * row;
      int from = 4 * row;
      out[to] = derivatives[from] / rate;
      out[to + 1] = derivatives[from + 1] / rate;
      out[to + 2] = derivatives[from + 2];
      out[to + 3] = derivatives[from + 3];
    }
  }

  /** Size in plan of the direction's unit vector, by a difference to both sides. */
  private double sizeInPlan(double[] at) {
    growth.direction(direction);
    moved(at, SPAN, ahead);
    moved(at, -SPAN, behind);
    double places = Math.hypot(ahead[0] - behind[0], ahead[1] - behind[1]);
    double speeds = Math.hypot(ahead[2] - behind[2], ahead[3] - behind[3]);
    return Math.hypot(places, speeds / rate) / (2 * SPAN);
  }

  private void moved(double[] at, double by, double[] plan) {
    for (int i = 0; i < 4; i++) {
      state[i] = at[i] + by * direction[i] * (i < 2 ? 1 : rate);
    }
    motion.toPlan(state, plan);
  }
}
