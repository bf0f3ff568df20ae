package lodeswing.render.csv;

/** Text that stays one text in one cell of a sheet, whether it comes in a table or alone. */
public final class CellText {

  /** What spreadsheets take for the beginning of a formula, full-width forms too. */
  private static final String FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

  private CellText() {}

  /**
   * The text with an apostrophe before it where a spreadsheet would take it for a formula (OWASP,
   * CSV Injection): where its first character that is not a blank is one of {@code = + - @}, their
   * full-width forms, or a tab, carriage return or line feed.
   */
  public static String guarded(String text) {
    return isFormula(text) ? "'" + text : text;
  }

  /**
   * The text as the whole of an answer: guarded, and on one line that no sheet splits.
   *
   * <p>Separators, tabs, line ends, double quotes and control characters become dashes, blanks or
   * apostrophes, since a sheet that reads the line as a table would begin a new cell after them.
   */
  public static String line(String text) {
    var line = new StringBuilder(text.length() + 1);
    for (int i = 0; i < text.length(); i++) {
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
    return guarded(line.toString());
  }

  private static boolean isFormula(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (FORMULA.indexOf(c) >= 0) {
        return true;
      }
      if (!Character.isWhitespace(c) && !Character.isSpaceChar(c) && c > ' ') {
        return false;
      }
    }
    return false;
  }
}
