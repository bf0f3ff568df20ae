package lodeswing.analysis.comparison;

/** What a recording says of the rig as it is described. */
public enum Verdict {
  /** Nowhere are they farther apart than noise and the start's error explain. */
  AGREES("agrees"),
  /** They part, but no sooner than the start's error, or the computation's, lets them. */
  CHANCE("parted-by-chance"),
  /** They part where they should not. */
  SOONER("parted-too-soon"),
  /** They never went together. */
  FROM_START("differs-from-start");

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  /** The word for programs. */
  public String word() {
    return word;
  }
}
