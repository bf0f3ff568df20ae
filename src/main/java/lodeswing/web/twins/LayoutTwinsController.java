package lodeswing.web.twins;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.body.Body;
import lodeswing.web.body.NumberShape;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.posted.PostedRequests;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import lodeswing.web.trace.TraceShapes;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Twins by one address, for spreadsheets; a layout's figures may be changed on the way. */
@RestController
final class LayoutTwinsController {

  static final List<Representation> OFFERED =
      List.of(
          Representation.JSON,
          Representation.CSV,
          Representation.CBOR,
          Representation.TEXT,
          Representation.SVG,
          Representation.PNG);

  static final Parameter<TwinsReplies.Picture> PICTURE =
      Parameter.constant("picture", TwinsReplies.Picture.class, TwinsReplies.Picture::word)
          .orElse(TwinsReplies.Picture.PATHS);

  private static final Parameter<Double> X = number("x", TraceShapes.PLACE).required();
  private static final Parameter<Double> Y = number("y", TraceShapes.PLACE).required();
  private static final Parameter<Double> VX = number("vx", TraceShapes.SPEED).orElse(0.0);
  private static final Parameter<Double> VY = number("vy", TraceShapes.SPEED).orElse(0.0);
  private static final Parameter<Double> SHIFT_X = number("shiftX", TraceShapes.PLACE).orElse(0.0);
  private static final Parameter<Double> SHIFT_Y = number("shiftY", TraceShapes.PLACE).orElse(0.0);
  private static final Parameter<Double> SHIFT_VX =
      number("shiftVx", TraceShapes.SPEED).orElse(0.0);
  private static final Parameter<Double> SHIFT_VY =
      number("shiftVy", TraceShapes.SPEED).orElse(0.0);
  private static final Parameter<Double> DURATION = above("durationS", TraceShapes.DURATION);
  private static final Parameter<Double> INTERVAL = above("sampleIntervalS", TraceShapes.INTERVAL);
  private static final Parameter<Double> ACCURACY = above("placingAccuracy", TraceShapes.ACCURACY);
  private static final Parameter<Double> THIN = number("thin", TraceShapes.THIN);

  private static final Parameter<?>[] KNOWN = {
    X,
    Y,
    VX,
    VY,
    SHIFT_X,
    SHIFT_Y,
    SHIFT_VX,
    SHIFT_VY,
    DURATION,
    INTERVAL,
    ACCURACY,
    THIN,
    PICTURE,
    DrawnReply.PIXELS,
    TwinsReplies.VALUE
  };

  private final LayoutStore layouts;
  private final PostedRequests<TwinsRequest> pairs;
  private final TwinsComputations computations;
  private final PreparingCost cost;
  private final PostedAnswers answers;
  private final Limits limits;

  LayoutTwinsController(
      LayoutStore layouts,
      PostedRequests<TwinsRequest> pairs,
      TwinsComputations computations,
      PreparingCost cost,
      PostedAnswers answers,
      Limits limits) {
    this.layouts = layouts;
    this.pairs = pairs;
    this.computations = computations;
    this.cost = cost;
    this.answers = answers;
    this.limits = limits;
  }

  private static Parameter<Double> number(String name, NumberShape shape) {
    return Parameter.number(name, shape.least(), shape.most());
  }

  /** A number above 0. */
  private static Parameter<Double> above(String name, NumberShape shape) {
    return Parameter.number(name, Double.MIN_NORMAL, shape.most());
  }

  @GetMapping("/v1/layouts/{layoutId}/twins")
  ResponseEntity<byte[]> getLayoutTwins(@PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked = LayoutQuery.read(request, layouts, layoutId, KNOWN);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, OFFERED, TwinsReplies.VALUE);
    LayoutDocument layout = asked.layout();
    TwinsRequest twins = TwinsRequest.of(layout, members(query), true);
    twins.first().checkCost(limits, true);
    computations.check(twins, LayoutPlace.ADDRESS);
    cost.check(layout, LayoutPlace.ADDRESS);
    return answers.addressed(
        request,
        query,
        pairs,
        twins,
        computations.of(twins, LayoutPlace.ADDRESS),
        TwinsReplies.writer(form, query.get(PICTURE), query));
  }

  private static Body members(QueryParameters query) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("release", state(query.get(X), query.get(Y), query.get(VX), query.get(VY)));
    members.put(
        "shift",
        state(query.get(SHIFT_X), query.get(SHIFT_Y), query.get(SHIFT_VX), query.get(SHIFT_VY)));
    for (Parameter<Double> parameter : List.of(DURATION, INTERVAL, ACCURACY, THIN)) {
      query.find(parameter).ifPresent(value -> members.put(parameter.name(), value));
    }
    return Body.of(members);
  }

  private static Body state(double x, double y, double vx, double vy) {
    Map<String, Object> state = new LinkedHashMap<>();
    state.put("x", x);
    state.put("y", y);
    state.put("vx", vx);
    state.put("vy", vy);
    return Body.of(state);
  }
}
