package lodeswing.web.correlation;

import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The place of a request in a trace, after "Trace Context", W3C Recommendation of 23 November 2021,
 * sections 3.2 (the header {@code traceparent}) and 4.3 (versions of it).
 *
 * @param traceId names the whole trace: 32 lower-case hexadecimal digits, not all zero
 * @param spanId names the work on this request: 16 of them, not all zero
 */
record TraceContext(String traceId, String spanId) {

  /** Of a higher version what is known of it is read; more may follow after another hyphen. */
  private static final Pattern TRACE_PARENT =
      Pattern.compile(
          "(?<version>[0-9a-f]{2})-(?<trace>[0-9a-f]{32})-(?<parent>[0-9a-f]{16})"
              + "-[0-9a-f]{2}(?<more>-.*)?",
          Pattern.DOTALL);

  private static final String FORBIDDEN_VERSION = "ff";
  private static final String FIRST_VERSION = "00";
  private static final String NO_TRACE = "0".repeat(32);
  private static final String NO_PARENT = "0".repeat(16);

  /**
   * A new span in the caller's trace, or in a new trace where there is none or it is malformed.
   *
   * @param headers each such header of the request; more than one is malformed
   * @param random draws the ids
   */
  static TraceContext of(List<String> headers, RandomGenerator random) {
    Optional<String> asked = headers.size() == 1 ? traceId(headers.get(0)) : Optional.empty();
    String trace = asked.orElseGet(() -> digits(random) + digits(random));
    return new TraceContext(trace, digits(random));
  }

  /** The id of the trace that a header names; empty where the header is malformed. */
  static Optional<String> traceId(String header) {
    Matcher found = TRACE_PARENT.matcher(header);
    if (!found.matches()) {
      return Optional.empty();
    }
    String version = found.group("version");
    boolean tooLong = version.equals(FIRST_VERSION) && found.group("more") != null;
    String trace = found.group("trace");
    boolean wellFormed =
        !version.equals(FORBIDDEN_VERSION)
            && !tooLong
            && !trace.equals(NO_TRACE)
            && !found.group("parent").equals(NO_PARENT);
    return wellFormed ? Optional.of(trace) : Optional.empty();
  }

  /** Sixteen digits, not all zero. */
  private static String digits(RandomGenerator random) {
    long drawn = random.nextLong();
    while (drawn == 0) {
      drawn = random.nextLong();
    }
    return String.format("%016x", drawn);
  }
}
