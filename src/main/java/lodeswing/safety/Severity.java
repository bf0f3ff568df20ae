package lodeswing.safety;

/** How much a caution weighs, the gravest first. */
public enum Severity {
  /** Can kill or maim: a limit is passed, or a life may hang on keeping away. */
  DANGER("danger"),
  /** Can injure. */
  WARNING("warning"),
  /** Can injure slightly, or spoil things. */
  CAUTION("caution"),
  /** Good to know. */
  NOTE("note");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  /** Its name in answers. */
  public String word() {
    return word;
  }
}
