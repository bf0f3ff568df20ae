package lodeswing.web.problem;

import java.util.List;

/** A request that cannot be answered as asked; the one way to a problem document. */
public final class ProblemException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final ProblemCode code;
  private final transient List<Fault> faults;

  /**
   * A problem with its faults.
   *
   * @param code the kind of problem
   * @param detail one sentence about this occurrence
   * @param faults everything that is wrong, may be empty
   */
  public ProblemException(ProblemCode code, String detail, List<Fault> faults) {
    super(detail);
    this.code = code;
    this.faults = List.copyOf(faults);
  }

  /** The kind of problem. */
  public ProblemCode code() {
    return code;
  }

  /** Everything that is wrong. */
  public List<Fault> faults() {
    return faults;
  }
}
