package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * What was measured over one quantity, a panel below the other: numbers as lines with their
 * intervals as bands, words as marks in rows. Model units are pixels.
 */
public final class SweepLinesFigure {

  private static final double LEFT = 170;
  private static final double RIGHT = 776;
  private static final double HEIGHT = 150;
  private static final double ROW = 26;
  private static final double BETWEEN = 38;
  private static final double MARK = 10;
  private static final double ROOM = 0.06;
  private static final int MOST_ROWS = 14;
  private static final int MOST_TICKS = 8;
  private static final int MOST_DOTS = 80;

  private final SweepPicture picture;
  private final SweepSheet sheet;
  private final double least;
  private final double most;

  private SweepLinesFigure(SweepPicture picture) {
    this.picture = picture;
    this.sheet = new SweepSheet(picture);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < axis().values().size(); i++) {
      low = Math.min(low, place(i));
      high = Math.max(high, place(i));
    }
    this.least = low;
    this.most = high;
  }

  /** Draws the picture; the same value gives the same drawing. */
  public static Drawing draw(SweepPicture picture) {
    return new SweepLinesFigure(picture).drawing();
  }

  private SweepPicture.Axis axis() {
    return picture.axes().get(0);
  }

  private double place(int i) {
    return axis().places().isEmpty() ? i : axis().places().get(i);
  }

  private double x(double place) {
    double inset = 0.02 * (RIGHT - LEFT);
    return most > least
        ? LEFT + inset + (RIGHT - LEFT - 2 * inset) * (place - least) / (most - least)
        : (LEFT + RIGHT) / 2;
  }

  private Drawing drawing() {
    double y = sheet.begin() + 14;
    for (SweepPicture.Panel panel : picture.panels()) {
      List<Shape> parts = new ArrayList<>();
      parts.add(
          SweepSheet.text(
              panel.words(), SweepSheet.MARGIN, y, SweepSheet.TEXT, Anchor.START, Tint.Role.INK));
      y += 8;
      double high = panel instanceof SweepPicture.Panel.Words words ? rows(words) * ROW : HEIGHT;
      parts.add(
          SweepSheet.box(
              LEFT,
              y,
              RIGHT - LEFT,
              high,
              Style.of(Tint.Role.PLATE, Stroke.solid(Tint.Role.PLATE_EDGE, 1))));
      ticks(y, y + high, parts);
      if (panel instanceof SweepPicture.Panel.Numbers numbers) {
        numbers(numbers, y, parts);
      } else if (panel instanceof SweepPicture.Panel.Words words) {
        words(words, y, parts);
      }
      sheet.add("measure", panel.words(), parts);
      y += high + BETWEEN;
    }
    double bottom = y - BETWEEN + 36;
    sheet.add(
        "axis",
        "",
        List.of(
            SweepSheet.text(
                axis().words(), RIGHT, bottom, SweepSheet.TEXT, Anchor.END, Tint.Role.INK)));
    return sheet.end(bottom + 6, List.of());
  }

  private static int rows(SweepPicture.Panel.Words words) {
    return Math.max(1, Math.min(MOST_ROWS, words.kinds().size()));
  }

  private void ticks(double top, double bottom, List<Shape> parts) {
    if (axis().places().isEmpty() || !(most > least)) {
      int count = axis().values().size();
      int stride = 1 + (count - 1) / MOST_TICKS;
      for (int i = 0; i < count; i += stride) {
        tick(x(place(i)), top, bottom, axis().values().get(i), parts);
      }
      return;
    }
    double step = SweepSheet.step((most - least) / MOST_TICKS);
    for (double k = Math.ceil(least / step - 1e-9); k * step <= most + 1e-9 * step; k++) {
      tick(x(k * step), top, bottom, SweepSheet.figure(k * step), parts);
    }
  }

  private static void tick(double x, double top, double bottom, String name, List<Shape> parts) {
    parts.add(SweepSheet.line(x, top, x, bottom, SweepSheet.grid()));
    parts.add(SweepSheet.text(name, x, bottom + 15, SweepSheet.TICK, Anchor.MIDDLE, Tint.Role.INK));
  }

  private void numbers(SweepPicture.Panel.Numbers panel, double top, List<Shape> parts) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (List<Double> figures : List.of(panel.values(), panel.low(), panel.high())) {
      for (double figure : figures) {
        low = Double.isNaN(figure) ? low : Math.min(low, figure);
        high = Double.isNaN(figure) ? high : Math.max(high, figure);
      }
    }
    if (low > high) {
      parts.add(
          SweepSheet.text(
              "nothing to tell at any point",
              (LEFT + RIGHT) / 2,
              top + HEIGHT / 2,
              SweepSheet.TEXT,
              Anchor.MIDDLE,
              Tint.Role.SOFT_INK));
      return;
    }
    double room = high > low ? ROOM * (high - low) : Math.max(1e-9, 0.1 * Math.abs(high));
    var scale = new Scale(low - room, high + room, top);
    double step = SweepSheet.step((scale.high - scale.low) / 5);
    for (double k = Math.ceil(scale.low / step); k * step <= scale.high; k++) {
      double y = scale.y(k * step);
      parts.add(SweepSheet.line(LEFT, y, RIGHT, y, SweepSheet.grid()));
      parts.add(
          SweepSheet.text(
              SweepSheet.figure(k * step),
              LEFT - 8,
              y + 4,
              SweepSheet.TICK,
              Anchor.END,
              Tint.Role.INK));
    }
    for (int[] run : runs(panel.low())) {
      band(panel, run, scale, parts);
    }
    for (int[] run : runs(panel.values())) {
      curve(panel, run, scale, parts);
    }
  }

  /** Stretches without a gap: first and last point. */
  private static List<int[]> runs(List<Double> figures) {
    List<int[]> runs = new ArrayList<>();
    int begun = -1;
    for (int i = 0; i <= figures.size(); i++) {
      boolean there = i < figures.size() && !Double.isNaN(figures.get(i));
      if (there && begun < 0) {
        begun = i;
      } else if (!there && begun >= 0) {
        runs.add(new int[] {begun, i - 1});
        begun = -1;
      }
    }
    return runs;
  }

  private void band(SweepPicture.Panel.Numbers panel, int[] run, Scale scale, List<Shape> parts) {
    int count = run[1] - run[0] + 1;
    Tint tint = new Tint.Level(0, 0.22);
    if (count == 1) {
      double x = x(place(run[0]));
      parts.add(
          SweepSheet.line(
              x,
              scale.y(panel.low().get(run[0])),
              x,
              scale.y(panel.high().get(run[0])),
              Stroke.solid(tint, 7)));
      return;
    }
    double[] xs = new double[2 * count];
    double[] ys = new double[2 * count];
    for (int i = 0; i < count; i++) {
      int back = 2 * count - 1 - i;
      xs[i] = x(place(run[0] + i));
      xs[back] = xs[i];
      ys[i] = -scale.y(panel.low().get(run[0] + i));
      ys[back] = -scale.y(panel.high().get(run[0] + i));
    }
    parts.add(new Shape.Polygon(new Points(xs, ys), Style.filled(tint)));
  }

  private void curve(SweepPicture.Panel.Numbers panel, int[] run, Scale scale, List<Shape> parts) {
    int count = run[1] - run[0] + 1;
    double[] xs = new double[count];
    double[] ys = new double[count];
    for (int i = 0; i < count; i++) {
      xs[i] = x(place(run[0] + i));
      ys[i] = -scale.y(panel.values().get(run[0] + i));
    }
    Tint tint = new Tint.Level(0, 0.78);
    if (count > 1) {
      parts.add(new Shape.Polyline(new Points(xs, ys), Stroke.solid(tint, 1.8), 0));
    }
    if (panel.values().size() <= MOST_DOTS || count == 1) {
      for (int i = 0; i < count; i++) {
        parts.add(new Shape.Symbol(Mark.DISC, xs[i], ys[i], 5, 0, Style.filled(tint)));
      }
    }
  }

  private void words(SweepPicture.Panel.Words panel, double top, List<Shape> parts) {
    int rows = rows(panel);
    for (int row = 0; row < Math.min(rows, panel.kinds().size()); row++) {
      double y = top + (row + 0.5) * ROW;
      boolean rest = row == MOST_ROWS - 1 && panel.kinds().size() > MOST_ROWS;
      String name =
          rest ? (panel.kinds().size() - MOST_ROWS + 1) + " others" : panel.kinds().get(row).name();
      List<String> lines =
          TextLines.wrapped(name, SweepSheet.TICK, LEFT - SweepSheet.MARGIN - 10, 2);
      double baseline = y + 4 - (lines.size() - 1) * 6.5;
      for (String line : lines) {
        parts.add(
            SweepSheet.text(line, LEFT - 8, baseline, SweepSheet.TICK, Anchor.END, Tint.Role.INK));
        baseline += 13;
      }
      parts.add(SweepSheet.line(LEFT, y, RIGHT, y, SweepSheet.grid()));
    }
    double size = Math.min(MARK, Math.max(3, 0.9 * (RIGHT - LEFT) / panel.which().size()));
    for (int i = 0; i < panel.which().size(); i++) {
      int kind = panel.which().get(i);
      if (kind >= 0) {
        double y = top + (Math.min(kind, rows - 1) + 0.5) * ROW;
        parts.add(SweepSheet.mark(panel.kinds().get(kind), x(place(i)), y, size));
      }
    }
  }

  /** An upright axis. */
  private record Scale(double low, double high, double top) {
    double y(double value) {
      return top + HEIGHT * (high - value) / (high - low);
    }
  }
}
