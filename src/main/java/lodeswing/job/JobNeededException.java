package lodeswing.job;

/** A job cannot be cancelled, because another computation waits for its result. */
public final class JobNeededException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** The job is needed. */
  public JobNeededException() {
    super("Another computation waits for the result of this one");
  }

  /**
   * The job is needed.
   *
   * @param why in a few words
   */
  public JobNeededException(String why) {
    super(why);
  }
}
