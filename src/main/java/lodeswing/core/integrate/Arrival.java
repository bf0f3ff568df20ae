package lodeswing.core.integrate;

/** Where an integration ended, and what it cost. */
public final class Arrival {

  private final double time;
  private final double[] state;
  private final boolean stopped;
  private final Work work;

  Arrival(double time, double[] state, boolean stopped, Work work) {
    this.time = time;
    this.state = state.clone();
    this.stopped = stopped;
    this.work = work;
  }

  /** Time reached. */
  public double time() {
    return time;
  }

  /** Copy of the state {q0, q1, v0, v1} at that time. */
  public double[] state() {
    return state.clone();
  }

  /** Whether the observer ended it. */
  public boolean stopped() {
    return stopped;
  }

  /** Steps and evaluations spent. */
  public Work work() {
    return work;
  }
}
