package lodeswing.web.problem;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Writes problems in the form that the request wants. */
@Component
public final class ProblemWriter {

  private final JsonMapper json;

  ProblemWriter(JsonMapper json) {
    this.json = json;
  }

  /**
   * Writes a problem as the whole answer; does nothing where an answer has begun.
   *
   * @param problem what went wrong
   * @param headers what the answer carries beside it
   */
  public void write(
      HttpServletRequest request,
      HttpServletResponse response,
      Problem problem,
      Map<String, String> headers)
      throws IOException {
    if (response.isCommitted()) {
      return;
    }
    ErrorForm form = ErrorForm.of(request);
    response.resetBuffer();
    response.setStatus(form.status(problem.status()));
    response.setHeader("Cache-Control", "no-store");
    response.setHeader("Content-Language", "en");
    headers.forEach(response::setHeader);
    if (form.asLine()) {
      response.setContentType("text/plain;charset=UTF-8");
      send(response, problem.line().getBytes(StandardCharsets.UTF_8));
    } else {
      response.setContentType("application/problem+json");
      send(response, json.writeValueAsBytes(problem));
    }
  }

  private static void send(HttpServletResponse response, byte[] body) throws IOException {
    response.setContentLength(body.length);
    response.getOutputStream().write(body);
  }
}
