package lodeswing.job;

/** The computation was cancelled before it had a result. */
public final class JobCancelledException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** The computation was cancelled. */
  public JobCancelledException() {
    // Nobody reads where it came from, and the jobs of an hour keep theirs.
    super("The computation was cancelled", null, false, false);
  }
}
