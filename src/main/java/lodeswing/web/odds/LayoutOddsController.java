package lodeswing.web.odds;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.body.Body;
import lodeswing.web.body.NumberShape;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Odds by one address, for spreadsheets; a layout's figures may be changed on the way. */
@RestController
final class LayoutOddsController {

  static final List<Representation> OFFERED =
      List.of(
          Representation.JSON,
          Representation.CSV,
          Representation.CBOR,
          Representation.TEXT,
          Representation.SVG,
          Representation.PNG);

  private static final Parameter<Double> X = number("x", OddsShapes.PLACE).required();
  private static final Parameter<Double> Y = number("y", OddsShapes.PLACE).required();
  private static final Parameter<Double> VX = number("vx", OddsShapes.SPEED).orElse(0.0);
  private static final Parameter<Double> VY = number("vy", OddsShapes.SPEED).orElse(0.0);
  private static final Parameter<String> KIND =
      Parameter.oneOf("kind", "gaussian", "disc", "ring").orElse("gaussian");
  private static final Parameter<Double> SPREAD = number("spreadMm", OddsShapes.SIZE).required();
  private static final Parameter<Double> INNER = number("innerMm", OddsShapes.SIZE).orElse(0.0);
  private static final Parameter<Double> PUSH =
      number("spreadMmPerS", OddsShapes.SPEED_SIZE).orElse(0.0);
  private static final Parameter<Double> WIDTH =
      number("width", OddsShapes.WIDTH).orElse(OddsShapes.USUAL_WIDTH);
  private static final Parameter<String> INTERVAL =
      Parameter.oneOf("interval", OddsShapes.INTERVAL.words().toArray(String[]::new))
          .orElse(OddsShapes.USUAL_INTERVAL);
  private static final Parameter<Integer> SEED =
      Parameter.integer("seed", 0, Integer.MAX_VALUE).orElse((int) OddsShapes.USUAL_SEED);
  private static final Parameter<Boolean> PARTS = Parameter.flag("parts").orElse(false);
  private static final Parameter<Integer> RIGS =
      Parameter.integer("rigs", (int) OddsShapes.RIGS.least(), OddsShapes.MOST_RIGS)
          .orElse((int) OddsShapes.USUAL_RIGS);

  private static final Parameter<?>[] KNOWN = {
    X,
    Y,
    VX,
    VY,
    KIND,
    SPREAD,
    INNER,
    PUSH,
    WIDTH,
    INTERVAL,
    SEED,
    PARTS,
    RIGS,
    OddsReplies.PIXELS,
    OddsReplies.VALUE,
    OddsReplies.OUTCOME
  };

  private final LayoutStore layouts;
  private final OddsStore odds;
  private final OddsComputations computations;
  private final PreparingCost cost;
  private final ComputedAnswers answers;
  private final Limits limits;

  LayoutOddsController(
      LayoutStore layouts,
      OddsStore odds,
      OddsComputations computations,
      PreparingCost cost,
      ComputedAnswers answers,
      Limits limits) {
    this.layouts = layouts;
    this.odds = odds;
    this.computations = computations;
    this.cost = cost;
    this.answers = answers;
    this.limits = limits;
  }

  private static Parameter<Double> number(String name, NumberShape shape) {
    return Parameter.number(name, shape.least(), shape.most());
  }

  @GetMapping("/v1/layouts/{layoutId}/odds")
  ResponseEntity<byte[]> getLayoutOdds(@PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery read = LayoutQuery.read(request, layouts, layoutId, KNOWN);
    QueryParameters query = read.parameters();
    Representation form = OddsForm.choose(request, query, OFFERED);
    Body sent = body(query);
    OddsRequest asked = OddsRequest.of(read.layout(), sent);
    new OddsReview(asked, LayoutPlace.ADDRESS).check(sent, limits);
    cost.check(read.layout(), LayoutPlace.ADDRESS);
    odds.save(asked);
    return answers.reply(
        request,
        query,
        computations.of(asked, LayoutPlace.ADDRESS),
        result -> OddsReplies.of(form, asked, result.bytes(), query).cache(CachePolicy.SHORT));
  }

  private static Body body(QueryParameters query) {
    Map<String, Object> release = new LinkedHashMap<>();
    release.put("x", query.get(X));
    release.put("y", query.get(Y));
    release.put("vx", query.get(VX));
    release.put("vy", query.get(VY));
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("release", Body.of(release));
    members.put("spread", spread(query));
    members.put("parts", query.get(PARTS));
    members.put("width", query.get(WIDTH));
    members.put("interval", query.get(INTERVAL));
    members.put("seed", (double) query.get(SEED));
    members.put("rigs", (double) query.get(RIGS));
    return Body.of(members);
  }

  private static Body spread(QueryParameters query) {
    Map<String, Object> spread = new LinkedHashMap<>();
    spread.put("kind", query.get(KIND));
    switch (query.get(KIND)) {
      case "disc" -> spread.put("radius", query.get(SPREAD));
      case "ring" -> {
        spread.put("innerRadius", query.get(INNER));
        spread.put("outerRadius", query.get(SPREAD));
      }
      default -> spread.put("deviation", query.get(SPREAD));
    }
    spread.put("speedDeviation", query.get(PUSH));
    return Body.of(spread);
  }
}
