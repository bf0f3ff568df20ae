package lodeswing.web.problem;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatusCode;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** Answers what failed outside of any handler: in a filter or in the server. */
@Controller
final class FallbackErrorController implements ErrorController {

  private final ProblemWriter writer;

  FallbackErrorController(ProblemWriter writer) {
    this.writer = writer;
  }

  @RequestMapping("/error")
  void answer(HttpServletRequest request, HttpServletResponse response) throws IOException {
    ProblemException problem =
        request.getAttribute(RequestDispatcher.ERROR_EXCEPTION) instanceof Throwable thrown
            ? ThrownProblems.of(thrown)
            : ThrownProblems.ofStatus(status(request));
    writer.write(request, response, Problem.of(problem), problem.headers());
  }

  private static HttpStatusCode status(HttpServletRequest request) {
    return request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer status
        ? HttpStatusCode.valueOf(status)
        : HttpStatusCode.valueOf(404);
  }
}
