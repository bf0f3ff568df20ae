package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;

/** Chances as bars with their intervals, each with the colour and pattern of its end in a map. */
public final class ChanceFigure {

  private static final double WIDTH = 640;
  private static final double MARGIN = 16;
  private static final double NAMES = 170;
  private static final double LEFT = MARGIN + NAMES + 10;
  private static final double FIGURES = 76;
  private static final double SPAN = WIDTH - LEFT - FIGURES - MARGIN;
  private static final double TITLE = 16;
  private static final double SIZE = 13;
  private static final double SMALL = 11;
  private static final double NEXT = 15;
  private static final int BAR = 20;
  private static final double ROW = 34;
  private static final double CAP = 5;
  private static final int MOST_LINES = 3;
  private static final int MOST_NOTES = 8;

  private ChanceFigure() {}

  /**
   * One end.
   *
   * @param name what it is called
   * @param chance 0 to 1
   * @param low lower end of the interval
   * @param high upper end
   * @param ground colour of its bar
   * @param ink colour of the pattern's ink
   * @param pattern its pattern
   */
  public record Bar(
      String name, double chance, double low, double high, Tint ground, Tint ink, Pattern pattern) {

    /** Clears the name of anything that is not text. */
    public Bar {
      name = PlainText.of(name);
    }
  }

  /**
   * Draws the bars.
   *
   * @param title what the chances are of
   * @param bars the ends in order
   * @param note a sentence or two below
   * @param alternative the result in words
   */
  public static Drawing draw(
      String title, List<Bar> bars, String note, AlternativeText alternative) {
    List<Shape> shapes = new ArrayList<>();
    double y = MARGIN;
    for (String line : TextLines.wrapped(title, TITLE, WIDTH - 2 * MARGIN, MOST_LINES)) {
      shapes.add(text(line, MARGIN, y + TITLE, TITLE, Anchor.START, Tint.Role.INK));
      y += TITLE + 5;
    }
    double top = y + 12;
    y = top;
    List<Shape> rows = new ArrayList<>();
    for (Bar bar : bars) {
      rows.add(row(bar, y));
      y += ROW;
    }
    shapes.addAll(scale(top, y));
    shapes.addAll(rows);
    y += 22;
    for (String line : TextLines.wrapped(note, SMALL, WIDTH - 2 * MARGIN, MOST_NOTES)) {
      y += NEXT;
      shapes.add(text(line, MARGIN, y, SMALL, Anchor.START, Tint.Role.SOFT_INK));
    }
    double height = y + MARGIN;
    shapes.add(
        0,
        new Shape.Rectangle(
            WIDTH / 2, -height / 2, WIDTH, height, 0, Style.filled(Tint.Role.PAPER)));
    return new Drawing(
        new ViewBox(0, -height, WIDTH, height), WIDTH, shapes, List.of(), alternative);
  }

  private static List<Shape> scale(double top, double bottom) {
    List<Shape> shapes = new ArrayList<>();
    for (int percent = 0; percent <= 100; percent += 25) {
      double x = LEFT + SPAN * percent / 100;
      shapes.add(line(x, top - 4, x, bottom - ROW + BAR + 6, Tint.Role.PLATE_EDGE, 0.7));
      shapes.add(
          text(
              percent + " %",
              x,
              bottom - ROW + BAR + 20,
              SMALL,
              Anchor.MIDDLE,
              Tint.Role.SOFT_INK));
    }
    return shapes;
  }

  private static Shape row(Bar bar, double y) {
    List<Shape> parts = new ArrayList<>();
    List<String> name = TextLines.wrapped(bar.name(), SIZE, NAMES, 2);
    double baseline = y + BAR / 2.0 + 4.5 - (name.size() - 1) * NEXT / 2;
    for (String line : name) {
      parts.add(text(line, LEFT - 10, baseline, SIZE, Anchor.END, Tint.Role.INK));
      baseline += NEXT;
    }
    int columns = (int) Math.rint(SPAN * bar.chance());
    if (columns > 0) {
      Style style = Style.of(bar.ground(), Stroke.solid(Tint.Role.INK, 1));
      parts.add(
          new Shape.Rectangle(
              LEFT + columns / 2.0, -y - BAR / 2.0, columns, BAR, 0, Style.filled(bar.ground())));
      parts.add(new Shape.Inked(bar.pattern(), LEFT, -y, columns, BAR, bar.ink()));
      parts.add(
          new Shape.Rectangle(
              LEFT + columns / 2.0,
              -y - BAR / 2.0,
              columns,
              BAR,
              0,
              Style.outlined(style.stroke().orElseThrow())));
    }
    double middle = y + BAR / 2.0;
    double from = LEFT + SPAN * bar.low();
    double to = LEFT + SPAN * bar.high();
    for (Tint.Role role : List.of(Tint.Role.PAPER, Tint.Role.INK)) {
      // Paper below the ink, so that the interval stands out on a dark bar.
      double width = role == Tint.Role.PAPER ? 4.5 : 1.6;
      parts.add(line(from, middle, to, middle, role, width));
      parts.add(line(from, middle - CAP, from, middle + CAP, role, width));
      parts.add(line(to, middle - CAP, to, middle + CAP, role, width));
    }
    parts.add(
        text(percent(bar.chance()), WIDTH - MARGIN, middle + 4.5, SIZE, Anchor.END, Tint.Role.INK));
    return new Shape.Group("chance", bar.name(), parts);
  }

  private static String percent(double chance) {
    return String.format(java.util.Locale.ROOT, "%.1f %%", 100 * chance);
  }

  private static Shape line(double x0, double y0, double x1, double y1, Tint tint, double width) {
    return new Shape.Polyline(
        new Points(new double[] {x0, x1}, new double[] {-y0, -y1}), Stroke.solid(tint, width), 0);
  }

  private static Shape text(
      String text, double x, double y, double size, Anchor anchor, Tint tint) {
    return new Shape.Text(text, x, -y, size, anchor, tint, false);
  }
}
