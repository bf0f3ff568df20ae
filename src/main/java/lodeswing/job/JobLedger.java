package lodeswing.job;

import java.util.Optional;

/** Where jobs can be looked up. */
public interface JobLedger {

  /** The job with an id as it stands, or nothing if there is none or it ended too long ago. */
  Optional<Job> findJob(String jobId);
}
