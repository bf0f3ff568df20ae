package lodeswing.web.jobs;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import lodeswing.job.Answer;
import lodeswing.job.Job;
import lodeswing.web.problem.ErrorForm;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import tools.jackson.databind.json.JsonMapper;

/** The answer to a request whose result is still being computed. */
final class Pending {

  private Pending() {}

  /** 202 with the job's address; one line of text where the request wants its errors so. */
  static Reply reply(
      HttpServletRequest request, Answer.Pending pending, Clock clock, JsonMapper json) {
    Job job = pending.job();
    ErrorForm form = ErrorForm.of(request);
    String seconds = retryAfter(job, clock);
    Reply reply =
        form.asLine()
            ? Reply.of(Representation.TEXT, ("PENDING " + seconds).getBytes(StandardCharsets.UTF_8))
            : Reply.of(
                Representation.JSON,
                json.writeValueAsBytes(JobDocument.of(job, pending.ask(), clock)));
    return reply
        .status(form.status(202))
        .location("/v1/jobs/" + job.jobId())
        .header("Retry-After", seconds);
  }

  static String retryAfter(Job job, Clock clock) {
    return Long.toString(job.secondsToWait(clock.instant()));
  }
}
