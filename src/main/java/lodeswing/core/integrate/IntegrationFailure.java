package lodeswing.core.integrate;

/** An integration that could not go on: its equations gave no number, or its bounds were spent. */
public final class IntegrationFailure extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final Reason reason;
  private final double time;

  IntegrationFailure(Reason reason, double time) {
    super(reason.text + " at t = " + time);
    this.reason = reason;
    this.time = time;
  }

  /** Why the integration ended. */
  public Reason reason() {
    return reason;
  }

  /** Time up to which the path is known. */
  public double time() {
    return time;
  }

  /** Why an integration cannot go on. */
  public enum Reason {
    /** State or acceleration is NaN or infinite. */
    NOT_FINITE("state or acceleration is not a finite number"),
    /** The step needed is lost in the rounding of time. */
    STEP_TOO_SMALL("the step that the tolerance asks for is too small"),
    /** The bound on the number of steps is spent. */
    TOO_MANY_STEPS("the bound on the number of steps is reached");

    private final String text;

    Reason(String text) {
      this.text = text;
    }
  }
}
