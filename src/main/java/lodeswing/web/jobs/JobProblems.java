package lodeswing.web.jobs;

import java.time.Duration;
import java.util.List;
import lodeswing.job.JobCancelledException;
import lodeswing.job.JobNeededException;
import lodeswing.job.RecordedFailure;
import lodeswing.web.problem.Problem;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.problem.ThrownProblems;
import tools.jackson.databind.util.RawValue;

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
  static ProblemException needed(JobNeededException why) {
    return new ProblemException(
        ProblemCode.JOB_NEEDED,
        why.getMessage()
            + "; it goes on. Whoever asked withdraws by DELETE at the cancelUrl of the answer"
            + " that named the job.",
        List.of());
  }

  /** For whoever looks at a job that ended without a result. */
  static ProblemException of(Throwable failure) {
    return failure instanceof JobCancelledException ? cancelled() : ThrownProblems.of(failure);
  }

  /** The problem document, or its JSON where it was written down. */
  static Object document(Throwable failure) {
    return failure instanceof RecordedFailure recorded
        ? new RawValue(recorded.document())
        : Problem.of(of(failure));
  }
}
