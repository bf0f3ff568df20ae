package lodeswing.letters;

import java.util.List;

/**
 * A line of text set in glyphs; lengths in units of the font size.
 *
 * @param text what was set
 * @param rightToLeft whether it is read from the right
 * @param width advance of the whole line
 * @param glyphs from left to right, as the line is seen
 * @param plain whether the glyphs' own texts one after the other are the text
 */
public record SetLine(
    String text, boolean rightToLeft, double width, List<Glyph> glyphs, boolean plain) {

  /** Copies the list. */
  public SetLine {
    glyphs = List.copyOf(glyphs);
  }
}
