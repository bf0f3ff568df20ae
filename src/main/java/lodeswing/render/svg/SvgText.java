package lodeswing.render.svg;

/** Text and numbers as they stand in an SVG file. */
final class SvgText {
  private SvgText() {}

  /**
   * Appends text with markup escaped; what XML 1.0 (production 2, Char) does not allow becomes the
   * replacement character.
   */
  static void escape(StringBuilder out, String text) {
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        case '\'' -> out.append("&#39;");
        default -> out.appendCodePoint(isXml(c) ? c : 0xFFFD);
      }
    }
  }

  /** Appends a number with two decimals at most: a hundredth of a pixel. */
  static void number(StringBuilder out, double value) {
    hundredths(out, hundredths(value));
  }

  static long hundredths(double value) {
    return Math.round(value * 100);
  }

  /** Appends a count of hundredths as a decimal number, as short as it can be. */
  static void hundredths(StringBuilder out, long hundredths) {
    if (hundredths < 0) {
      out.append('-');
    }
    long size = Math.abs(hundredths);
    long whole = size / 100;
    long part = size % 100;
    if (whole != 0 || part == 0) {
      out.append(whole);
    }
    if (part != 0) {
      out.append('.').append((char) ('0' + part / 10));
      if (part % 10 != 0) {
        out.append((char) ('0' + part % 10));
      }
    }
  }

  private static boolean isXml(int c) {
    return c == 0x9
        || c == 0xA
        || c == 0xD
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || (c >= 0x10000 && c <= 0x10FFFF);
  }
}
