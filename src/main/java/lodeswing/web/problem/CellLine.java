package lodeswing.web.problem;

/** Text made safe for one cell of a sheet. */
public final class CellLine {

  private static final int LONGEST = 1_000;

  private CellLine() {}

  /**
   * One line that stays in one cell and never runs as a formula.
   *
   * <p>Separators, tabs, line ends, quotes and control characters become blanks, dashes or
   * apostrophes, since a sheet that reads the line as a table would begin a new cell after them;
   * the text must begin with a word of ours.
   */
  public static String of(String text) {
    var line = new StringBuilder(Math.min(text.length(), LONGEST) + 1);
    int length = Math.min(text.length(), LONGEST);
    for (int i = 0; i < length; i++) {
      char c = text.charAt(i);
      if (c == ',' || c == ';') {
        line.append(" -");
      } else if (c == '"') {
        line.append('\'');
      } else if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || c == '\ufeff') {
        line.append(' ');
      } else {
        line.append(c);
      }
    }
    if (text.length() > LONGEST) {
      line.append('…');
    }
    return line.toString();
  }
}
