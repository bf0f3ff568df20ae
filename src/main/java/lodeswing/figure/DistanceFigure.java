package lodeswing.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The picture of the distance between a recorded and a foretold path over time.
 *
 * <p>The distance is a strong line on a logarithmic axis, what noise and the start's error explain
 * a thin one that ends where the path cannot be foretold any more; both horizons stand upright.
 * Model units are pixels.
 */
public final class DistanceFigure {

  /** Distances below the least that is explained by so many times are cut off. */
  private static final double BELOW = 30;

  private final DistancePicture picture;
  private final PathWords words;
  private final LogTimePlot plot;

  private DistanceFigure(DistancePicture picture) {
    this.picture = picture;
    this.words = new PathWords(picture.measure());
    double unit = picture.measure().shownPerUnit();
    DistancePicture.Curve curve = picture.curve();
    double least = unit * Arrays.stream(curve.explained()).min().orElseThrow() / BELOW;
    double most =
        unit * Math.max(picture.parted(), Arrays.stream(curve.distances()).max().orElseThrow());
    int top = (int) Math.ceil(Math.log10(most) - 1e-9);
    int lowest = Math.min(top - 1, (int) Math.floor(Math.log10(least)));
    double end = curve.ends() > curve.begins() ? curve.ends() : curve.begins() + 1;
    this.plot =
        new LogTimePlot(
            picture.measure(),
            picture.title(),
            new LogTimePlot.Span(curve.begins(), end),
            new LogTimePlot.Powers(lowest, top));
  }

  /** Draws the picture; the same value gives the same drawing. */
  public static Drawing draw(DistancePicture picture) {
    return new DistanceFigure(picture).drawing();
  }

  private Drawing drawing() {
    List<Shape> groups = new ArrayList<>();
    groups.add(new Shape.Group("distance", picture.title(), curves()));
    groups.add(new Shape.Group("marks", "", marks()));
    return plot.drawing(groups, "distance", legend(), picture.captions(), alternative());
  }

  private List<Shape> curves() {
    List<Shape> shapes = new ArrayList<>();
    DistancePicture.Curve curve = picture.curve();
    int known = known();
    shapes.add(
        plot.polyline(
            Arrays.copyOf(curve.times(), known),
            Arrays.copyOf(curve.explained(), known),
            explained()));
    shapes.add(plot.polyline(curve.times(), curve.distances(), strong()));
    return shapes;
  }

  /** Places up to the horizon of what can be foretold, one at least. */
  private int known() {
    double until = picture.moments().foretoldUntil().orElse(Double.POSITIVE_INFINITY);
    double[] times = picture.curve().times();
    int known = 1;
    while (known < times.length && times[known] <= until) {
      known++;
    }
    return known;
  }

  private static Stroke strong() {
    return Stroke.solid(new Tint.Age(0, 1, true), 1.6);
  }

  private static Stroke explained() {
    return Stroke.solid(Tint.Role.INK, 1.2);
  }

  private static Stroke parting() {
    return Stroke.solid(Tint.Role.EVENT, 1.4).with(Dash.DOTTED);
  }

  private static Stroke foretold() {
    return Stroke.solid(Tint.Role.INK, 1.4).with(Dash.DASHED);
  }

  private static Stroke trusted() {
    return Stroke.solid(Tint.Role.INK, 2);
  }

  private List<Shape> marks() {
    List<Shape> shapes = new ArrayList<>();
    DistancePicture.Moments moments = picture.moments();
    shapes.add(plot.level(picture.parted(), parting()));
    within(moments.foretoldUntil()).ifPresent(at -> shapes.add(plot.moment(at, foretold())));
    within(moments.trustedUntil()).ifPresent(at -> shapes.add(plot.moment(at, trusted())));
    moments
        .partedAt()
        .ifPresent(
            at ->
                shapes.add(
                    new Shape.Symbol(
                        Mark.CROSS,
                        plot.pixelX(at),
                        -plot.pixelY(picture.parted()),
                        MarkDrawer.EVENT,
                        0,
                        MarkDrawer.eventStyle())));
    moments
        .departedAt()
        .ifPresent(
            at ->
                shapes.add(
                    new Shape.Symbol(
                        Mark.DIAMOND,
                        plot.pixelX(at),
                        -plot.pixelY(distanceAt(at)),
                        MarkDrawer.SEALED,
                        0,
                        MarkDrawer.eventStyle())));
    return shapes;
  }

  private double distanceAt(double time) {
    double[] times = picture.curve().times();
    int place = 0;
    while (place < times.length - 1 && times[place] < time) {
      place++;
    }
    return picture.curve().distances()[place];
  }

  private OptionalDouble within(OptionalDouble time) {
    return time.isPresent() && time.getAsDouble() < picture.curve().ends()
        ? time
        : OptionalDouble.empty();
  }

  private List<LegendEntry> legend() {
    List<LegendEntry> entries = new ArrayList<>();
    DistancePicture.Moments moments = picture.moments();
    entries.add(LogTimePlot.entry(strong(), "distance between recorded and foretold place"));
    entries.add(
        LogTimePlot.entry(
            explained(),
            "four standard deviations of noise and of what the start leaves open, at most"));
    entries.add(
        LogTimePlot.entry(parting(), "counts as parted, " + words.length(picture.parted())));
    moments
        .departedAt()
        .ifPresent(
            at ->
                entries.add(
                    sign(
                        Mark.DIAMOND,
                        MarkDrawer.SEALED,
                        "farther apart than any start explains, " + words.time(at))));
    moments
        .partedAt()
        .ifPresent(
            at -> entries.add(sign(Mark.CROSS, MarkDrawer.EVENT, "parted, " + words.time(at))));
    within(moments.foretoldUntil())
        .ifPresent(
            at ->
                entries.add(
                    LogTimePlot.entry(foretold(), "cannot be foretold after " + words.time(at))));
    within(moments.trustedUntil())
        .ifPresent(
            at ->
                entries.add(
                    LogTimePlot.entry(
                        trusted(),
                        "the computed path is not to be trusted after " + words.time(at))));
    return entries;
  }

  private static LegendEntry sign(Mark mark, double size, String text) {
    return new LegendEntry(
        new LegendEntry.Swatch.Sign(mark, size, MarkDrawer.eventStyle(), ""), text);
  }

  private AlternativeText alternative() {
    double[] distances = picture.curve().distances();
    String text =
        picture.captions().get(0)
            + " A line shows the distance between the two places over time on a logarithmic axis:"
            + " from "
            + words.length(distances[0])
            + " at "
            + words.time(picture.curve().begins())
            + " to "
            + words.length(distances[distances.length - 1])
            + " at "
            + words.time(picture.curve().ends())
            + ". "
            + String.join(" ", picture.captions().subList(1, picture.captions().size()));
    return new AlternativeText("en", picture.title(), text.strip());
  }
}
