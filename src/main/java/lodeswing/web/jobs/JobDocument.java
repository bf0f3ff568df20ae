package lodeswing.web.jobs;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import lodeswing.job.Job;

/**
 * A job as clients read it; members that are not known yet are left out.
 *
 * @param jobId names the job
 * @param kind the resource its result belongs to
 * @param state waiting, running, done, failed or cancelled
 * @param progress fraction done, 0 to 1
 * @param remainingS seconds of work that remain, by its progress and what it costs
 * @param submittedAt when it was asked for
 * @param startedAt when work on it began
 * @param finishedAt when it ended
 * @param resultUrl where the result is or will be
 * @param cancelUrl where this asking can be withdrawn
 * @param problem why it has no result
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record JobDocument(
    String jobId,
    String kind,
    String state,
    double progress,
    Optional<Double> remainingS,
    Instant submittedAt,
    Optional<Instant> startedAt,
    Optional<Instant> finishedAt,
    String resultUrl,
    Optional<String> cancelUrl,
    Optional<Object> problem) {

  static JobDocument of(Job job, Optional<String> ask, Clock clock) {
    return new JobDocument(
        job.jobId(),
        job.kind(),
        job.state().word(),
        job.progress(),
        job.remainingS().map(seconds -> Math.rint(seconds * 10) / 10),
        job.submittedAt(),
        job.startedAt(),
        job.finishedAt(),
        job.resultUrl(),
        ask.map(name -> "/v1/jobs/" + job.jobId() + "?ask=" + name),
        job.failure().map(JobProblems::document));
  }
}
