package lodeswing.job;

import java.time.Instant;
import java.util.Optional;

/** Where jobs can be looked up and cancelled. */
public interface JobLedger {

  /** The job with an id as it stands, or nothing if there is none or it ended too long ago. */
  Optional<Job> findJob(String jobId);

  /** The jobs that outlive a process and have not ended, of all processes at one database. */
  OpenJobs open();

  /**
   * Jobs that have not ended.
   *
   * @param count how many
   * @param oldest when the oldest of them was first asked for
   */
  record OpenJobs(long count, Optional<Instant> oldest) {}

  /**
   * Cancels a job that has not ended: it has no result, whoever waits for it is told by a {@link
   * JobCancelledException}, and its work ends when it next tells its progress.
   *
   * <p>A job that several asked for ends only when the last one of them has withdrawn.
   *
   * @param ask the asking that is withdrawn; nothing withdraws the only one
   * @throws NoSuchAskingException where the job goes on and has no asking of that name
   * @return the job as it stands then, unchanged where it had ended already; nothing if there is
   *     none or it ended too long ago
   * @throws JobNeededException where another computation that is not cancelled waits for it, or
   *     several asked for it and none of them is named
   */
  Optional<Job> cancel(String jobId, Optional<String> ask);

  /** Ends and forgets all jobs that belong to a private layout. */
  void forget(Realm realm);
}
