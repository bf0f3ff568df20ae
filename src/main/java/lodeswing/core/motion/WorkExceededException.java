package lodeswing.core.motion;

/** A layout that cannot be made ready within the work or the memory allowed for it. */
public final class WorkExceededException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** The failure of a budget. */
  public WorkExceededException() {
    super("making the layout ready takes more than the work or the memory allowed for it");
  }
}
