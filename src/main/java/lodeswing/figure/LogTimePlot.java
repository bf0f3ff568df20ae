package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The page of a picture of distances over time: distances on a logarithmic axis, time on an even
 * one, title above, legend beside, captions below. Model units are pixels.
 */
final class LogTimePlot {
  static final double WIDTH = 800;
  static final double MARGIN = 20;
  static final double LEFT = 84;
  static final double RIGHT = 560;
  static final double HEIGHT = 360;
  private static final double LEGEND_LEFT = 580;
  private static final double LEGEND_TEXT = 38;
  private static final double TITLE_SIZE = 19;
  private static final double TEXT_SIZE = 12;
  private static final double TICK_SIZE = 11.5;
  private static final double LINE = 17;
  private static final int MOST_LINES = 6;
  private static final int MOST_POWERS = 9;
  private static final int MOST_TICKS = 7;

  private final Measure measure;
  private final List<String> title;
  private final Span time;
  private final Powers powers;
  private final double top;

  /**
   * A page.
   *
   * @param measure units of its figures
   * @param title of the picture
   * @param time what its time axis shows
   * @param powers what its other axis shows
   */
  LogTimePlot(Measure measure, String title, Span time, Powers powers) {
    this.measure = measure;
    this.title = TextLines.wrapped(title, TITLE_SIZE, WIDTH - 2 * MARGIN, 2);
    this.time = time;
    this.powers = powers;
    this.top = MARGIN + this.title.size() * (TITLE_SIZE + 6) + 26;
  }

  /**
   * An even axis.
   *
   * @param begin its begin
   * @param end its end, after that
   */
  record Span(double begin, double end) {}

  /**
   * A logarithmic axis, in powers of ten of the shown unit.
   *
   * @param lowest its lower end
   * @param highest its upper end, above that
   */
  record Powers(int lowest, int highest) {}

  double top() {
    return top;
  }

  double bottom() {
    return top + HEIGHT;
  }

  double pixelX(double at) {
    return LEFT + (RIGHT - LEFT) * (at - time.begin()) / (time.end() - time.begin());
  }

  /** Place of a distance in model units, cut to the plot. */
  double pixelY(double distance) {
    double power = Math.log10(distance * measure.shownPerUnit());
    double part = (power - powers.lowest()) / (powers.highest() - powers.lowest());
    return bottom() - HEIGHT * Math.max(0, Math.min(1, part));
  }

  /**
   * The whole picture.
   *
   * @param groups what is drawn over the axes
   * @param quantity what the logarithmic axis shows
   * @param legend what it all means
   * @param captions lines below
   * @param alternative the same in words
   */
  Drawing drawing(
      List<Shape> groups,
      String quantity,
      List<LegendEntry> legend,
      List<String> captions,
      AlternativeText alternative) {
    List<Shape> shapes = new ArrayList<>();
    double y = MARGIN + TITLE_SIZE - 2;
    for (String line : title) {
      shapes.add(text(line, MARGIN, y, TITLE_SIZE, Anchor.START, Tint.Role.INK));
      y += TITLE_SIZE + 6;
    }
    shapes.add(new Shape.Group("axes", "", axes(quantity)));
    shapes.addAll(groups);
    double below = drawLegend(legend, shapes);
    below = Math.max(below, bottom() + 44);
    for (String caption : captions) {
      for (String line : TextLines.wrapped(caption, TEXT_SIZE, 0.94 * (WIDTH - 2 * MARGIN), 4)) {
        below += LINE;
        shapes.add(text(line, MARGIN, below, TEXT_SIZE, Anchor.START, Tint.Role.SOFT_INK));
      }
    }
    double height = Math.ceil(below + MARGIN);
    shapes.add(
        0,
        new Shape.Rectangle(
            WIDTH / 2, -height / 2, WIDTH, height, 0, Style.filled(Tint.Role.PAPER)));
    return new Drawing(new ViewBox(0, -height, WIDTH, height), WIDTH, shapes, legend, alternative);
  }

  private List<Shape> axes(String quantity) {
    List<Shape> shapes = new ArrayList<>();
    shapes.add(
        new Shape.Rectangle(
            (LEFT + RIGHT) / 2,
            -(top + HEIGHT / 2),
            RIGHT - LEFT,
            HEIGHT,
            0,
            Style.of(Tint.Role.PLATE, Stroke.solid(Tint.Role.PLATE_EDGE, 1))));
    powers(shapes);
    ticks(shapes);
    String length = measure.length();
    String unit = measure.time();
    shapes.add(
        text(
            length.isEmpty() ? quantity : quantity + " in " + length,
            MARGIN,
            top - 10,
            TEXT_SIZE,
            Anchor.START,
            Tint.Role.INK));
    shapes.add(
        text(
            unit.isEmpty() ? "time" : "time in " + unit,
            RIGHT,
            bottom() + 34,
            TEXT_SIZE,
            Anchor.END,
            Tint.Role.INK));
    return shapes;
  }

