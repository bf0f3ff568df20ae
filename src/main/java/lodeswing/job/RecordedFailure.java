package lodeswing.job;

/** Why a job failed, as it was written down when it did. */
public final class RecordedFailure extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * A failure read back.
   *
   * @param document the problem document, as JSON
   */
  public RecordedFailure(String document) {
    super(document, null, false, false);
  }

  /** The problem document, as JSON. */
  public String document() {
    return String.valueOf(getMessage());
  }
}
