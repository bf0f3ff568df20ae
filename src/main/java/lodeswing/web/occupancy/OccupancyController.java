package lodeswing.web.occupancy;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import lodeswing.analysis.occupancy.OccupancySpec;
import lodeswing.web.body.NumberShape;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.CachePolicy;
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

/** Where the bob of a layout spends its time; a layout's figures may be changed on the way. */
@RestController
final class OccupancyController {

  static final List<Representation> OFFERED =
      List.of(
          Representation.JSON,
          Representation.CSV,
          Representation.CBOR,
          Representation.TEXT,
          Representation.SVG,
          Representation.PNG);

  static final NumberShape RADIUS = NumberShape.between(1e-3, 100_000);
  static final int LEAST_RELEASES = 4 * OccupancySpec.LOTS;
  static final int MOST_RELEASES = 1 << 20;

  static final Parameter<OccupancyValue> VALUE =
      Parameter.constant("value", OccupancyValue.class, OccupancyValue::word);

  private static final Parameter<Double> OUT_TO =
      Parameter.number("radius", RADIUS.least(), RADIUS.most());
  private static final Parameter<Double> DURATION =
      Parameter.number("durationS", Double.MIN_NORMAL, TraceShapes.DURATION.most());
  private static final Parameter<Integer> RELEASES =
      Parameter.integer("releases", LEAST_RELEASES, MOST_RELEASES)
          .orElse(OccupancyRequest.USUAL_RELEASES);
  private static final Parameter<Integer> SEED =
      Parameter.integer("seed", 0, Integer.MAX_VALUE).orElse(1);

  private static final Parameter<?>[] KNOWN = {
    OUT_TO, DURATION, RELEASES, SEED, DrawnReply.PIXELS, VALUE
  };

  private final LayoutStore layouts;
  private final OccupancyComputations computations;
  private final PreparingCost cost;
  private final ComputedAnswers answers;
  private final Limits limits;

  OccupancyController(
      LayoutStore layouts,
      OccupancyComputations computations,
      PreparingCost cost,
      ComputedAnswers answers,
      Limits limits) {
    this.layouts = layouts;
    this.computations = computations;
    this.cost = cost;
    this.answers = answers;
    this.limits = limits;
  }

  @GetMapping("/v1/layouts/{layoutId}/occupancy")
  ResponseEntity<byte[]> getOccupancy(@PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked = LayoutQuery.read(request, layouts, layoutId, KNOWN);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, OFFERED, VALUE);
    OccupancyRequest occupancy = occupancy(asked.layout(), query);
    occupancy.checkCost(limits);
    cost.check(asked.layout(), LayoutPlace.ADDRESS);
    layouts.save(asked.layout());
    return answers.reply(
        request,
        query,
        asked.layout().subject(),
        computations.of(occupancy, LayoutPlace.ADDRESS),
        result ->
            new OccupancyAnswers(occupancy, result.bytes())
                .in(form, query)
                .cache(CachePolicy.SHORT));
  }

  private OccupancyRequest occupancy(LayoutDocument layout, QueryParameters query) {
    int releases = query.get(RELEASES);
    if (releases % OccupancySpec.LOTS != 0) {
      int near = Math.round((float) releases / OccupancySpec.LOTS) * OccupancySpec.LOTS;
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "The releases come in " + OccupancySpec.LOTS + " lots of one size.",
          List.of(
              new Fault(
                  "?releases",
                  "must be a multiple of " + OccupancySpec.LOTS + ", such as " + near)));
    }
    return new OccupancyRequest(
        layout,
        query.find(OUT_TO).orElse(OccupancyRequest.usualRadius(layout)),
        query.find(DURATION).orElse(OccupancyRequest.usualDuration(layout, limits)),
        releases,
        query.get(SEED));
  }
}
