package lodeswing.figure;

/**
 * Width of a line of text in the drawing's typeface, DejaVu Sans, from its advance widths; other
 * letters than ASCII are taken at a generous mean. Kerning is left out, which only widens.
 */
final class TextWidth {
  private static final int FIRST = 32;

  /** Advances of the characters 32 to 126 in thousandths of the font size (the font's hmtx). */
  private static final int[] ADVANCES = {
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636,
    636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632,
    575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685,
    611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579,
    278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838
  };

  private static final int NO_BREAK_SPACE = 0xA0;
  private static final int OTHER = 700;

  /** Dashes, ellipsis, arrows and signs of mathematics. */
  private static final int FIRST_SIGN = 0x2010;

  private static final int AFTER_SIGNS = 0x2300;
  private static final int SIGN = 1000;
  private static final int WIDE = 1050;

  private TextWidth() {}

  /** Width at a font size, in the unit of the size. */
  static double of(String text, double size) {
    long sum = 0;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      sum += advance(c);
    }
    return sum * size / 1000;
  }

  private static int advance(int c) {
    if (c >= FIRST && c < FIRST + ADVANCES.length) {
      return ADVANCES[c - FIRST];
    }
    if (c == NO_BREAK_SPACE) {
      return ADVANCES[0];
    }
    if (Character.getType(c) == Character.NON_SPACING_MARK) {
      return 0;
    }
    if (c >= FIRST_SIGN && c < AFTER_SIGNS) {
      return SIGN;
    }
    return c >= 0x1100 && (Character.isIdeographic(c) || c >= 0x2E80) ? WIDE : OTHER;
  }
}
