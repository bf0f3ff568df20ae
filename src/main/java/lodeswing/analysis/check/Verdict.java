package lodeswing.analysis.check;

import java.util.Collection;

/** What a line or a whole check comes to, the best first. */
public enum Verdict {
  GOOD,
  /** Something needed to judge it is not in the layout. */
  UNKNOWN,
  /** It will work, with little room. */
  WATCH,
  FAILS;

  /** The verdict on a whole: its worst line's; nothing unknown is ever good. */
  public static Verdict worst(Collection<Verdict> lines) {
    return lines.stream().max(Verdict::compareTo).orElse(UNKNOWN);
  }
}