  private void powers(List<Shape> shapes) {
    int lowest = powers.lowest();
    int highest = powers.highest();
    int stride = 1 + (highest - lowest) / MOST_POWERS;
    for (int power = lowest; power <= highest; power++) {
      double y = bottom() - HEIGHT * (power - lowest) / (highest - lowest);
      if (power > lowest && power < highest) {
        shapes.add(line(LEFT, y, RIGHT, y, grid()));
      }
      if ((highest - power) % stride == 0) {
        shapes.add(text(power(power), LEFT - 8, y + 4, TICK_SIZE, Anchor.END, Tint.Role.INK));
      }
    }
  }

  private void ticks(List<Shape> shapes) {
    double step = RoundStep.atLeast((time.end() - time.begin()) / MOST_TICKS);
    for (long i = (long) Math.ceil(time.begin() / step - 1e-9);
        i * step <= time.end() * (1 + 1e-9);
        i++) {
      double x = pixelX(i * step);
      if (x > LEFT + 1 && x < RIGHT - 1) {
        shapes.add(line(x, top, x, bottom(), grid()));
      }
      shapes.add(text(tick(i * step), x, bottom() + 16, TICK_SIZE, Anchor.MIDDLE, Tint.Role.INK));
    }
  }

  private static Stroke grid() {
    return new Stroke(Tint.Role.PLATE_EDGE, 0.6, Dash.SOLID, 0.5);
  }

  /** A line through values at times. */
  Shape polyline(double[] t, double[] values, Stroke stroke) {
    // A line has two points, also where one time alone is known.
    double[] x = new double[Math.max(2, t.length)];
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      int at = Math.min(i, t.length - 1);
      x[i] = pixelX(t[at]);
      y[i] = -pixelY(values[at]);
    }
    return new Shape.Polyline(new Points(x, y), stroke, 0);
  }

  /** A line across the plot at a distance. */
  Shape level(double distance, Stroke stroke) {
    double y = pixelY(distance);
    return line(LEFT, y, RIGHT, y, stroke);
  }

  /** A line up the plot at a time. */
  Shape moment(double at, Stroke stroke) {
    double x = pixelX(at);
    return line(x, top, x, bottom(), stroke);
  }

  /** Draws the legend beside the plot; answers its lower edge. */
  private double drawLegend(List<LegendEntry> legend, List<Shape> shapes) {
    List<Shape> parts = new ArrayList<>();
    double y = top + TEXT_SIZE;
    for (LegendEntry entry : legend) {
      double middle = y - 0.36 * TEXT_SIZE;
      if (entry.swatch() instanceof LegendEntry.Swatch.Line swatch) {
        parts.add(line(LEGEND_LEFT, middle, LEGEND_LEFT + 30, middle, swatch.parts().get(0)));
      } else if (entry.swatch() instanceof LegendEntry.Swatch.Sign sign) {
        parts.add(
            new Shape.Symbol(sign.mark(), LEGEND_LEFT + 15, -middle, sign.size(), 0, sign.style()));
      }
      for (String line :
          TextLines.wrapped(
              entry.text(), TEXT_SIZE, WIDTH - MARGIN - LEGEND_LEFT - LEGEND_TEXT, MOST_LINES)) {
        parts.add(text(line, LEGEND_LEFT + LEGEND_TEXT, y, TEXT_SIZE, Anchor.START, Tint.Role.INK));
        y += 15.5;
      }
      y += 7;
    }
    shapes.add(new Shape.Group("legend", "", parts));
    return y;
  }

  static LegendEntry entry(Stroke stroke, String text) {
    return new LegendEntry(new LegendEntry.Swatch.Line(List.of(stroke)), text);
  }

  static Shape line(double fromX, double fromY, double toX, double toY, Stroke stroke) {
    return new Shape.Polyline(
        new Points(new double[] {fromX, toX}, new double[] {-fromY, -toY}), stroke, 0);
  }

  private static Shape text(
      String text, double x, double y, double size, Anchor anchor, Tint tint) {
    return new Shape.Text(text, x, -y, size, anchor, tint, false);
  }

  /** A power of ten, written out as far as that is short. */
  private static String power(int power) {
    if (power >= -4 && power <= 5) {
      return tick(Math.pow(10, power));
    }
    return "1e" + (power < 0 ? "−" + -power : "" + power);
  }

  private static String tick(double value) {
    String digits = String.format(Locale.ROOT, "%.6f", value);
    return digits.replaceAll("0+$", "").replaceAll("\\.$", "");
  }
}
