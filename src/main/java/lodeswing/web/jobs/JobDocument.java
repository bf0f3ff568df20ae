package lodeswing.web.jobs;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.Optional;
import lodeswing.job.Job;
import lodeswing.web.problem.Problem;

/**
 * A job as clients read it; members that are not known yet are left out.
 *
 * @param jobId names the job
 * @param kind the resource its result belongs to
 * @param state waiting, running, done, failed or cancelled
 * @param progress fraction done, 0 to 1
 * @param submittedAt when it was asked for
 * @param startedAt when work on it began
 * @param finishedAt when it ended
 * @param resultUrl where the result is or will be
 * @param problem why it has no result
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record JobDocument(
    String jobId,
    String kind,
    String state,
    double progress,
    Instant submittedAt,
    Optional<Instant> startedAt,
    Optional<Instant> finishedAt,
    String resultUrl,
    Optional<Problem> problem) {

  static JobDocument of(Job job) {
    return new JobDocument(
        job.jobId(),
        job.kind(),
        job.state().word(),
        job.progress(),
        job.submittedAt(),
        job.startedAt(),
        job.finishedAt(),
        job.resultUrl(),
        job.failure().map(failure -> Problem.of(JobProblems.of(failure))));
  }
}
