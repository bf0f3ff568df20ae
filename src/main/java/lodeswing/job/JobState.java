package lodeswing.job;

import java.util.Locale;

/** How far a job has come. */
public enum JobState {
  WAITING,
  RUNNING,
  DONE,
  FAILED,
  CANCELLED;

  /** Whether nothing will change any more. */
  public boolean ended() {
    return this == DONE || this == FAILED || this == CANCELLED;
  }

  /** The word that clients read. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
