package lodeswing.web.field;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lodeswing.analysis.field.PlateField;
import lodeswing.core.rig.BenchLayout;
import lodeswing.web.basin.UsualWindow;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** The field of a layout's plate; a layout's figures may be changed on the way. */
@RestController
final class FieldController {

  static final List<Representation> POINT_FORMS =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);

  static final List<Representation> FORMS =
      List.of(
          Representation.JSON,
          Representation.CSV,
          Representation.CBOR,
          Representation.TEXT,
          Representation.SVG,
          Representation.PNG);

  static final List<Representation> FILING_FORMS =
      List.of(
          Representation.SVG,
          Representation.PNG,
          Representation.JSON,
          Representation.CBOR,
          Representation.TEXT);

  /** Places [mm]. */
  static final double FARTHEST = 100_000;

  static final double LEAST_WINDOW = 0.5;
  static final double GREATEST_WINDOW = 5_000;
  static final double LEAST_HEIGHT = -1_000;
  static final double GREATEST_HEIGHT = 5_000;
  static final int LEAST_SIDE = 2;
  static final int GREATEST_SIDE = 4_096;
  static final int USUAL_SIDE = 193;
  static final int USUAL_FILINGS = 9_000;
  static final int LEAST_FILINGS = 10;
  static final int GREATEST_FILINGS = 1_000_000;
  static final double LEAST_APART = 0.01;
  static final double GREATEST_APART = 1_000;

  /** Distance of lines if nobody says, in sides of the window. */
  private static final double USUAL_APART = 1.0 / 46;

  /** Height of the paper over the highest magnet if nobody says [mm]. */
  private static final double PAPER = 1;

  private static final double MILLI = 1e3;

  private static final Parameter<Double> X = Parameter.number("x", -FARTHEST, FARTHEST);
  private static final Parameter<Double> Y = Parameter.number("y", -FARTHEST, FARTHEST);
  private static final Parameter<Double> AT_X = X.required();
  private static final Parameter<Double> AT_Y = Y.required();
  private static final Parameter<Double> AT_Z =
      Parameter.number("z", LEAST_HEIGHT, GREATEST_HEIGHT);
  private static final Parameter<Double> HALF_WIDTH =
      Parameter.number("halfWidth", LEAST_WINDOW, GREATEST_WINDOW);
  private static final Parameter<Double> HEIGHT =
      Parameter.number("zMm", LEAST_HEIGHT, GREATEST_HEIGHT);
  private static final Parameter<String> SURFACE = Parameter.oneOf("surface", "path", "paper");
  private static final Parameter<Integer> SIDE =
      Parameter.integer("side", LEAST_SIDE, GREATEST_SIDE).orElse(USUAL_SIDE);
  private static final Parameter<String> PART =
      Parameter.oneOf("part", "whole", "plane").orElse("whole");
  private static final Parameter<Boolean> SPOTS = Parameter.flag("spots");
  private static final Parameter<Double> APART =
      Parameter.number("apartMm", LEAST_APART, GREATEST_APART);
  private static final Parameter<String> CUT =
      Parameter.oneOf("cut", "plan", "upright").orElse("plan");
  private static final Parameter<Double> TURN = Parameter.number("turnDeg", -360, 360).orElse(0.0);
  private static final Parameter<Integer> COUNT =
      Parameter.integer("count", LEAST_FILINGS, GREATEST_FILINGS).orElse(USUAL_FILINGS);
  private static final Parameter<Integer> SEED =
      Parameter.integer("seed", 0, Integer.MAX_VALUE).orElse(1);

  private final LayoutStore layouts;
  private final FieldComputations computations;
  private final ComputedAnswers answers;
  private final Limits limits;

  FieldController(
      LayoutStore layouts, FieldComputations computations, ComputedAnswers answers, Limits limits) {
    this.layouts = layouts;
    this.computations = computations;
    this.answers = answers;
    this.limits = limits;
  }

  @GetMapping("/v1/layouts/{layoutId}/field")
  ResponseEntity<byte[]> getField(@PathVariable String layoutId, HttpServletRequest request) {
    Parameter<String> value = Parameter.oneOf("value", PointAnswers.VALUES);
    LayoutQuery asked = LayoutQuery.read(request, layouts, layoutId, AT_X, AT_Y, AT_Z, value);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, POINT_FORMS, value);
    PlateField plate = PlateField.of(bench(asked.layout()));
    query.find(AT_Z).ifPresent(z -> checkHeight(plate, z, "z"));
    layouts.save(asked.layout());
    return PointAnswers.of(
            asked.layout(), plate, query.get(AT_X), query.get(AT_Y), query.find(AT_Z))
        .in(form, query, query.find(value).orElse("magnitude"))
        .cache(CachePolicy.SHORT)
        .to(request, asked.layout().subject());
  }

  @GetMapping("/v1/layouts/{layoutId}/field/map")
  ResponseEntity<byte[]> getFieldMap(@PathVariable String layoutId, HttpServletRequest request) {
    return answers.reply(request, mapAsked(layoutId, Asking.of(request)));
  }

  /** What is asked for, without HTTP. */
  Answerable mapAsked(String layoutId, Asking request) {
    Parameter<String> value = Parameter.oneOf("value", MapAnswers.VALUES);
    LayoutQuery asked = read(request, layoutId, SIDE, PART, SPOTS, DrawnReply.PIXELS, value);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, FORMS, value);
    int side = query.get(SIDE);
    if ((long) side * side > limits.fieldPoints()) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY,
          "The map has more points than one may have.",
          List.of(
              new Fault(
                  "?side",
                  "makes "
                      + (long) side * side
                      + " points of at most "
                      + limits.fieldPoints()
                      + "; lower it to "
                      + (int) Math.sqrt(limits.fieldPoints()))));
    }
    FieldRequest field =
        request(
            asked,
            false,
            new FieldSubject.Strength(
                side, query.get(PART).equals("plane"), query.find(SPOTS).orElse(false)));
    String cell = query.find(value).orElse("sentence");
    return written(query, field, stored -> new MapAnswers(field, stored).in(form, query, cell));
  }

  @GetMapping("/v1/layouts/{layoutId}/field/lines")
  ResponseEntity<byte[]> getFieldLines(@PathVariable String layoutId, HttpServletRequest request) {
    Parameter<String> value = Parameter.oneOf("value", LinesAnswers.VALUES);
    LayoutQuery asked =
        read(Asking.of(request), layoutId, APART, CUT, TURN, SPOTS, DrawnReply.PIXELS, value);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, FORMS, value);
    FieldView view = view(asked, true);
    boolean upright = query.get(CUT).equals("upright");
    FieldSubject.Lines lines =
        new FieldSubject.Lines(
            query.find(APART).orElse(rounded(2 * view.halfWidth() * USUAL_APART)),
            upright ? Optional.of(query.get(TURN)) : Optional.empty(),
            !upright && query.find(SPOTS).orElse(true));
    FieldRequest field = request(asked, true, lines);
    String cell = query.find(value).orElse("sentence");
    return answered(
        request, query, field, stored -> new LinesAnswers(field, stored).in(form, query, cell));
  }

  @GetMapping("/v1/layouts/{layoutId}/field/filings")
  ResponseEntity<byte[]> getFieldFilings(
      @PathVariable String layoutId, HttpServletRequest request) {
    Parameter<String> value = Parameter.oneOf("value", FilingsAnswers.VALUES);
    LayoutQuery asked =
        read(Asking.of(request), layoutId, COUNT, SEED, SPOTS, DrawnReply.PIXELS, value);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, FILING_FORMS, value);
    int count = query.get(COUNT);
    if (count > limits.filings()) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY,
          "More filings are asked for than one picture may strew.",
          List.of(new Fault("?count", "is above the limit; lower it to " + limits.filings())));
    }
    FieldRequest field =
        request(
            asked,
            true,
            new FieldSubject.Strewn(count, query.get(SEED), query.find(SPOTS).orElse(true)));
    String cell = query.find(value).orElse("sentence");
    return answered(
        request, query, field, stored -> new FilingsAnswers(field, stored).in(form, query, cell));
  }

  @GetMapping("/v1/layouts/{layoutId}/field/weak-spots")
  ResponseEntity<byte[]> listWeakSpots(@PathVariable String layoutId, HttpServletRequest request) {
    return answers.reply(request, spotsAsked(layoutId, Asking.of(request)));
  }

  /** What is asked for, without HTTP. */
  Answerable spotsAsked(String layoutId, Asking request) {
    Parameter<String> value = Parameter.oneOf("value", SpotAnswers.VALUES);
    LayoutQuery asked = read(request, layoutId, PART, DrawnReply.PIXELS, value);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, FORMS, value);
    FieldRequest field = request(asked, false, new FieldSubject.Spots());
    String cell = query.find(value).orElse("sentence");
    boolean inPlane = query.get(PART).equals("plane");
    return Answerable.of(
        query,
        field.layout().subject(),
        computations.of(field),
        result ->
            new SpotAnswers(
                    field,
                    StoredField.read(result.bytes()),
                    inPlane,
                    frame -> computations.strengths(field, frame, inPlane))
                .in(form, query, cell)
                .cache(CachePolicy.SHORT));
  }

  private LayoutQuery read(Asking request, String layoutId, Parameter<?>... own) {
    List<Parameter<?>> known = new ArrayList<>(List.of(X, Y, HALF_WIDTH, HEIGHT, SURFACE));
    known.addAll(List.of(own));
    return LayoutQuery.read(request, layouts, layoutId, known.toArray(Parameter<?>[]::new));
  }

  /** The request, refused where it costs too much; its layout is kept for a job to find. */
  private FieldRequest request(LayoutQuery asked, boolean paper, FieldSubject subject) {
    FieldRequest request = new FieldRequest(asked.layout(), view(asked, paper), subject);
    request.checkCost(limits);
    layouts.save(asked.layout());
    return request;
  }

  private static FieldView view(LayoutQuery asked, boolean paper) {
    QueryParameters query = asked.parameters();
    PlateField plate = PlateField.of(bench(asked.layout()));
    Optional<Double> height = query.find(HEIGHT);
    Optional<String> surface = query.find(SURFACE);
    if (height.isPresent() && surface.isPresent()) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "A height and a surface are two answers to one question.",
          List.of(new Fault("?surface", "is given beside zMm; give one of them")));
    }
    height.ifPresent(z -> checkHeight(plate, z, "zMm"));
    boolean onPaper = surface.map("paper"::equals).orElse(paper);
    Optional<Double> level =
        height.isPresent() || !onPaper
            ? height
            : Optional.of(Math.rint((MILLI * plate.highestTop() + PAPER) * 1e6) / 1e6);
    return new FieldView(
        query.find(X).orElse(0.0),
        query.find(Y).orElse(0.0),
        query.find(HALF_WIDTH).orElseGet(() -> UsualWindow.halfWidth(asked.layout())),
        level);
  }

  private static void checkHeight(PlateField plate, double z, String name) {
    plate
        .layout()
        .backing()
        .filter(steel -> z < MILLI * steel.top() - 1e-9)
        .ifPresent(
            steel -> {
              throw new ProblemException(
                  ProblemCode.INVALID_REQUEST,
                  "There the steel is, within which the field is not told.",
                  List.of(
                      new Fault(
                          "?" + name,
                          "lies in the steel; give " + MILLI * steel.top() + " or more")));
            });
  }

  /**
   * The rig of a layout.
   *
   * @throws ProblemException {@code not-in-this-model} where it is a textbook layout
   */
  private static BenchLayout bench(LayoutDocument layout) {
    if (layout.layout() instanceof BenchLayout bench) {
      return bench;
    }
    throw new ProblemException(
        ProblemCode.NOT_IN_THIS_MODEL,
        "A textbook layout has strengths without a unit and no field in tesla. Ask for the field of"
            + " a bench layout.",
        List.of());
  }

  private ResponseEntity<byte[]> answered(
      HttpServletRequest request,
      QueryParameters query,
      FieldRequest field,
      Function<StoredField, Reply> writer) {
    return answers.reply(request, written(query, field, writer));
  }

  private Answerable written(
      QueryParameters query, FieldRequest field, Function<StoredField, Reply> writer) {
    return Answerable.of(
        query,
        field.layout().subject(),
        computations.of(field),
        result -> writer.apply(StoredField.read(result.bytes())).cache(CachePolicy.SHORT));
  }

  private static double rounded(double value) {
    return Double.parseDouble(String.format(java.util.Locale.ROOT, "%.2g", value));
  }
}
