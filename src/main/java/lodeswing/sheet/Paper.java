package lodeswing.sheet;

import java.util.Arrays;
import java.util.Optional;

/** Sizes of paper, upright. Sources: ISO 216:2007, A series; ANSI/ASME Y14.1, size A (Letter). */
public enum Paper {
  A4("a4", 210, 297),
  A3("a3", 297, 420),
  /** 8.5 by 11 inches. */
  LETTER("letter", 215.9, 279.4);

  private static final double MM = 1e-3;

  private final String word;
  private final double shortMm;
  private final double longMm;

  Paper(String word, double shortMm, double longMm) {
    this.word = word;
    this.shortMm = shortMm;
    this.longMm = longMm;
  }

  /** The word in addresses. */
  public String word() {
    return word;
  }

  /** The paper of a word. */
  public static Optional<Paper> of(String word) {
    return Arrays.stream(values()).filter(paper -> paper.word.equals(word)).findFirst();
  }

  /** The paper as it lies. */
  public Format lying(boolean landscape) {
    return landscape
        ? new Format(longMm * MM, shortMm * MM)
        : new Format(shortMm * MM, longMm * MM);
  }

  /**
   * Paper as it lies.
   *
   * @param width [m]
   * @param height [m]
   */
  public record Format(double width, double height) {}
}
