package lodeswing.web.trace;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import lodeswing.analysis.glow.GlowField;
import lodeswing.analysis.glow.GlowPaper;
import lodeswing.analysis.glow.GlowTrail;
import lodeswing.analysis.glow.LongExposure;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.figure.Drawing;
import lodeswing.figure.GlowFigure;
import lodeswing.figure.GlowPicture;
import lodeswing.figure.Measure;
import lodeswing.figure.Trail;
import lodeswing.figure.ViewBox;
import lodeswing.render.csv.CellText;
import lodeswing.render.png.GlowPainter;
import lodeswing.web.body.Numbers;
import lodeswing.web.limits.Limits;
import lodeswing.web.plate.PlateMap;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;

/** The long exposure of a trace. */
final class TraceGlow {

  /** Margin about the path in widths of the spot: what lies further out is beyond a thousandth. */
  private static final double MARGIN = 2.6;

  private final TraceRequest request;
  private final TraceAnswers answers;
  private final TraceResult path;
  private final PlateMap plate;
  private final GlowSettings settings;

  TraceGlow(TraceRequest request, byte[] result, GlowSettings settings) {
    this.request = request;
    this.answers = new TraceAnswers(request, result);
    this.path = answers.stored().path();
    this.plate = new PlateMap(request.layout());
    this.settings = settings;
  }

  /**
   * The exposure as a picture, or its words alone.
   *
   * @throws ProblemException {@code too-costly} where it has too many pixels
   */
  Reply reply(Representation form, Limits limits) {
    GlowPaper paper = paper(limits);
    GlowField field = GlowTrail.of(path.curve(), exposure(), paper);
    Drawing drawing = GlowFigure.draw(picture(field));
    if (form == Representation.TEXT) {
      // Whole sentences, not a cell: places keep their commas.
      return Reply.of(
          form,
          CellText.guarded(drawing.alternative().description()).getBytes(StandardCharsets.UTF_8));
    }
    return Reply.of(
        form,
        request.bench()
            ? GlowPainter.trueScale(field, settings.gain(), drawing)
            : GlowPainter.png(field, settings.gain(), drawing));
  }

  private GlowPaper paper(Limits limits) {
    double unit = request.unit();
    ViewBox bounds =
        GlowFigure.bounds(
            plate.outline(), plate.magnets(), path.curve(), MARGIN * settings.spot() * unit);
    double pixel = settings.pixelFor(Math.max(bounds.width(), bounds.height()) / unit);
    double pixels = bounds.width() * bounds.height() / (pixel * unit) / (pixel * unit);
    if (pixels > limits.glowPixels()) {
      throw tooManyPixels(pixel, pixels, limits);
    }
    return GlowPaper.covering(
        bounds.left(), bounds.bottom(), bounds.right(), bounds.top(), pixel * unit);
  }

  private static ProblemException tooManyPixels(double pixel, double pixels, Limits limits) {
    double least = pixel * Math.sqrt(pixels / limits.glowPixels());
    double scale = Math.pow(10, 2 - Math.ceil(Math.log10(least)));
    return new ProblemException(
        ProblemCode.TOO_COSTLY,
        "The picture has more pixels than a glow picture may have.",
        List.of(
            new Fault(
                "?pixelSize",
                "of "
                    + Numbers.shortest(pixel)
                    + " makes "
                    + Math.round(pixels)
                    + " pixels of at most "
                    + limits.glowPixels()
                    + "; raise it to "
                    + Numbers.shortest(Math.ceil(least * scale) / scale)
                    + ", and the spot to twice that or more")));
  }

  private LongExposure exposure() {
    return new LongExposure(
        shownUntil(),
        settings.exposureS() + settings.lookAfterS(),
        settings.spot() * request.unit(),
        settings.decay());
  }

  /** Until when the light is shown: as long as it is on, the model holds and the path is true. */
  private double shownUntil() {
    double known = path.trustedUntil().orElse(Double.POSITIVE_INFINITY);
    return Math.min(Math.min(known, path.curve().ends()), settings.exposureS());
  }

  private String leftOut() {
    double shown = shownUntil();
    if (shown >= settings.exposureS()) {
      return "";
    }
    boolean untrusted =
        path.trustedUntil().isPresent() && path.trustedUntil().getAsDouble() <= shown;
    return untrusted
        ? "the computed path is not to be trusted any further"
        : path.ending().map(event -> TraceWords.text(event.kind())).orElse("the path ends");
  }

  private GlowPicture picture(GlowField field) {
    double unit = request.unit();
    double shown = shownUntil();
    GlowPaper paper = field.paper();
    return new GlowPicture(
        request.title().orElse(""),
        request.bench() ? Measure.BENCH : Measure.TEXTBOOK,
        new ViewBox(paper.left(), paper.bottom(), paper.width(), paper.height()),
        paper.pixel(),
        plate.outline(),
        plate.magnets(),
        new Trail.Start(
            request.release().get(0) * unit,
            request.release().get(1) * unit,
            request.release().get(2) * unit,
            request.release().get(3) * unit),
        new GlowPicture.Light(
            settings.spot() * unit, shown, settings.exposureS(), settings.lookAfterS(), leftOut()),
        result(field, shown));
  }

  private GlowPicture.Result result(GlowField field, double shown) {
    double lookedAt = settings.exposureS() + settings.lookAfterS();
    return new GlowPicture.Result(
        field.brightestX(),
        field.brightestY(),
        near(field),
        settings.decay().remaining(lookedAt),
        settings.decay().remaining(lookedAt - shown),
        settings.decay().time(),
        settings.decay().exponent(),
        end(path.settledAt(), shown));
  }

  private String end(OptionalDouble settledAt, double shown) {
    boolean seen = settledAt.isPresent() && settledAt.getAsDouble() <= shown;
    return seen && path.restPoint().isPresent()
        ? answers.words().names().sentence(path.restPoint().getAsInt())
        : "";
  }

  /** The share of the glow within a spot's width of the brightest place. */
  private double near(GlowField field) {
    GlowPaper paper = field.paper();
    double reach = settings.spot() * request.unit();
    double sum = 0;
    for (int row = 0; row < paper.rows(); row++) {
      for (int column = 0; column < paper.columns(); column++) {
        double dx = paper.x(column) - field.brightestX();
        double dy = paper.y(row) - field.brightestY();
        if (dx * dx + dy * dy <= reach * reach) {
          sum += field.at(column, row);
        }
      }
    }
    double total = field.total();
    return total > 0 ? sum * paper.pixel() * paper.pixel() / total : 0;
  }
}
