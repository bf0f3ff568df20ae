package lodeswing.job;

/** No more work can be taken in at present. */
public final class TooMuchWorkException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * No more work can be taken in.
   *
   * @param waiting how many computations wait already
   */
  public TooMuchWorkException(int waiting) {
    super(waiting + " computations are waiting already");
  }
}
