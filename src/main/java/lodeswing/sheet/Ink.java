package lodeswing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lodeswing.figure.Anchor;
import lodeswing.figure.Dash;
import lodeswing.figure.Points;
import lodeswing.figure.Shape;
import lodeswing.figure.Stroke;
import lodeswing.figure.Tint;
import lodeswing.letters.Typesetter;

/** Lines and text of a page: places in metres, sizes of text in points, lines in millimetres. */
final class Ink {

  /** Metres to the millimetre. */
  static final double MM = 1e-3;

  /** Metres to the point. */
  static final double POINT = 0.0254 / 72;

  /** From one baseline to the next, of the size. */
  static final double LEADING = 1.32;

  /** Height of capitals, of the size. */
  static final double CAPITALS = 0.73;

  private static final double PIXELS_PER_MM = Page.PIXELS * MM;

  private Ink() {}

  /** A solid line. */
  static Stroke line(Tint tint, double widthMm) {
    return Stroke.solid(tint, widthMm * PIXELS_PER_MM);
  }

  static Stroke dashed(Tint tint, double widthMm) {
    return line(tint, widthMm).with(Dash.DASHED);
  }

  static Shape segment(double fromX, double fromY, double toX, double toY, Stroke stroke) {
    return new Shape.Polyline(
        new Points(new double[] {fromX, toX}, new double[] {fromY, toY}), stroke, 0);
  }

  /** Two lines of an upright cross. */
  static List<Shape> cross(double x, double y, double arm, Stroke stroke) {
    return List.of(
        segment(x - arm, y, x + arm, y, stroke), segment(x, y - arm, x, y + arm, stroke));
  }

  /** A line of text; its baseline lies at y. */
  static Shape text(String text, double x, double y, double points, Anchor anchor, Tint tint) {
    return new Shape.Text(text, x, y, points * Page.POINT, anchor, tint, false);
  }

  /** Width of a line of text [m]. */
  static double width(String text, double points) {
    return Typesetter.width(text, points * POINT);
  }

  /** Lines of a text that fit a width [m]. */
  static List<String> lines(String text, double width, double points, Locale locale) {
    return Typesetter.lines(text, width / (points * POINT), locale);
  }

  /** Height of so many lines [m]. */
  static double height(int lines, double points) {
    return lines * points * POINT * LEADING;
  }

  /**
   * Lines one below the other; what is read from the right stands at the right edge.
   *
   * @param top upper edge of the first line's space
   */
  static List<Shape> block(
      List<String> lines, double left, double top, double width, double points, Tint tint) {
    List<Shape> shapes = new ArrayList<>();
    double baseline = top - points * POINT * (LEADING + CAPITALS) / 2;
    for (String line : lines) {
      boolean back = Typesetter.line(line).rightToLeft();
      shapes.add(
          text(
              line,
              back ? left + width : left,
              baseline,
              points,
              back ? Anchor.END : Anchor.START,
              tint));
      baseline -= points * POINT * LEADING;
    }
    return shapes;
  }
}
