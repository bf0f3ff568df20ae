package lodeswing.job;

import java.time.Duration;

/** No more work can be taken in at present. */
public final class TooMuchWorkException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Duration askAgainAfter;

  /**
   * No more work can be taken in.
   *
   * @param waiting how many computations wait already
   * @param askAgainAfter when there will be room, as far as can be told
   */
  public TooMuchWorkException(int waiting, Duration askAgainAfter) {
    super("As much work waits as is taken in; computations that wait: " + waiting);
    this.askAgainAfter = askAgainAfter;
  }

  /** When there will be room, as far as can be told. */
  public Duration askAgainAfter() {
    return askAgainAfter;
  }
}
