package lodeswing.config;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import lodeswing.web.problem.Problem;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemWriter;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.server.ServerHttpResponse;
import org.springframework.web.cors.CorsConfiguration;
import org.springframework.web.cors.DefaultCorsProcessor;

/** Refuses pages of other origins with a problem document. */
final class ProblemCorsProcessor extends DefaultCorsProcessor {

  private final ProblemWriter writer;

  ProblemCorsProcessor(ProblemWriter writer) {
    this.writer = writer;
  }

  @Override
  public boolean processRequest(
      @Nullable CorsConfiguration rules, HttpServletRequest request, HttpServletResponse response)
      throws IOException {
    boolean goesOn = super.processRequest(rules, request, response);
    if (!goesOn) {
      Problem problem =
          Problem.of(
              ProblemCode.ORIGIN_NOT_ALLOWED,
              "The origin, method or headers that the page asks for are not allowed.",
              List.of());
      writer.write(request, response, problem, Map.of());
    }
    return goesOn;
  }

  /** Leaves the answer to {@link #processRequest}. */
  @Override
  protected void rejectRequest(ServerHttpResponse response) {
    response.setStatusCode(HttpStatus.FORBIDDEN);
  }
}
