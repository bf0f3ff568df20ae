package lodeswing.letters;

/**
 * One glyph of a line that was set; lengths in units of the font size.
 *
 * @param typeface whose glyph it is
 * @param code its number in the typeface
 * @param x place of its origin from the line's left end
 * @param y height of its origin over the baseline
 * @param text what it stands for, in the order of reading; empty for a part of the glyph before it
 */
public record Glyph(Typeface typeface, int code, double x, double y, String text) {}
