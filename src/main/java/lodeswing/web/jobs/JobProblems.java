package lodeswing.web.jobs;

import java.time.Duration;
import java.util.List;
import lodeswing.job.JobCancelledException;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.problem.ThrownProblems;

/** What keeps a job from a result, as a problem. */
final class JobProblems {

  private static final Duration AT_ONCE = Duration.ofSeconds(1);

  private JobProblems() {}

  /** For whoever waited for a job that was cancelled. */
  static ProblemException cancelled() {
    return ProblemException.passing(
        ProblemCode.JOB_CANCELLED,
        "The computation was cancelled before it had a result; ask again to have it computed.",
        AT_ONCE);
  }

  /** For whoever wants to cancel a job that another computation waits for. */
  static ProblemException needed() {
    return new ProblemException(
        ProblemCode.JOB_NEEDED,
        "Another computation waits for the result of this job; it goes on.",
        List.of());
  }

  /** For whoever looks at a job that ended without a result. */
  static ProblemException of(Throwable failure) {
    return failure instanceof JobCancelledException ? cancelled() : ThrownProblems.of(failure);
  }
}
