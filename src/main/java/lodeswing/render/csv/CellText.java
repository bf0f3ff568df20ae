package lodeswing.render.csv;

import java.util.regex.Pattern;

/** Text that stays one text in one cell of a sheet, whether it comes in a table or alone. */
public final class CellText {

  /** What spreadsheets take for the beginning of a formula, full-width forms too. */
  private static final String FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

  private static final int LONGEST_NUMBER = 24;

  private static final Pattern PLACE =
      Pattern.compile("\\([-\u2212]?[0-9.]+, [-\u2212]?[0-9.]+\\)");

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
   * <p>The comma between the coordinates of a place becomes an upright stroke. Other separators,
   * tabs, line ends, double quotes and control characters become dashes, blanks or apostrophes,
   * since a sheet that reads the line as a table would begin a new cell after them.
   */
  public static String line(String text) {
    var line = new StringBuilder(text.length() + 1);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ',' && withinPlace(text, i)) {
        line.append(" |");
      } else if (c == ',' || c == ';') {
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

  /** Whether a comma stands between the coordinates of a place, as in (3, 4). */
  private static boolean withinPlace(String text, int comma) {
    String near =
        text.substring(
            Math.max(0, comma - LONGEST_NUMBER), Math.min(text.length(), comma + LONGEST_NUMBER));
    int at = Math.min(comma, LONGEST_NUMBER);
    int begin = near.lastIndexOf('(', at);
    int end = near.indexOf(')', at);
    return begin >= 0 && end >= 0 && PLACE.matcher(near.substring(begin, end + 1)).matches();
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
