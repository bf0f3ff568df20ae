package lodeswing.web.trace;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.body.Body;
import lodeswing.web.body.NumberShape;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/**
 * Traces and outcomes by one address, for spreadsheets; a layout's figures may be changed on the
 * way.
 */
@RestController
final class LayoutTraceController {

  static final List<Representation> TRACE =
      List.of(
          Representation.JSON,
          Representation.CSV,
          Representation.CBOR,
          Representation.TEXT,
          Representation.SVG,
          Representation.PNG);
  static final List<Representation> OUTCOME =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);

  private static final Parameter<Double> X = number("x", TraceShapes.PLACE).required();
  private static final Parameter<Double> Y = number("y", TraceShapes.PLACE).required();
  private static final Parameter<Double> VX = number("vx", TraceShapes.SPEED).orElse(0.0);
  private static final Parameter<Double> VY = number("vy", TraceShapes.SPEED).orElse(0.0);
  private static final Parameter<Double> DURATION = above("durationS", TraceShapes.DURATION);
  private static final Parameter<Double> INTERVAL = above("sampleIntervalS", TraceShapes.INTERVAL);
  private static final Parameter<Double> ACCURACY = above("placingAccuracy", TraceShapes.ACCURACY);
  private static final Parameter<Double> THIN = number("thin", TraceShapes.THIN);

  private static final Parameter<?>[] KNOWN = {
    X, Y, VX, VY, DURATION, INTERVAL, ACCURACY, THIN, TraceReplies.WIDTH, TraceReplies.VALUE
  };

  private final LayoutStore layouts;
  private final TraceStore traces;
  private final TraceComputations computations;
  private final PreparingCost cost;
  private final ComputedAnswers answers;
  private final Limits limits;

  LayoutTraceController(
      LayoutStore layouts,
      TraceStore traces,
      TraceComputations computations,
      PreparingCost cost,
      ComputedAnswers answers,
      Limits limits) {
    this.layouts = layouts;
    this.traces = traces;
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

  @GetMapping("/v1/layouts/{layoutId}/trace")
  ResponseEntity<byte[]> getLayoutTrace(@PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked = LayoutQuery.read(request, layouts, layoutId, KNOWN);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, TRACE, TraceReplies.VALUE);
    TraceRequest trace = trace(asked);
    traces.save(trace);
    return answers.reply(
        request,
        query,
        computations.of(trace, "/v1/traces/" + trace.traceId(), LayoutPlace.ADDRESS),
        result -> TraceReplies.of(form, trace, result.bytes(), query).cache(CachePolicy.SHORT));
  }

  @GetMapping("/v1/layouts/{layoutId}/outcome")
  ResponseEntity<byte[]> getOutcome(@PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked =
        LayoutQuery.read(request, layouts, layoutId, X, Y, VX, VY, TraceReplies.VALUE);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, OUTCOME, TraceReplies.VALUE);
    TraceRequest trace = trace(asked);
    traces.save(trace);
    return answers.reply(
        request,
        query,
        computations.of(trace, "/v1/traces/" + trace.traceId(), LayoutPlace.ADDRESS),
        result ->
            TraceReplies.ofOutcome(form, trace, result.bytes(), query).cache(CachePolicy.SHORT));
  }

  private TraceRequest trace(LayoutQuery asked) {
    QueryParameters query = asked.parameters();
    LayoutDocument layout = asked.layout();
    layouts.save(layout);
    Map<String, Object> release = new LinkedHashMap<>();
    release.put("x", query.get(X));
    release.put("y", query.get(Y));
    release.put("vx", query.get(VX));
    release.put("vy", query.get(VY));
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("release", Body.of(release));
    for (Parameter<Double> parameter : List.of(DURATION, INTERVAL, ACCURACY, THIN)) {
      query.find(parameter).ifPresent(value -> members.put(parameter.name(), value));
    }
    TraceRequest trace = TraceRequest.of(layout, Body.of(members));
    trace.checkCost(limits, true);
    computations.checkShapes(trace, LayoutPlace.ADDRESS);
    cost.check(layout, LayoutPlace.ADDRESS);
    return trace;
  }
}
