package lodeswing.figure;

import java.util.List;

/**
 * A line of a legend.
 *
 * @param swatch how the thing looks in the picture
 * @param text what it is
 */
public record LegendEntry(Swatch swatch, String text) {

  /** Clears the text of anything that is not text. */
  public LegendEntry {
    text = PlainText.of(text);
  }

  /** A small sample of how a thing looks. */
  public sealed interface Swatch {

    /** A stretch of line, its parts side by side. */
    record Line(List<Stroke> parts) implements Swatch {

      /** Copies the list. */
      public Line {
        parts = List.copyOf(parts);
      }
    }

    /**
     * A symbol.
     *
     * @param mark its outline
     * @param size [px]
     * @param style fill and outline
     * @param letter what is written on it; may be empty
     */
    record Sign(Mark mark, double size, Style style, String letter) implements Swatch {}
  }
}
