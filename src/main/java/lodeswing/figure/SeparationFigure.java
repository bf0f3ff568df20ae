package lodeswing.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * The picture of a separation over time: distance on a logarithmic axis, time on an even one.
 *
 * <p>The distance with velocities is a strong line, that in plan alone, which falls to nothing
 * whenever the two paths cross, a thin one; the fitted growth is dashed. Model units are pixels.
 */
public final class SeparationFigure {
  private static final double WIDTH = 800;
  private static final double MARGIN = 20;
  private static final double PLOT_LEFT = 84;
  private static final double PLOT_RIGHT = 560;
  private static final double PLOT_HEIGHT = 360;
  private static final double LEGEND_LEFT = 580;
  private static final double LEGEND_TEXT = 38;
  private static final double TITLE_SIZE = 19;
  private static final double TEXT_SIZE = 12;
  private static final double TICK_SIZE = 11.5;
  private static final double LINE = 17;
  private static final int MOST_LINES = 6;

  /** Distances below the least of the strong line by so many powers of ten are cut off. */
  private static final double BELOW = 1;

  /** How far the axis goes on beyond what is known, as a multiple of that. */
  private static final double SHOWN_BEYOND = 1.15;

  private static final int MOST_POWERS = 9;
  private static final int MOST_TICKS = 7;

  private final SeparationPicture picture;
  private final PathWords words;
  private final double plotTop;
  private final int lowest;
  private final int highest;

  private SeparationFigure(SeparationPicture picture, double plotTop) {
    this.picture = picture;
    this.words = new PathWords(picture.measure());
    this.plotTop = plotTop;
    double unit = picture.measure().shownPerUnit();
    double least = Arrays.stream(picture.phaseDistances()).min().orElseThrow() * unit;
    double most =
        unit
            * Math.max(
                picture.level().distance(),
                Arrays.stream(picture.phaseDistances()).max().orElseThrow());
    int top = (int) Math.ceil(Math.log10(most) - 1e-9);
    this.lowest = Math.min(top - 1, (int) Math.floor(Math.log10(least) - BELOW / 2));
    this.highest = top;
  }

  /** Draws the picture; the same value gives the same drawing. */
  public static Drawing draw(SeparationPicture picture) {
    List<String> title = TextLines.wrapped(picture.title(), TITLE_SIZE, WIDTH - 2 * MARGIN, 2);
    double plotTop = MARGIN + title.size() * (TITLE_SIZE + 6) + 26;
    return new SeparationFigure(picture, plotTop).drawing(title);
  }

