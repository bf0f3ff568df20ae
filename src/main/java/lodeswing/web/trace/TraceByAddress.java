package lodeswing.web.trace;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lodeswing.web.body.Body;
import lodeswing.web.body.NumberShape;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import org.springframework.stereotype.Component;

/** Reads what trace an address below a layout asks for. */
@Component
final class TraceByAddress {

  static final Parameter<Double> X = number("x", TraceShapes.PLACE).required();
  static final Parameter<Double> Y = number("y", TraceShapes.PLACE).required();
  static final Parameter<Double> VX = number("vx", TraceShapes.SPEED).orElse(0.0);
  static final Parameter<Double> VY = number("vy", TraceShapes.SPEED).orElse(0.0);
  static final Parameter<Double> DURATION = above("durationS", TraceShapes.DURATION);
  private static final Parameter<Double> INTERVAL = above("sampleIntervalS", TraceShapes.INTERVAL);
  private static final Parameter<Double> ACCURACY = above("placingAccuracy", TraceShapes.ACCURACY);
  private static final Parameter<Double> THIN = number("thin", TraceShapes.THIN);
  private static final Parameter<String> BETWEEN =
      Parameter.oneOf("between", TraceShapes.BETWEEN.words().toArray(String[]::new));

  /** All that say what trace is meant. */
  private static final List<Parameter<?>> ALL =
      List.of(X, Y, VX, VY, DURATION, INTERVAL, ACCURACY, THIN, BETWEEN);

  private final LayoutStore layouts;
  private final TraceComputations computations;
  private final PreparingCost cost;
  private final Limits limits;

  TraceByAddress(
      LayoutStore layouts, TraceComputations computations, PreparingCost cost, Limits limits) {
    this.layouts = layouts;
    this.computations = computations;
    this.cost = cost;
    this.limits = limits;
  }

  private static Parameter<Double> number(String name, NumberShape shape) {
    return Parameter.number(name, shape.least(), shape.most());
  }

  /** A number above 0. */
  private static Parameter<Double> above(String name, NumberShape shape) {
    return Parameter.number(name, Double.MIN_NORMAL, shape.most());
  }

  /** The query of an address for a trace, with further parameters that its answer knows. */
  LayoutQuery read(Asking request, String layoutId, Parameter<?>... further) {
    Parameter<?>[] known =
        Stream.concat(ALL.stream(), Stream.of(further)).toArray(Parameter<?>[]::new);
    return LayoutQuery.read(request, layouts, layoutId, known);
  }

  /** The same for an outcome, which takes a release alone. */
  LayoutQuery readOutcome(HttpServletRequest request, String layoutId) {
    return LayoutQuery.read(request, layouts, layoutId, X, Y, VX, VY, TraceReplies.VALUE);
  }

  /** The trace that is asked for, found to be sound. */
  TraceRequest trace(LayoutQuery asked) {
    QueryParameters query = asked.parameters();
    LayoutDocument layout = asked.layout();
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
    query.find(BETWEEN).ifPresent(word -> members.put(BETWEEN.name(), word));
    TraceRequest trace = TraceRequest.of(layout, Body.of(members));
    trace.checkCost(limits, true);
    computations.checkShapes(trace, LayoutPlace.ADDRESS);
    cost.check(layout, LayoutPlace.ADDRESS);
    return trace;
  }
}
