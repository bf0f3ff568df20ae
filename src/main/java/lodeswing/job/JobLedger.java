package lodeswing.job;

import java.util.Optional;

/** Where jobs can be looked up and cancelled. */
public interface JobLedger {

  /** The job with an id as it stands, or nothing if there is none or it ended too long ago. */
  Optional<Job> findJob(String jobId);

  /**
   * Cancels a job that has not ended: it has no result, whoever waits for it is told by a {@link
   * JobCancelledException}, and its work ends when it next tells its progress.
   *
   * @return the job as it stands then, unchanged where it had ended already; nothing if there is
   *     none or it ended too long ago
   * @throws JobNeededException where another computation that is not cancelled waits for it
   */
  Optional<Job> cancel(String jobId);
}
