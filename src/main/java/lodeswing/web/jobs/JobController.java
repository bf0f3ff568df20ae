package lodeswing.web.jobs;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import lodeswing.job.Job;
import lodeswing.job.JobLedger;
import lodeswing.job.JobNeededException;
import lodeswing.job.NoSuchAskingException;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.Subject;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.servlet.mvc.method.annotation.SseEmitter;
import tools.jackson.databind.json.JsonMapper;

/** Shows and cancels jobs. */
@RestController
final class JobController {

  private static final List<Representation> OFFERED =
      List.of(Representation.JSON, Representation.CBOR);

  private static final Parameter<String> ASK = Parameter.text("ask", 40);

  private final JobLedger ledger;
  private final JobEvents events;
  private final Clock clock;
  private final JsonMapper json;

  JobController(JobLedger ledger, JobEvents events, Clock clock, JsonMapper json) {
    this.ledger = ledger;
    this.events = events;
    this.clock = clock;
    this.json = json;
  }

  @GetMapping("/v1/jobs/{jobId}")
  ResponseEntity<byte[]> getJob(@PathVariable String jobId, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, OFFERED);
    return reply(form, known(ledger.findJob(jobId)), request);
  }

  @DeleteMapping("/v1/jobs/{jobId}")
  ResponseEntity<byte[]> cancelJob(@PathVariable String jobId, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, ASK);
    Representation form = Negotiation.choose(request, query, OFFERED);
    try {
      return reply(form, known(ledger.cancel(jobId, query.find(ASK))), request);
    } catch (JobNeededException e) {
      throw JobProblems.needed(e);
    } catch (NoSuchAskingException e) {
      throw new ProblemException(ProblemCode.NOT_FOUND, e.getMessage() + ".", List.of());
    }
  }

  @GetMapping("/v1/jobs/{jobId}/events")
  ResponseEntity<SseEmitter> streamJob(@PathVariable String jobId, HttpServletRequest request) {
    Negotiation.choose(request, QueryParameters.read(request), List.of(Representation.EVENTS));
    Job job = known(ledger.findJob(jobId));
    Optional<String> seen = Optional.ofNullable(request.getHeader("Last-Event-ID"));
    CacheControl never = CacheControl.noStore();
    return JobEvents.allSeen(job, seen)
        // A client is to come back no more (HTML Living Standard, 9.2.3).
        ? ResponseEntity.noContent().cacheControl(never).build()
        : ResponseEntity.ok().cacheControl(never).body(events.stream(jobId, seen));
  }

  private static Job known(Optional<Job> job) {
    return job.orElseThrow(
        () ->
            new ProblemException(
                ProblemCode.NOT_FOUND,
                "There is no such job, or it ended too long ago.",
                List.of()));
  }

  private ResponseEntity<byte[]> reply(Representation form, Job job, HttpServletRequest request) {
    Reply reply =
        Reply.ofJson(form, json.writeValueAsBytes(JobDocument.of(job, Optional.empty(), clock)));
    return (job.state().ended()
            ? reply
            : reply.header("Retry-After", Pending.retryAfter(job, clock)))
        .to(request, Subject.NONE);
  }
}
