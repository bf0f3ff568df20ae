package lodeswing.figure;

/**
 * Text from outside made fit for a picture.
 *
 * <p>Control characters, direction overrides, isolates and marks (Unicode 15.1, UAX 9, section 2),
 * invisible format characters, private-use characters, lone surrogates and noncharacters are taken
 * out; line and paragraph ends, tabs and runs of blanks become one blank; of a pile of combining
 * marks four stay. Everything else is kept as it is: markup is text, and renderers escape it.
 */
final class PlainText {
  private static final int MOST_COMBINING_MARKS = 4;
  private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  private PlainText() {}

  static String of(String raw) {
    StringBuilder clean = new StringBuilder(raw.length());
    int marks = 0;
    boolean blank = true;
    for (int i = 0; i < raw.length(); ) {
      int c = raw.codePointAt(i);
      i += Character.charCount(c);
      if (isBlank(c)) {
        if (!blank) {
          clean.append(' ');
        }
        blank = true;
        marks = 0;
      } else if (isText(c)) {
        marks = isCombining(c) ? marks + 1 : 0;
        if (marks <= MOST_COMBINING_MARKS) {
          clean.appendCodePoint(c);
          blank = false;
        }
      }
    }
    int end = clean.length();
    return end > 0 && clean.charAt(end - 1) == ' ' ? clean.substring(0, end - 1) : clean.toString();
  }

  /** The text cut to so many code points at most, with an ellipsis where it was longer. */
  static String shortened(String text, int longest) {
    if (text.codePointCount(0, text.length()) <= longest) {
      return text;
    }
    return text.substring(0, text.offsetByCodePoints(0, longest - 1)).stripTrailing() + "…";
  }

  private static boolean isBlank(int c) {
    // Not the no-break spaces: they hold a number and its unit together.
    return Character.isWhitespace(c) || c == 0x85;
  }

  private static boolean isText(int c) {
    if (c == ZERO_WIDTH_JOINER || c == ZERO_WIDTH_NON_JOINER) {
      return true;
    }
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED ->
          false;
      default -> true;
    };
  }

  private static boolean isCombining(int c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
  }
}
