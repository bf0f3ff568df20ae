package lodeswing.web.odds;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.body.Body;
import lodeswing.web.body.NumberShape;
import lodeswing.web.hand.HandByAddress;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
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
    HandByAddress.X,
    HandByAddress.Y,
    HandByAddress.VX,
    HandByAddress.VY,
    HandByAddress.KIND,
    HandByAddress.SPREAD,
    HandByAddress.INNER,
    HandByAddress.PUSH,
    WIDTH,
    INTERVAL,
    SEED,
    PARTS,
    RIGS,
    DrawnReply.PIXELS,
    OddsReplies.VALUE,
    OddsReplies.OUTCOME
  };

  private final LayoutStore layouts;
  private final PostedRequests<OddsRequest> odds;
  private final OddsComputations computations;
  private final PreparingCost cost;
  private final PostedAnswers answers;
  private final Limits limits;

  LayoutOddsController(
      LayoutStore layouts,
      PostedRequests<OddsRequest> odds,
      OddsComputations computations,
      PreparingCost cost,
      PostedAnswers answers,
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
    Representation form = Negotiation.chooseForCell(request, query, OFFERED, OddsReplies.VALUE);
    Body sent = body(query);
    OddsRequest asked = OddsRequest.of(read.layout(), sent);
    new OddsReview(asked, LayoutPlace.ADDRESS).check(sent, limits);
    cost.check(read.layout(), LayoutPlace.ADDRESS);
    return answers.addressed(
        request,
        query,
        odds,
        asked,
        computations.of(asked, LayoutPlace.ADDRESS),
        OddsReplies.writer(form, query));
  }

  private static Body body(QueryParameters query) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("release", HandByAddress.release(query));
    members.put("spread", HandByAddress.spread(query));
    members.put("parts", query.get(PARTS));
    members.put("width", query.get(WIDTH));
    members.put("interval", query.get(INTERVAL));
    members.put("seed", (double) query.get(SEED));
    members.put("rigs", (double) query.get(RIGS));
    return Body.of(members);
  }
}
