package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * What was measured over two quantities as a map of cells: words in their colours with their marks,
 * numbers from light to dark. Cells are of one size, in the order of the values. Model units are
 * pixels.
 */
public final class SweepMapFigure {

  private static final double LEFT = 96;
  private static final double LEGEND = 592;
  private static final double SIDE = 470;
  private static final double LEAST_MARKED = 9;
  private static final double MOST_CELL = 64;
  private static final int MOST_TICKS = 7;
  private static final int MOST_KINDS = 18;
  private static final int STEPS = 24;

  private final SweepPicture picture;
  private final SweepSheet sheet;
  private final int columns;
  private final int rows;
  private final double cell;
  private final double cellHeight;
  private double top;

  private SweepMapFigure(SweepPicture picture) {
    this.picture = picture;
    this.sheet = new SweepSheet(picture);
    this.columns = picture.axes().get(0).values().size();
    this.rows = picture.axes().get(1).values().size();
    this.cell = Math.min(MOST_CELL, SIDE / columns);
    this.cellHeight = Math.min(MOST_CELL, SIDE / rows);
  }

  /** Draws the picture; the same value gives the same drawing. */
  public static Drawing draw(SweepPicture picture) {
    return new SweepMapFigure(picture).drawing();
  }

  private Drawing drawing() {
    double begun = sheet.begin() + 14;
    SweepPicture.Panel panel = picture.panels().get(0);
    List<Shape> head = new ArrayList<>();
    head.add(
        SweepSheet.text(
            picture.axes().get(1).words(),
            SweepSheet.MARGIN,
            begun,
            SweepSheet.TEXT,
            Anchor.START,
            Tint.Role.INK));
    top = begun + 10;
    List<Shape> cells = new ArrayList<>();
    cells.add(
        SweepSheet.box(
            LEFT, top, columns * cell, rows * cellHeight, Style.filled(Tint.Role.PLATE)));
    List<Shape> legend = new ArrayList<>();
    List<LegendEntry> entries = new ArrayList<>();
    double below =
        panel instanceof SweepPicture.Panel.Words words
            ? words(words, cells, legend, entries)
            : numbers((SweepPicture.Panel.Numbers) panel, cells, legend);
    sheet.add("cells", panel.words(), cells);
    axes(head);
    sheet.add("axes", "", head);
    sheet.add("legend", "", legend);
    double bottom = top + rows * cellHeight + 40;
    return sheet.end(Math.max(bottom, below), entries);
  }

  private void axes(List<Shape> parts) {
    parts.add(
        SweepSheet.box(
            LEFT,
            top,
            columns * cell,
            rows * cellHeight,
            Style.outlined(Stroke.solid(Tint.Role.PLATE_EDGE, 1))));
    double bottom = top + rows * cellHeight;
    for (Tick tick : ticks(picture.axes().get(0))) {
      double x = LEFT + (tick.at() + 0.5) * cell;
      parts.add(SweepSheet.line(x, bottom, x, bottom + 4, Stroke.solid(Tint.Role.INK, 1)));
      parts.add(
          SweepSheet.text(
              tick.name(), x, bottom + 17, SweepSheet.TICK, Anchor.MIDDLE, Tint.Role.INK));
    }
    for (Tick tick : ticks(picture.axes().get(1))) {
      double y = bottom - (tick.at() + 0.5) * cellHeight;
      parts.add(SweepSheet.line(LEFT - 4, y, LEFT, y, Stroke.solid(Tint.Role.INK, 1)));
      parts.add(
          SweepSheet.text(
              tick.name(), LEFT - 8, y + 4, SweepSheet.TICK, Anchor.END, Tint.Role.INK));
    }
    parts.add(
        SweepSheet.text(
            picture.axes().get(0).words(),
            LEFT + columns * cell,
            bottom + 34,
            SweepSheet.TEXT,
            Anchor.END,
            Tint.Role.INK));
  }

  /**
   * A tick.
   *
   * @param at the place on the axis, the middle of cell k being k
   * @param name what stands there
   */
  private record Tick(double at, String name) {}

  /** Round values where the axis is even; else the values of some cells. */
  private static List<Tick> ticks(SweepPicture.Axis axis) {
    List<Tick> ticks = new ArrayList<>();
    int count = axis.values().size();
    if (even(axis.places())) {
      double first = axis.places().get(0);
      double last = axis.places().get(count - 1);
      double step = SweepSheet.step(Math.abs(last - first) / MOST_TICKS);
      double low = Math.min(first, last);
      for (double k = Math.ceil(low / step - 1e-9);
          k * step <= Math.max(first, last) + 1e-9 * step;
          k++) {
        double at = (count - 1) * (k * step - first) / (last - first);
        ticks.add(new Tick(at, SweepSheet.figure(k * step)));
      }
      return ticks;
    }
    for (int i = 0; i < count; i += 1 + (count - 1) / MOST_TICKS) {
      String name =
          axis.places().isEmpty() ? axis.values().get(i) : SweepSheet.figure(axis.places().get(i));
      ticks.add(new Tick(i, name.length() <= 10 ? name : name.substring(0, 9) + "…"));
    }
    return ticks;
  }

  private static boolean even(List<Double> places) {
    if (places.size() < 3) {
      return false;
    }
    double step = (places.get(places.size() - 1) - places.get(0)) / (places.size() - 1);
    for (int i = 0; i < places.size(); i++) {
      if (Math.abs(places.get(i) - places.get(0) - i * step) > 1e-6 * Math.abs(step)) {
        return false;
      }
    }
    return true;
  }

