package lodeswing.web.problem;

import java.io.IOException;
import java.io.PrintWriter;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpStatusCode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Answers with a problem what the server itself refuses before the application sees it, such as a
 * request line that is not HTTP.
 *
 * <p>Public, with a constructor without arguments: the server makes it by its name.
 */
public final class ProblemReportValve extends ErrorReportValve {

  private static final Logger LOG = LoggerFactory.getLogger(ProblemReportValve.class);

  @Override
  protected void report(Request request, Response response, Throwable thrown) {
    if (response.getStatus() < 400
        || response.getContentWritten() > 0
        || !response.setErrorReported()) {
      return;
    }
    Problem problem =
        Problem.of(ThrownProblems.ofStatus(HttpStatusCode.valueOf(response.getStatus())));
    boolean asLine = ErrorForm.of(request).asLine();
    try {
      response.setContentType(asLine ? "text/plain" : "application/problem+json");
      response.setCharacterEncoding("UTF-8");
      response.setHeader("Cache-Control", "no-store");
      PrintWriter writer = response.getReporter();
      if (writer != null) {
        writer.write(asLine ? problem.line() : JsonMapper.shared().writeValueAsString(problem));
        response.finishResponse();
      }
    } catch (IOException | IllegalStateException e) {
      LOG.debug("The client left before its problem was written", e);
    }
  }
}
