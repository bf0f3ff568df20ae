package lodeswing.job;

import java.util.Locale;

/** How far a job has come. */
public enum JobState {
  WAITING,
  RUNNING,
  DONE,
  FAILED;

  /** The word that clients read. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
