package lodeswing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lodeswing.figure.Anchor;
import lodeswing.figure.Shape;
import lodeswing.figure.Tint;

/** The line at the foot of a page: what the sheet is, and which page. */
final class PageFoot {

  /** What it takes over the lower margin. */
  static final double ROOM = 6 * Ink.MM;

  private static final double SIZE = 8;
  private static final double GAP = 4 * Ink.MM;

  private PageFoot() {}

  /**
   * The line; a name that is too long is cut where it would meet the number.
   *
   * @param number which page of how many, in words
   */
  static PageItem.Block of(String name, String number, Paper.Format format, Locale locale) {
    double margin = Tiling.MARGIN;
    double right = format.width() - margin;
    double room = right - margin - Ink.width(number, SIZE) - GAP;
    List<Shape> shapes = new ArrayList<>();
    shapes.add(
        Ink.text(
            Ink.lines(name, room, SIZE, locale).get(0),
            margin,
            margin,
            SIZE,
            Anchor.START,
            Tint.Role.SOFT_INK));
    shapes.add(Ink.text(number, right, margin, SIZE, Anchor.END, Tint.Role.SOFT_INK));
    return PageItem.of(Tag.ORNAMENT, shapes);
  }
}
