package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the pictures of sweeps have in common: title, captions, lines and texts in pixels. */
final class SweepSheet {

  static final double WIDTH = 800;
  static final double MARGIN = 20;
  static final double TEXT = 12;
  static final double TICK = 11.5;
  private static final double TITLE = 19;
  private static final double NEXT = 17;
  private static final int MOST_CAPTION_LINES = 7;

  private final SweepPicture picture;
  private final List<Shape> shapes = new ArrayList<>();
  private final List<String> title;

  SweepSheet(SweepPicture picture) {
    this.picture = picture;
    this.title = TextLines.wrapped(picture.title(), TITLE, WIDTH - 2 * MARGIN, 3);
  }

  /** Draws the title; answers where the picture may begin. */
  double begin() {
    double y = MARGIN + TITLE - 2;
    for (String line : title) {
      shapes.add(text(line, MARGIN, y, TITLE, Anchor.START, Tint.Role.INK));
      y += TITLE + 6;
    }
    return y;
  }

  void add(String role, String name, List<Shape> parts) {
    shapes.add(new Shape.Group(role, name, parts));
  }

  /** Draws the captions below a place and puts all of it on paper. */
  Drawing end(double bottom, List<LegendEntry> legend) {
    double y = bottom;
    for (String caption : picture.captions()) {
      for (String line :
          TextLines.wrapped(caption, TEXT, 0.94 * (WIDTH - 2 * MARGIN), MOST_CAPTION_LINES)) {
        y += NEXT;
        shapes.add(text(line, MARGIN, y, TEXT, Anchor.START, Tint.Role.SOFT_INK));
      }
    }
    double height = Math.ceil(y + MARGIN);
    shapes.add(
        0,
        new Shape.Rectangle(
            WIDTH / 2, -height / 2, WIDTH, height, 0, Style.filled(Tint.Role.PAPER)));
    return new Drawing(
        new ViewBox(0, -height, WIDTH, height), WIDTH, shapes, legend, picture.alternative());
  }

  static Shape box(double left, double top, double width, double height, Style style) {
    return new Shape.Rectangle(left + width / 2, -top - height / 2, width, height, 0, style);
  }

  static Shape line(double x0, double y0, double x1, double y1, Stroke stroke) {
    return new Shape.Polyline(
        new Points(new double[] {x0, x1}, new double[] {-y0, -y1}), stroke, 0);
  }

  static Shape text(String text, double x, double y, double size, Anchor anchor, Tint tint) {
    return new Shape.Text(text, x, -y, size, anchor, tint, false);
  }

  static Shape mark(SweepPicture.Kind kind, double x, double y, double size) {
    return new Shape.Symbol(
        kind.mark(), x, -y, size, 0, Style.of(kind.ground(), Stroke.solid(Tint.Role.INK, 0.9)));
  }

  static Stroke grid() {
    return new Stroke(Tint.Role.PLATE_EDGE, 0.6, Dash.SOLID, 0.5);
  }

  /** A figure in few digits. */
  static String figure(double value) {
    if (value == 0) {
      return "0";
    }
    double size = Math.abs(value);
    if (size < 1e-3 || size >= 1e6) {
      String digits = String.format(Locale.ROOT, "%.2e", value);
      return digits
          .replaceAll("\\.?0*e", "e")
          .replace("e-0", "e−")
          .replace("e-", "e−")
          .replace("e+0", "e")
          .replace("e+", "e")
          .replaceFirst("^-", "−");
    }
    int decimals = Math.max(0, 3 - (int) Math.floor(Math.log10(size)));
    String digits = String.format(Locale.ROOT, "%." + decimals + "f", value);
    String plain =
        digits.contains(".") ? digits.replaceAll("0+$", "").replaceAll("\\.$", "") : digits;
    return plain.replaceFirst("^-", "−");
  }

  /** The next larger of 1, 2 and 5 times a power of ten. */
  static double step(double least) {
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    for (double factor : new double[] {1, 2, 5}) {
      if (factor * power >= least * (1 - 1e-12)) {
        return factor * power;
      }
    }
    return 10 * power;
  }
}
