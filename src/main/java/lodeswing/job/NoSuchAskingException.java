package lodeswing.job;

/** A job has no asking of the name by which one was to be withdrawn. */
public final class NoSuchAskingException extends RuntimeException {

  private static final long serialVersionUID = 1;

  /** Its words are for whoever withdrew. */
  public NoSuchAskingException() {
    super("This job has no such asking: it was withdrawn already, or it is another job's");
  }
}
