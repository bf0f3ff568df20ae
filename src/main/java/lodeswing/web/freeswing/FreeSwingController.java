package lodeswing.web.freeswing;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.web.body.NumberShape;
import lodeswing.web.jobs.Answerable;
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
import lodeswing.web.representation.Asking;
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

/** The swing of a rig without its magnets; a layout's figures may be changed on the way. */
@RestController
final class FreeSwingController {

  static final List<Representation> OFFERED =
      List.of(
          Representation.JSON,
          Representation.CSV,
          Representation.CBOR,
          Representation.TEXT,
          Representation.SVG,
          Representation.PNG);

  static final NumberShape NEARNESS = NumberShape.between(0.01, 100_000);

  static final Parameter<FreeSwingValue> VALUE =
      Parameter.constant("value", FreeSwingValue.class, FreeSwingValue::word);

  private static final Parameter<Double> X = number("x", TraceShapes.PLACE);
  private static final Parameter<Double> Y = number("y", TraceShapes.PLACE);
  private static final Parameter<Double> VX = number("vx", TraceShapes.SPEED).orElse(0.0);
  private static final Parameter<Double> VY = number("vy", TraceShapes.SPEED).orElse(0.0);
  private static final Parameter<Double> DURATION =
      Parameter.number("durationS", Double.MIN_NORMAL, TraceShapes.DURATION.most());
  private static final Parameter<Double> WITHIN = number("within", NEARNESS);
  private static final Parameter<Boolean> SECOND_PATH = Parameter.flag("secondPath").orElse(false);

  private static final Parameter<?>[] KNOWN = {
    X, Y, VX, VY, DURATION, WITHIN, SECOND_PATH, DrawnReply.PIXELS, VALUE
  };

  private final LayoutStore layouts;
  private final FreeSwingComputations computations;
  private final PreparingCost cost;
  private final ComputedAnswers answers;
  private final Limits limits;

  FreeSwingController(
      LayoutStore layouts,
      FreeSwingComputations computations,
      PreparingCost cost,
      ComputedAnswers answers,
      Limits limits) {
    this.layouts = layouts;
    this.computations = computations;
    this.cost = cost;
    this.answers = answers;
    this.limits = limits;
  }

  private static Parameter<Double> number(String name, NumberShape shape) {
    return Parameter.number(name, shape.least(), shape.most());
  }

  @GetMapping("/v1/layouts/{layoutId}/free-swing")
  ResponseEntity<byte[]> getFreeSwing(@PathVariable String layoutId, HttpServletRequest request) {
    return answers.reply(request, asked(layoutId, Asking.of(request)));
  }

  /** What is asked for, without HTTP. */
  Answerable asked(String layoutId, Asking request) {
    LayoutQuery asked = LayoutQuery.read(request, layouts, layoutId, KNOWN);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, OFFERED, VALUE);
    FreeSwingRequest swing = swing(asked.layout(), query);
    swing.checkCost(limits);
    computations.checkShapes(swing);
    if (swing.among().isPresent()) {
      cost.check(asked.layout(), LayoutPlace.ADDRESS);
    }
    layouts.save(asked.layout());
    return Answerable.of(
        query,
        asked.layout().subject(),
        computations.of(swing, LayoutPlace.ADDRESS),
        result ->
            new FreeSwingAnswers(swing, result.bytes()).in(form, query).cache(CachePolicy.SHORT));
  }

  private FreeSwingRequest swing(LayoutDocument layout, QueryParameters query) {
    boolean drawn = query.get(SECOND_PATH);
    boolean parting = query.find(VALUE).filter(FreeSwingValue.PARTED_AT::equals).isPresent();
    Optional<FreeSwingRequest.Among> among =
        query.find(WITHIN).isPresent() || drawn || parting
            ? Optional.of(
                new FreeSwingRequest.Among(
                    query.find(WITHIN).orElse(FreeSwingRequest.usualWithin(layout)), drawn))
            : Optional.empty();
    return new FreeSwingRequest(
        layout,
        release(layout, query),
        query.find(DURATION).orElse(FreeSwingRequest.usualDuration(layout, limits)),
        among);
  }

  /** The release of the query, or the usual one where it names none. */
  private static List<Double> release(LayoutDocument layout, QueryParameters query) {
    List<Double> push = List.of(query.get(VX), query.get(VY));
    List<Double> place = new ArrayList<>();
    List<Fault> missing = new ArrayList<>();
    for (Parameter<Double> coordinate : List.of(X, Y)) {
      query
          .find(coordinate)
          .ifPresentOrElse(
              place::add,
              () ->
                  missing.add(
                      new Fault(
                          "?" + coordinate.name(),
                          "is missing: give both coordinates of a place, or neither for the usual"
                              + " release")));
    }
    if (missing.size() == 1) {
      throw new ProblemException(ProblemCode.INVALID_REQUEST, "Half a place is no place.", missing);
    }
    if (place.isEmpty()) {
      double usual = FreeSwingRequest.usualPlace(layout);
      place.addAll(List.of(usual, usual));
    }
    place.addAll(push);
    return place;
  }
}