  private Drawing drawing(List<String> title) {
    List<Shape> shapes = new ArrayList<>();
    double y = MARGIN + TITLE_SIZE - 2;
    for (String line : title) {
      shapes.add(text(line, MARGIN, y, TITLE_SIZE, Anchor.START, Tint.Role.INK));
      y += TITLE_SIZE + 6;
    }
    shapes.add(new Shape.Group("axes", "", axes()));
    shapes.add(new Shape.Group("separation", picture.title(), curves()));
    shapes.add(new Shape.Group("marks", "", marks()));
    List<LegendEntry> legend = legend();
    double below = drawLegend(legend, shapes);
    below = Math.max(below, plotBottom() + 44);
    for (String caption : picture.captions()) {
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
    return new Drawing(
        new ViewBox(0, -height, WIDTH, height), WIDTH, shapes, legend, alternative());
  }

  private double plotBottom() {
    return plotTop + PLOT_HEIGHT;
  }

  /** End of the time axis: what is asked, but not much more than is known. */
  private double end() {
    return Math.min(picture.span().asked(), SHOWN_BEYOND * picture.span().known());
  }

  private double pixelX(double time) {
    return PLOT_LEFT + (PLOT_RIGHT - PLOT_LEFT) * time / end();
  }

  /** Place of a distance in model units, cut to the plot. */
  private double pixelY(double distance) {
    double power = Math.log10(distance * picture.measure().shownPerUnit());
    double part = (power - lowest) / (highest - lowest);
    return plotBottom() - PLOT_HEIGHT * Math.max(0, Math.min(1, part));
  }

  private List<Shape> axes() {
    List<Shape> shapes = new ArrayList<>();
    shapes.add(
        new Shape.Rectangle(
            (PLOT_LEFT + PLOT_RIGHT) / 2,
            -(plotTop + PLOT_HEIGHT / 2),
            PLOT_RIGHT - PLOT_LEFT,
            PLOT_HEIGHT,
            0,
            Style.of(Tint.Role.PLATE, Stroke.solid(Tint.Role.PLATE_EDGE, 1))));
    int stride = 1 + (highest - lowest) / MOST_POWERS;
    for (int power = lowest; power <= highest; power++) {
      double y = plotBottom() - PLOT_HEIGHT * (power - lowest) / (highest - lowest);
      if (power > lowest && power < highest) {
        shapes.add(line(PLOT_LEFT, y, PLOT_RIGHT, y, grid()));
      }
      if ((highest - power) % stride == 0) {
        shapes.add(text(power(power), PLOT_LEFT - 8, y + 4, TICK_SIZE, Anchor.END, Tint.Role.INK));
      }
    }
    double step = RoundStep.atLeast(end() / MOST_TICKS);
    for (int i = 0; i * step <= end() * (1 + 1e-9); i++) {
      double x = pixelX(i * step);
      if (i > 0 && x < PLOT_RIGHT - 1) {
        shapes.add(line(x, plotTop, x, plotBottom(), grid()));
      }
      shapes.add(
          text(tick(i * step), x, plotBottom() + 16, TICK_SIZE, Anchor.MIDDLE, Tint.Role.INK));
    }
    String length = picture.measure().length();
    String time = picture.measure().time();
    shapes.add(
        text(
            length.isEmpty() ? "separation" : "separation in " + length,
            MARGIN,
            plotTop - 10,
            TEXT_SIZE,
            Anchor.START,
            Tint.Role.INK));
    shapes.add(
        text(
            time.isEmpty() ? "time" : "time in " + time,
            PLOT_RIGHT,
            plotBottom() + 34,
            TEXT_SIZE,
            Anchor.END,
            Tint.Role.INK));
    return shapes;
  }

  private static Stroke grid() {
    return new Stroke(Tint.Role.PLATE_EDGE, 0.6, Dash.SOLID, 0.5);
  }

  private List<Shape> curves() {
    List<Shape> shapes = new ArrayList<>();
    shapes.add(polyline(picture.distances(), thin()));
    shapes.add(polyline(picture.phaseDistances(), strong()));
    return shapes;
  }

  private static Stroke thin() {
    return Stroke.solid(new Tint.Age(1, 0.45, true), 1);
  }

  private static Stroke strong() {
    return Stroke.solid(new Tint.Age(0, 1, true), 2.1);
  }

  private static Stroke fitted() {
    return Stroke.solid(Tint.Role.INK, 1.4).with(Dash.DASHED);
  }

  private static Stroke parting() {
    return Stroke.solid(Tint.Role.EVENT, 1.4).with(Dash.DOTTED);
  }

  private static Stroke border() {
    return Stroke.solid(Tint.Role.INK, 2);
  }

  private Shape polyline(double[] values, Stroke stroke) {
    double[] t = picture.times();
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

  private List<Shape> marks() {
    List<Shape> shapes = new ArrayList<>();
    double level = pixelY(picture.level().distance());
    shapes.add(line(PLOT_LEFT, level, PLOT_RIGHT, level, parting()));
    picture
        .line()
        .ifPresent(
            fit ->
                shapes.add(
                    line(
                        pixelX(0),
                        pixelY(fit.atStart()),
                        pixelX(fit.until()),
                        pixelY(fit.atStart() * Math.exp(fit.rate() * fit.until())),
                        fitted())));
    if (picture.span().known() < picture.span().asked()) {
      double x = pixelX(picture.span().known());
      shapes.add(line(x, plotTop, x, plotBottom(), border()));
    }
    picture
        .partedAt()
        .ifPresent(
            at ->
                shapes.add(
                    new Shape.Symbol(
                        Mark.CROSS,
                        pixelX(at),
                        -level,
                        MarkDrawer.EVENT,
                        0,
                        MarkDrawer.eventStyle())));
    return shapes;
  }

  private List<LegendEntry> legend() {
    List<LegendEntry> entries = new ArrayList<>();
    entries.add(entry(strong(), "separation, velocities included (taken over the swing's rate)"));
    entries.add(entry(thin(), "separation in plan alone"));
    picture
        .line()
        .ifPresent(
            fit -> entries.add(entry(fitted(), "fitted growth, up to " + words.time(fit.until()))));
    entries.add(
        entry(parting(), picture.level().name() + ", " + words.length(picture.level().distance())));
    picture
        .partedAt()
        .ifPresent(
            at ->
                entries.add(
                    new LegendEntry(
                        new LegendEntry.Swatch.Sign(
                            Mark.CROSS, MarkDrawer.EVENT, MarkDrawer.eventStyle(), ""),
                        "first so far apart in plan, " + words.time(at))));
    if (picture.span().known() < picture.span().asked()) {
      entries.add(entry(border(), known()));
    }
    return entries;
  }

  private String known() {
    return "not known after " + words.time(picture.span().known()) + ": " + picture.span().end();
  }

  private static LegendEntry entry(Stroke stroke, String text) {
    return new LegendEntry(new LegendEntry.Swatch.Line(List.of(stroke)), text);
  }

  /** Draws the legend beside the plot; answers its lower edge. */
  private double drawLegend(List<LegendEntry> legend, List<Shape> shapes) {
    List<Shape> parts = new ArrayList<>();
    double y = plotTop + TEXT_SIZE;
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

  private AlternativeText alternative() {
    double[] phase = picture.phaseDistances();
    StringBuilder text = new StringBuilder(picture.captions().get(0));
    text.append(" A line shows the separation of two bobs over time on a logarithmic axis: from ")
        .append(words.length(picture.distances()[0]))
        .append(" at the release to ")
        .append(words.length(picture.distances()[phase.length - 1]))
        .append(" at ")
        .append(words.time(picture.times()[phase.length - 1]))
        .append(". ");
    if (picture.span().known() < picture.span().asked()) {
      String known = known();
      text.append(Character.toUpperCase(known.charAt(0))).append(known.substring(1)).append(". ");
    }
    for (String caption : picture.captions().subList(1, picture.captions().size())) {
      text.append(caption).append(' ');
    }
    return new AlternativeText("en", picture.title(), text.toString().strip());
  }

  private static Shape line(double fromX, double fromY, double toX, double toY, Stroke stroke) {
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
