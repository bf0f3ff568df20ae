package lodeswing.web.check;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lodeswing.analysis.check.CheckCode;
import lodeswing.web.body.NumberShape;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Checks a rig before it is built; a layout's figures may be changed on the way. */
@RestController
final class CheckController {

  static final List<Representation> OFFERED =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);

  static final NumberShape RADIUS = NumberShape.between(1e-3, 100_000);
  static final NumberShape HAND = NumberShape.between(1e-6, 10_000);

  static final Parameter<CheckValue> VALUE =
      Parameter.constant("value", CheckValue.class, CheckValue::word);
  static final Parameter<CheckCode> LINE =
      Parameter.of(
          "line",
          "one of "
              + Arrays.stream(CheckCode.values())
                  .map(CheckCode::word)
                  .collect(Collectors.joining(", ")),
          CheckCode::of);

  private static final Parameter<Double> OUT_TO =
      Parameter.number("radius", RADIUS.least(), RADIUS.most());
  private static final Parameter<Double> SPREAD =
      Parameter.number("spreadMm", HAND.least(), HAND.most());
  private static final Parameter<Integer> SEED =
      Parameter.integer("seed", 0, Integer.MAX_VALUE).orElse(1);

  private final LayoutStore layouts;
  private final CheckComputations computations;
  private final PreparingCost cost;
  private final ComputedAnswers answers;

  CheckController(
      LayoutStore layouts,
      CheckComputations computations,
      PreparingCost cost,
      ComputedAnswers answers) {
    this.layouts = layouts;
    this.computations = computations;
    this.cost = cost;
    this.answers = answers;
  }

  @GetMapping("/v1/layouts/{layoutId}/check")
  ResponseEntity<byte[]> getCheck(@PathVariable String layoutId, HttpServletRequest request) {
    return answers.reply(request, asked(layoutId, Asking.of(request)));
  }

  /** What is asked for, without HTTP. */
  Answerable asked(String layoutId, Asking request) {
    LayoutQuery asked =
        LayoutQuery.read(request, layouts, layoutId, OUT_TO, SPREAD, SEED, LINE, VALUE);
    QueryParameters query = asked.parameters();
    LayoutDocument layout = asked.layout();
    checkLine(layout, query);
    Representation form = Negotiation.chooseForCell(request, query, OFFERED, VALUE);
    cost.check(layout, LayoutPlace.ADDRESS);
    layouts.save(layout);
    CheckRequest check =
        new CheckRequest(
            layout,
            query.find(OUT_TO).orElse(CheckRequest.usualRadius(layout)),
            query.find(SPREAD).orElse(CheckRequest.usualSpread(layout)),
            query.get(SEED));
    return Answerable.of(
        query,
        layout.subject(),
        computations.of(check, LayoutPlace.ADDRESS),
        result -> new CheckAnswers(check, result.bytes()).in(form, query).cache(CachePolicy.SHORT));
  }

  /** A value of a line needs a line, and one that the layout has. */
  private static void checkLine(LayoutDocument layout, QueryParameters query) {
    Optional<CheckCode> line = query.find(LINE);
    boolean bench = layout.model().equals("bench");
    if (line.isPresent() && !bench && !line.get().ofPlane()) {
      String known =
          Arrays.stream(CheckCode.values())
              .filter(CheckCode::ofPlane)
              .map(CheckCode::word)
              .collect(Collectors.joining(", "));
      throw refusal(
          "A textbook layout has no cord, hook, plate or stand.",
          new Fault("?line", "is not a line of a textbook layout; give one of " + known));
    }
    if (line.isEmpty() && query.find(VALUE).map(CheckValue::ofLine).orElse(false)) {
      throw refusal(
          "This value is one of a single line.",
          new Fault("?line", "is missing; it names the line, such as sticking"));
    }
  }

  private static ProblemException refusal(String detail, Fault fault) {
    return new ProblemException(ProblemCode.INVALID_REQUEST, detail, List.of(fault));
  }
}
