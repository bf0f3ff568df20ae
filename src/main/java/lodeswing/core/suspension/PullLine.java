package lodeswing.core.suspension;

/** The line along which a support can pull only. */
public enum PullLine {
  /** Along the cord or leg, from the bob up. */
  ALONG_BAR,
  /** From the second axis to the upper one: a hook in an eye. */
  BETWEEN_AXES
}
