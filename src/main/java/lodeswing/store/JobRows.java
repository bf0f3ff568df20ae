package lodeswing.store;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import lodeswing.job.Job;

/** The jobs that somebody was told to come back for, kept beyond the process. */
public interface JobRows {

  /**
   * Writes a job down, anew where an earlier run of it has ended, and notes one more who asked.
   *
   * @param recipe how to make it again
   * @return names the asking
   */
  String open(Job job, List<String> recipe);

  /** Writes how a job stands, unless it has ended already. */
  void update(Job job);

  /** The job as it was written last. */
  Optional<Job> find(String jobId);

  /** Those of some jobs that were cancelled. */
  Set<String> cancelledOf(Set<String> jobIds);

  /**
   * Withdraws an asking.
   *
   * @param ask the asking; nothing means the only one
   * @return how many remain; those there are where it is not said which of several
   */
  int withdraw(String jobId, Optional<String> ask);

  /** Writes a job down as cancelled, unless it has ended already. */
  void cancel(String jobId);

  /** Forgets what ended long ago. */
  void forgetOld();
}
