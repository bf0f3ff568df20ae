package lodeswing.analysis.twins;

/** What ends a stretch of time over which two paths are compared. */
public enum Cut {
  /** They are too far apart for a growth that goes by a rate. */
  PARTING("parting"),
  /** The end of one of them is decided: from here on both swing about rest points. */
  SEALED("sealed"),
  /** Friction holds one of the bobs. */
  HELD("held"),
  /** One of the two computed paths is no longer right. */
  TRUST("trust"),
  /** They are nearer to each other than the computation can tell. */
  RESOLUTION("resolution"),
  /** The model of one of them ends: a touch, a slack cord, an angle too large. */
  MODEL("model"),
  /** The asked duration is over. */
  DURATION("duration");

  private final String word;

  Cut(String word) {
    this.word = word;
  }

  /** The word in answers. */
  public String word() {
    return word;
  }
}
