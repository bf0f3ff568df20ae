package lodeswing.web.basin;

import java.util.LinkedHashMap;
import java.util.Map;
import lodeswing.web.body.Body;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import org.springframework.stereotype.Component;

/** Reads a map from one address below a layout, whose figures may be changed on the way. */
@Component
final class BasinByAddress {

  static final Parameter<Double> X =
      Parameter.number("x", BasinShapes.PLACE.least(), BasinShapes.PLACE.most());
  static final Parameter<Double> Y =
      Parameter.number("y", BasinShapes.PLACE.least(), BasinShapes.PLACE.most());
  static final Parameter<Double> HALF_WIDTH =
      Parameter.number("halfWidth", Double.MIN_NORMAL, BasinShapes.HALF_WIDTH.most());

  private final LayoutStore layouts;
  private final PreparingCost cost;

  BasinByAddress(LayoutStore layouts, PreparingCost cost) {
    this.layouts = layouts;
    this.cost = cost;
  }

  /**
   * The query and the layout.
   *
   * @param known every parameter of the resource, {@link #X}, {@link #Y} and {@link #HALF_WIDTH}
   *     among them; all others are figures of the layout
   * @throws ProblemException where there is no such layout or figure
   */
  LayoutQuery read(Asking request, String layoutId, Parameter<?>... known) {
    return LayoutQuery.read(request, layouts, layoutId, known);
  }

  /**
   * The map.
   *
   * @throws ProblemException where there is no such map
   */
  BasinRequest basin(LayoutQuery asked) {
    QueryParameters query = asked.parameters();
    LayoutDocument layout = asked.layout();
    cost.check(layout, LayoutPlace.ADDRESS);
    Map<String, Object> window = new LinkedHashMap<>();
    window.put("x", query.find(X).orElse(0.0));
    window.put("y", query.find(Y).orElse(0.0));
    window.put("halfWidth", query.find(HALF_WIDTH).orElseGet(() -> UsualWindow.halfWidth(layout)));
    return BasinRequest.of(layout, Body.of(Map.of("window", Body.of(window)))).checked("?");
  }
}
