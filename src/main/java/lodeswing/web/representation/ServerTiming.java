package lodeswing.web.representation;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where the time of one request went, as a value of the Server-Timing field (W3C, Server Timing,
 * section 3), in milliseconds.
 *
 * <p>{@code read} is the time until the first result is asked for, {@code store} and {@code
 * compute} what results took to come from memory or the database and to be computed, {@code render}
 * the writing of the answer. A request that needs no result has {@code total} alone.
 */
public final class ServerTiming {

  /** The name of the field. */
  public static final String FIELD = "Server-Timing";

  private static final String ATTRIBUTE = ServerTiming.class.getName();
  private static final long NANOS_PER_MICRO = 1_000;

  private final long begun;
  private final Map<String, Long> spent = new LinkedHashMap<>();
  private long since;

  private ServerTiming() {
    begun = System.nanoTime();
    since = begun;
  }

  /** Begins to measure a request. */
  public static void begin(HttpServletRequest request) {
    request.setAttribute(ATTRIBUTE, new ServerTiming());
  }

  /** The measure of a request, where one was begun. */
  static Optional<ServerTiming> of(HttpServletRequest request) {
    return Optional.ofNullable((ServerTiming) request.getAttribute(ATTRIBUTE));
  }

  /** Counts the time since the last result, or since the request came, as the service's own. */
  void beforeResult() {
    lap(spent.isEmpty() ? "read" : "render");
  }

  /** Counts the time since {@link #beforeResult} as {@code store} or {@code compute}. */
  void afterResult(String name) {
    lap(name);
  }

  private void lap(String name) {
    long now = System.nanoTime();
    spent.merge(name, now - since, Long::sum);
    since = now;
  }

  /** The field's value for an answer that is ready to be sent. */
  String field() {
    if (!spent.isEmpty()) {
      lap("render");
    }
    var out = new StringBuilder(80);
    spent.forEach((name, nanos) -> entry(out, name, nanos).append(", "));
    return entry(out, "total", System.nanoTime() - begun).toString();
  }

  private static StringBuilder entry(StringBuilder out, String name, long nanos) {
    long micros = nanos / NANOS_PER_MICRO;
    out.append(name).append(";dur=").append(micros / 1_000).append('.');
    String fraction = Long.toString(micros % 1_000);
    return out.append("0".repeat(3 - fraction.length())).append(fraction);
  }
}
