package lodeswing.web.sweep;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.job.Computation;
import lodeswing.web.body.Body;
import lodeswing.web.body.NumberShape;
import lodeswing.web.hand.HandByAddress;
import lodeswing.web.hand.HandShapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.posted.PostedRequests;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/**
 * A sweep of one quantity by one address, for spreadsheets; a layout's other figures may be changed
 * on the way.
 */
@RestController
final class LayoutSweepController {

  static final List<Representation> OFFERED =
      List.of(
          Representation.JSON,
          Representation.CSV,
          Representation.CBOR,
          Representation.TEXT,
          Representation.SVG,
          Representation.PNG);

  private static final int LONGEST_LIST = 4_000;

  private static final Parameter<String> VARY = Parameter.text("vary", 80).required();
  private static final Parameter<Double> FROM = number("from", SweepShapes.FIGURE);
  private static final Parameter<Double> TO = number("to", SweepShapes.FIGURE);
  private static final Parameter<Integer> STEPS =
      Parameter.integer("steps", (int) SweepShapes.STEPS.least(), SweepShapes.MOST_VALUES);
  private static final Parameter<String> SPACING =
      Parameter.oneOf("spacing", SweepShapes.SPACING.words().toArray(String[]::new));
  private static final Parameter<String> VALUES = Parameter.text("values", LONGEST_LIST);
  private static final Parameter<List<String>> MEASURE =
      Parameter.of(
              "measure",
              "measures with commas between them, of "
                  + String.join(", ", SweepShapes.MEASURE.words()),
              LayoutSweepController::words)
          .required();
  private static final Parameter<String> LABEL = Parameter.text("label", 200);
  private static final Parameter<Double> X = number("x", SweepShapes.PLACE);
  private static final Parameter<Double> Y = number("y", SweepShapes.PLACE);
  private static final Parameter<Double> VX = number("vx", SweepShapes.SPEED);
  private static final Parameter<Double> VY = number("vy", SweepShapes.SPEED);
  private static final Parameter<Double> SPREAD = number("spreadMm", HandShapes.SIZE);
  private static final Parameter<Double> WIDTH = number("width", SweepShapes.WIDTH);
  private static final Parameter<Integer> SEED = Parameter.integer("seed", 0, Integer.MAX_VALUE);
  private static final Parameter<Double> HALF_WIDTH =
      Parameter.number("halfWidth", Double.MIN_NORMAL, SweepShapes.HALF_WIDTH.most());
  private static final Parameter<Integer> SIDE =
      Parameter.integer("side", (int) SweepShapes.SIDE.least(), (int) SweepShapes.SIDE.most());

  private static final Parameter<?>[] KNOWN = {
    VARY,
    FROM,
    TO,
    STEPS,
    SPACING,
    VALUES,
    MEASURE,
    LABEL,
    X,
    Y,
    VX,
    VY,
    HandByAddress.KIND,
    SPREAD,
    HandByAddress.INNER,
    HandByAddress.PUSH,
    WIDTH,
    SEED,
    HALF_WIDTH,
    SIDE,
    DrawnReply.PIXELS,
    SweepReplies.VALUE,
    SweepReplies.COLUMN,
    SweepReplies.ROW
  };

  private final LayoutStore layouts;
  private final PostedRequests<SweepRequest> sweeps;
  private final SweepComputations computations;
  private final PostedAnswers answers;
  private final Limits limits;

  LayoutSweepController(
      LayoutStore layouts,
      PostedRequests<SweepRequest> sweeps,
      SweepComputations computations,
      PostedAnswers answers,
      Limits limits) {
    this.layouts = layouts;
    this.sweeps = sweeps;
    this.computations = computations;
    this.answers = answers;
    this.limits = limits;
  }

  private static Parameter<Double> number(String name, NumberShape shape) {
    return Parameter.number(name, shape.least(), shape.most());
  }

  private static Optional<List<String>> words(String text) {
    List<String> words = Arrays.stream(text.split(",")).map(String::strip).distinct().toList();
    return Optional.of(words).filter(all -> SweepShapes.MEASURE.words().containsAll(all));
  }

  @GetMapping("/v1/layouts/{layoutId}/sweep")
  ResponseEntity<byte[]> getLayoutSweep(@PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery read = LayoutQuery.read(request, layouts, layoutId, KNOWN);
    QueryParameters query = read.parameters();
    Representation form = Negotiation.chooseForCell(request, query, OFFERED, SweepReplies.VALUE);
    var review = new SweepReview(read.layout(), body(query), LayoutPlace.ADDRESS);
    SweepRequest asked = review.request(limits);
    Computation work = computations.of(asked);
    review.affordable(asked, work.releases(), limits);
    return answers.addressed(request, query, sweeps, asked, work, SweepReplies.writer(form, query));
  }

  private static Body body(QueryParameters query) {
    Map<String, Object> vary = new LinkedHashMap<>();
    vary.put("quantity", query.get(VARY));
    query.find(FROM).ifPresent(from -> vary.put("from", from));
    query.find(TO).ifPresent(to -> vary.put("to", to));
    query.find(STEPS).ifPresent(steps -> vary.put("steps", (double) steps));
    query.find(SPACING).ifPresent(spacing -> vary.put("spacing", spacing));
    query.find(VALUES).ifPresent(values -> vary.put("values", listed(values, query)));
    Map<String, Object> release = new LinkedHashMap<>();
    for (Parameter<Double> one : List.of(X, Y, VX, VY)) {
      query.find(one).ifPresent(value -> release.put(one.name(), value));
    }
    Map<String, Object> map = new LinkedHashMap<>();
    query.find(HALF_WIDTH).ifPresent(half -> map.put("halfWidth", half));
    query.find(SIDE).ifPresent(side -> map.put("side", (double) side));
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("vary", List.of(Body.of(vary)));
    members.put("measures", measures(query));
    members.put("release", Body.of(release));
    query.find(SPREAD).ifPresent(size -> members.put("spread", HandByAddress.spread(query)));
    query.find(WIDTH).ifPresent(width -> members.put("width", width));
    query.find(SEED).ifPresent(seed -> members.put("seed", (double) seed));
    members.put("map", Body.of(map));
    return Body.of(members);
  }

  /** The label goes to every measure that is of one. */
  private static List<Body> measures(QueryParameters query) {
    List<Body> measures = new ArrayList<>();
    for (String word : query.get(MEASURE)) {
      Map<String, Object> measure = new LinkedHashMap<>();
      measure.put("measure", word);
      boolean labelled =
          MeasuredFigure.of(Body.of(measure)).measure().labelled() != SweepMeasure.Labelled.NEVER;
      query.find(LABEL).filter(label -> labelled).ifPresent(label -> measure.put("label", label));
      measures.add(Body.of(measure));
    }
    return measures;
  }

  /** Values with semicolons between them, or commas where these are no decimal signs. */
  private static List<Object> listed(String text, QueryParameters query) {
    boolean comma = query.get(GeneralParameters.DECIMAL).equals("comma");
    List<Object> values = new ArrayList<>();
    for (String one : text.split(comma ? ";" : "[;,]")) {
      String word = comma ? one.strip().replace(',', '.') : one.strip();
      values.add(
          Parameter.number("values", -Double.MAX_VALUE, Double.MAX_VALUE)
              .read(word)
              .<Object>map(number -> number)
              .orElse(word));
    }
    return values;
  }
}
