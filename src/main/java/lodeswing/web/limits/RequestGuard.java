package lodeswing.web.limits;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ReadListener;
import jakarta.servlet.ServletException;
import jakarta.servlet.ServletInputStream;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lodeswing.web.problem.Problem;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.problem.ProblemWriter;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Refuses addresses and bodies over their limits, or packed, before anything reads them. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 20)
final class RequestGuard extends OncePerRequestFilter {

  private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
  private static final List<String> LISTS = List.of("/outcomes", "/v1/fits", "/v1/comparisons");

  private final Limits limits;
  private final ProblemWriter writer;

  RequestGuard(Limits limits, ProblemWriter writer) {
    this.limits = limits;
    this.writer = writer;
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    response.setHeader("X-Content-Type-Options", "nosniff");
    String query = request.getQueryString();
    int length = request.getRequestURI().length() + (query == null ? 0 : query.length() + 1);
    if (length > limits.urlCharacters()) {
      refuse(
          request,
          response,
          ProblemCode.URI_TOO_LONG,
          "The address has " + length + " characters; " + limits.urlCharacters() + " are read.");
    } else if (request.getRequestURI().indexOf(';') >= 0) {
      refuse(
          request,
          response,
          ProblemCode.MALFORMED_REQUEST,
          "The path holds a semicolon; parameters stand in the query, after a question mark.");
    } else if (isEncoded(request)) {
      refuseEncoding(request, response);
    } else if (request.getContentLengthLong() > longest(request)) {
      refuse(request, response, ProblemCode.BODY_TOO_LARGE, tooLarge(longest(request)));
    } else {
      chain.doFilter(new BoundedRequest(request), response);
    }
  }

  /** Whether a body would have to be unpacked first. */
  private static boolean isEncoded(HttpServletRequest request) {
    boolean plain =
        Collections.list(request.getHeaders(HttpHeaders.CONTENT_ENCODING)).stream()
            .flatMap(field -> Arrays.stream(field.split(",")))
            .map(String::strip)
            .allMatch(coding -> coding.isEmpty() || coding.equalsIgnoreCase("identity"));
    return !plain && !READING.contains(request.getMethod());
  }

  /** Says what is accepted in the field that is for it (RFC 9110, section 15.5.16). */
  private void refuseEncoding(HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    ProblemException problem =
        new ProblemException(
            ProblemCode.UNSUPPORTED_MEDIA_TYPE,
            "The body is packed; send it as it is, without Content-Encoding.",
            List.of(),
            Map.of(HttpHeaders.ACCEPT_ENCODING, "identity"));
    writer.write(request, response, Problem.of(problem), problem.headers());
  }

  private void refuse(
      HttpServletRequest request, HttpServletResponse response, ProblemCode code, String detail)
      throws IOException {
    ProblemException problem = new ProblemException(code, detail, List.of());
    writer.write(request, response, Problem.of(problem), problem.headers());
  }

  /** Lists of releases and recordings may be longer than any other body. */
  private int longest(HttpServletRequest request) {
    boolean list = LISTS.stream().anyMatch(request.getRequestURI()::endsWith);
    return list ? limits.listBytes() : limits.bodyBytes();
  }

  private static String tooLarge(long longest) {
    return "At most " + longest + " bytes are read.";
  }

  /** A request whose body ends in a problem at the limit, for bodies that do not state a length. */
  private final class BoundedRequest extends HttpServletRequestWrapper {
    private final int longest;

    BoundedRequest(HttpServletRequest request) {
      super(request);
      longest = longest(request);
    }

    @Override
    public ServletInputStream getInputStream() throws IOException {
      return new BoundedStream(super.getInputStream(), longest);
    }
  }

  /** Counts what is read. */
  private static final class BoundedStream extends ServletInputStream {
    private final ServletInputStream body;
    private final int longest;
    private long left;

    BoundedStream(ServletInputStream body, int longest) {
      this.body = body;
      this.longest = longest;
      this.left = longest;
    }

    @Override
    public int read() throws IOException {
      int value = body.read();
      count(value < 0 ? 0 : 1);
      return value;
    }

    @Override
    public int read(byte[] target, int offset, int length) throws IOException {
      int count = body.read(target, offset, length);
      count(count);
      return count;
    }

    private void count(int bytes) {
      left -= Math.max(0, bytes);
      if (left < 0) {
        throw new ProblemException(ProblemCode.BODY_TOO_LARGE, tooLarge(longest), List.of());
      }
    }

    @Override
    public boolean isFinished() {
      return body.isFinished();
    }

    @Override
    public boolean isReady() {
      return body.isReady();
    }

    @Override
    public void setReadListener(ReadListener listener) {
      body.setReadListener(listener);
    }
  }
}
