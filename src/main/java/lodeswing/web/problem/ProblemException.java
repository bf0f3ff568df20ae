package lodeswing.web.problem;

import java.time.Duration;
import java.util.List;
import java.util.Map;

/** A request that cannot be answered as asked; the one way to a problem document. */
public final class ProblemException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final ProblemCode code;
  private final transient List<Fault> faults;
  private final transient Map<String, String> headers;

  /**
   * A problem with its faults.
   *
   * @param code the kind of problem
   * @param detail one sentence about this occurrence
   * @param faults everything that is wrong, may be empty
   */
  public ProblemException(ProblemCode code, String detail, List<Fault> faults) {
    this(code, detail, faults, Map.of());
  }

  /**
   * A problem whose answer carries headers.
   *
   * @param code the kind of problem
   * @param detail one sentence about this occurrence
   * @param faults everything that is wrong, may be empty
   * @param headers names and values
   */
  public ProblemException(
      ProblemCode code, String detail, List<Fault> faults, Map<String, String> headers) {
    super(detail);
    this.code = code;
    this.faults = List.copyOf(faults);
    this.headers = Map.copyOf(headers);
  }

  /** A problem that passes by itself. */
  public static ProblemException passing(ProblemCode code, String detail, Duration retryAfter) {
    long seconds = Math.min(120, Math.max(1, retryAfter.toSeconds()));
    return new ProblemException(
        code, detail, List.of(), Map.of("Retry-After", Long.toString(seconds)));
  }

  /** The kind of problem. */
  public ProblemCode code() {
    return code;
  }

  /** Everything that is wrong. */
  public List<Fault> faults() {
    return faults;
  }

  /** Headers that the answer carries. */
  public Map<String, String> headers() {
    return headers;
  }
}
