package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * Breaks a text into lines that fit a width, at blanks where it can, a figure not from its unit.
 */
final class TextLines {

  private static final int LONGEST_UNIT = 2;

  private TextLines() {}

  /**
   * @param text the text; an empty one has no lines
   * @param size font size [px]
   * @param width width to fit [px]
   * @param most lines at most; what is left over ends in an ellipsis
   */
  static List<String> wrapped(String text, double size, double width, int most) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (!rest.isEmpty() && lines.size() < most) {
      int cut = fitting(rest, size, width);
      if (cut < rest.length() && lines.size() == most - 1) {
        int shorter = fitting(rest, size, width - size);
        lines.add(rest.substring(0, shorter).stripTrailing() + "…");
        return lines;
      }
      lines.add(rest.substring(0, cut).stripTrailing());
      rest = rest.substring(cut).stripLeading();
    }
    return lines;
  }

  private static int fitting(String text, double size, double width) {
    int end = 0;
    int lastBlank = -1;
    while (end < text.length()) {
      int next = end + Character.charCount(text.codePointAt(end));
      if (TextWidth.of(text.substring(0, next), size) > width) {
        int hard = Math.max(end, Character.charCount(text.codePointAt(0)));
        return lastBlank > 0 ? lastBlank : hard;
      }
      if (text.charAt(end) == ' ' && !isBeforeUnit(text, end)) {
        lastBlank = end;
      }
      end = next;
    }
    return end;
  }

  /** Whether a blank stands between a figure and a short word, which may be its unit. */
  private static boolean isBeforeUnit(String text, int blank) {
    int end = blank + 1;
    while (end < text.length() && isOfUnit(text.charAt(end))) {
      end++;
    }
    int length = end - blank - 1;
    return blank > 0
        && Character.isDigit(text.charAt(blank - 1))
        && length > 0
        && length <= LONGEST_UNIT;
  }

  private static boolean isOfUnit(char sign) {
    return Character.isLetter(sign) || sign == '%';
  }
}