  private double left(int point) {
    int column = point / rows;
    return LEFT + column * cell;
  }

  private double upper(int point) {
    return top + (rows - 1 - point % rows) * cellHeight;
  }

  /** A cell in which there is nothing: a stroke across, no colour. */
  private Shape nothing(double left, double upper, double width, double height) {
    return SweepSheet.line(
        left + 0.2 * width,
        upper + 0.8 * height,
        left + 0.8 * width,
        upper + 0.2 * height,
        Stroke.solid(Tint.Role.SOFT_INK, 0.9));
  }

  private double words(
      SweepPicture.Panel.Words panel,
      List<Shape> cells,
      List<Shape> legend,
      List<LegendEntry> entries) {
    boolean gaps = false;
    double least = Math.min(cell, cellHeight);
    for (int i = 0; i < panel.which().size(); i++) {
      int kind = panel.which().get(i);
      if (kind < 0) {
        gaps = true;
        cells.add(nothing(left(i), upper(i), cell, cellHeight));
      } else {
        SweepPicture.Kind of = panel.kinds().get(kind);
        cells.add(SweepSheet.box(left(i), upper(i), cell, cellHeight, Style.filled(of.ground())));
        if (least >= LEAST_MARKED) {
          cells.add(
              new Shape.Symbol(
                  of.mark(),
                  left(i) + cell / 2,
                  -upper(i) - cellHeight / 2,
                  Math.min(12, 0.5 * least),
                  0,
                  Style.filled(of.ink())));
        }
      }
    }
    double y = heading(panel.words(), legend);
    int shown = Math.min(MOST_KINDS, panel.kinds().size());
    for (int k = 0; k < shown; k++) {
      SweepPicture.Kind kind = panel.kinds().get(k);
      legend.add(SweepSheet.box(LEGEND, y, 26, 18, Style.filled(kind.ground())));
      legend.add(
          new Shape.Symbol(kind.mark(), LEGEND + 13, -y - 9, 10, 0, Style.filled(kind.ink())));
      entries.add(
          new LegendEntry(
              new LegendEntry.Swatch.Sign(kind.mark(), 10, Style.filled(kind.ground()), ""),
              kind.name()));
      y = name(kind.name(), y, legend);
    }
    if (shown < panel.kinds().size()) {
      y = name((panel.kinds().size() - shown) + " others, by their marks", y, legend);
    }
    return gaps ? gap(y, legend) : y;
  }

  private double heading(String words, List<Shape> legend) {
    double y = top + SweepSheet.TEXT - 2;
    for (String line :
        TextLines.wrapped(
            words, SweepSheet.TEXT, SweepSheet.WIDTH - SweepSheet.MARGIN - LEGEND, 3)) {
      legend.add(SweepSheet.text(line, LEGEND, y, SweepSheet.TEXT, Anchor.START, Tint.Role.INK));
      y += 16;
    }
    return y;
  }

  private static double name(String name, double top, List<Shape> legend) {
    double y = top + 13;
    for (String line :
        TextLines.wrapped(
            name, SweepSheet.TEXT, SweepSheet.WIDTH - SweepSheet.MARGIN - LEGEND - 34, 3)) {
      legend.add(
          SweepSheet.text(line, LEGEND + 34, y, SweepSheet.TEXT, Anchor.START, Tint.Role.INK));
      y += 15.5;
    }
    return Math.max(top + 24, y - 6);
  }

  private double gap(double y, List<Shape> legend) {
    legend.add(SweepSheet.box(LEGEND, y, 26, 18, Style.filled(Tint.Role.PLATE)));
    legend.add(nothing(LEGEND + 4, y, 18, 18));
    return name("nothing to tell", y, legend);
  }

  private double numbers(SweepPicture.Panel.Numbers panel, List<Shape> cells, List<Shape> legend) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    boolean gaps = false;
    for (double figure : panel.values()) {
      gaps |= Double.isNaN(figure);
      low = Double.isNaN(figure) ? low : Math.min(low, figure);
      high = Double.isNaN(figure) ? high : Math.max(high, figure);
    }
    for (int i = 0; i < panel.values().size(); i++) {
      double figure = panel.values().get(i);
      if (Double.isNaN(figure)) {
        cells.add(nothing(left(i), upper(i), cell, cellHeight));
      } else {
        double place = high > low ? (figure - low) / (high - low) : 0.5;
        cells.add(
            SweepSheet.box(
                left(i), upper(i), cell, cellHeight, Style.filled(new Tint.Level(0, place))));
      }
    }
    double y = heading(panel.words(), legend);
    if (low <= high) {
      y = scale(low, high, y, legend);
    }
    return gaps ? gap(y, legend) : y;
  }

  private static double scale(double low, double high, double top, List<Shape> legend) {
    double tall = 200.0 / STEPS;
    for (int k = 0; k < STEPS; k++) {
      double place = 1 - (k + 0.5) / STEPS;
      legend.add(
          SweepSheet.box(
              LEGEND, top + k * tall, 26, tall + 0.5, Style.filled(new Tint.Level(0, place))));
    }
    for (int k = 0; k <= 4; k++) {
      double y = top + 200 * (1 - k / 4.0);
      legend.add(SweepSheet.line(LEGEND + 26, y, LEGEND + 31, y, Stroke.solid(Tint.Role.INK, 1)));
      legend.add(
          SweepSheet.text(
              SweepSheet.figure(low + k / 4.0 * (high - low)),
              LEGEND + 36,
              y + 4,
              SweepSheet.TICK,
              Anchor.START,
              Tint.Role.INK));
    }
    return top + 222;
  }
}
