package lodeswing.web.correlation;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Collections;
import java.util.concurrent.ThreadLocalRandom;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.slf4j.MDC;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Puts the trace of a request into the log context as {@code traceId} and {@code spanId}, and logs
 * each request at DEBUG when it has been answered, without its query.
 *
 * <p>Nothing of it is answered: answers are kept by caches, and a trace belongs to one request.
 */
public final class TraceContextFilter extends OncePerRequestFilter {

  private static final Logger LOG = LoggerFactory.getLogger("lodeswing.requests");
  private static final String CONTEXT = TraceContextFilter.class.getName() + ".context";
  private static final String TRACE = "traceId";
  private static final String SPAN = "spanId";

  /** An answer that is finished on another thread belongs to the same span. */
  @Override
  protected boolean shouldNotFilterAsyncDispatch() {
    return false;
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    long begun = System.nanoTime();
    TraceContext context = context(request);
    MDC.put(TRACE, context.traceId());
    MDC.put(SPAN, context.spanId());
    try {
      chain.doFilter(request, response);
      if (!isAsyncStarted(request)) {
        log(request, response, System.nanoTime() - begun);
      }
    } finally {
      MDC.remove(TRACE);
      MDC.remove(SPAN);
    }
  }

  private static TraceContext context(HttpServletRequest request) {
    if (request.getAttribute(CONTEXT) instanceof TraceContext known) {
      return known;
    }
    var made =
        TraceContext.of(
            Collections.list(request.getHeaders("traceparent")), ThreadLocalRandom.current());
    request.setAttribute(CONTEXT, made);
    return made;
  }

  private static void log(
      HttpServletRequest request, HttpServletResponse response, long nanoseconds) {
    LOG.atDebug()
        .addKeyValue("http.request.method", request.getMethod())
        .addKeyValue("url.path", request.getRequestURI())
        .addKeyValue("http.response.status_code", response.getStatus())
        .addKeyValue("event.duration", nanoseconds)
        .log("Answered");
  }
}
