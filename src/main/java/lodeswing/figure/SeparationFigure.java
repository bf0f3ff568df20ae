package lodeswing.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The picture of a separation over time: distance on a logarithmic axis, time on an even one.
 *
 * <p>The distance with velocities is a strong line, that in plan alone, which falls to nothing
 * whenever the two paths cross, a thin one; the fitted growth is dashed. Model units are pixels.
 */
public final class SeparationFigure {
  /** Distances below the least of the strong line by so many powers of ten are cut off. */
  private static final double BELOW = 1;

  /** How far the axis goes on beyond what is known, as a multiple of that. */
  private static final double SHOWN_BEYOND = 1.15;

  private final SeparationPicture picture;
  private final PathWords words;
  private final LogTimePlot plot;

  private SeparationFigure(SeparationPicture picture) {
    this.picture = picture;
    this.words = new PathWords(picture.measure());
    double unit = picture.measure().shownPerUnit();
    double least = Arrays.stream(picture.phaseDistances()).min().orElseThrow() * unit;
    double most =
        unit
            * Math.max(
                picture.level().distance(),
                Arrays.stream(picture.phaseDistances()).max().orElseThrow());
    int top = (int) Math.ceil(Math.log10(most) - 1e-9);
    int lowest = Math.min(top - 1, (int) Math.floor(Math.log10(least) - BELOW / 2));
    // What is asked, but not much more than is known.
    double end = Math.min(picture.span().asked(), SHOWN_BEYOND * picture.span().known());
    this.plot =
        new LogTimePlot(
            picture.measure(),
            picture.title(),
            new LogTimePlot.Span(0, end),
            new LogTimePlot.Powers(lowest, top));
  }

  /** Draws the picture; the same value gives the same drawing. */
  public static Drawing draw(SeparationPicture picture) {
    return new SeparationFigure(picture).drawing();
  }

  private Drawing drawing() {
    List<Shape> groups = new ArrayList<>();
    groups.add(new Shape.Group("separation", picture.title(), curves()));
    groups.add(new Shape.Group("marks", "", marks()));
    return plot.drawing(groups, "separation", legend(), picture.captions(), alternative());
  }

  private List<Shape> curves() {
    List<Shape> shapes = new ArrayList<>();
    shapes.add(plot.polyline(picture.times(), picture.distances(), thin()));
    shapes.add(plot.polyline(picture.times(), picture.phaseDistances(), strong()));
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

  private List<Shape> marks() {
    List<Shape> shapes = new ArrayList<>();
    shapes.add(plot.level(picture.level().distance(), parting()));
    picture
        .line()
        .ifPresent(
            fit ->
                shapes.add(
                    LogTimePlot.line(
                        plot.pixelX(0),
                        plot.pixelY(fit.atStart()),
                        plot.pixelX(fit.until()),
                        plot.pixelY(fit.atStart() * Math.exp(fit.rate() * fit.until())),
                        fitted())));
    if (picture.span().known() < picture.span().asked()) {
      shapes.add(plot.moment(picture.span().known(), border()));
    }
    picture
        .partedAt()
        .ifPresent(
            at ->
                shapes.add(
                    new Shape.Symbol(
                        Mark.CROSS,
                        plot.pixelX(at),
                        -plot.pixelY(picture.level().distance()),
                        MarkDrawer.EVENT,
                        0,
                        MarkDrawer.eventStyle())));
    return shapes;
  }

  private List<LegendEntry> legend() {
    List<LegendEntry> entries = new ArrayList<>();
    entries.add(
        LogTimePlot.entry(
            strong(), "separation, velocities included (taken over the swing's rate)"));
    entries.add(LogTimePlot.entry(thin(), "separation in plan alone"));
    picture
        .line()
        .ifPresent(
            fit ->
                entries.add(
                    LogTimePlot.entry(
                        fitted(), "fitted growth, up to " + words.time(fit.until()))));
    entries.add(
        LogTimePlot.entry(
            parting(), picture.level().name() + ", " + words.length(picture.level().distance())));
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
      entries.add(LogTimePlot.entry(border(), known()));
    }
    return entries;
  }

  private String known() {
    return "not known after " + words.time(picture.span().known()) + ": " + picture.span().end();
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
}
