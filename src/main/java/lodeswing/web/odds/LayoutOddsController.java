package lodeswing.web.odds;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.stream.Stream;
import lodeswing.web.body.Body;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.posted.PostedRequests;
import lodeswing.web.representation.Asking;
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

  private static final Parameter<?>[] KNOWN =
      Stream.concat(
              OddsByAddress.all().stream(),
              Stream.of(DrawnReply.PIXELS, OddsReplies.VALUE, OddsReplies.OUTCOME))
          .toArray(Parameter<?>[]::new);

  private final LayoutStore layouts;
  private final PostedRequests<OddsRequest> odds;
  private final OddsComputations computations;
  private final PreparingCost cost;
  private final PostedAnswers answers;
  private final ComputedAnswers computed;
  private final Limits limits;

  LayoutOddsController(
      LayoutStore layouts,
      PostedRequests<OddsRequest> odds,
      OddsComputations computations,
      PreparingCost cost,
      PostedAnswers answers,
      ComputedAnswers computed,
      Limits limits) {
    this.layouts = layouts;
    this.odds = odds;
    this.computations = computations;
    this.cost = cost;
    this.answers = answers;
    this.computed = computed;
    this.limits = limits;
  }

  @GetMapping("/v1/layouts/{layoutId}/odds")
  ResponseEntity<byte[]> getLayoutOdds(@PathVariable String layoutId, HttpServletRequest request) {
    return computed.reply(request, asked(layoutId, Asking.of(request)));
  }

  /** What is asked for, without HTTP. */
  Answerable asked(String layoutId, Asking request) {
    LayoutQuery read = LayoutQuery.read(request, layouts, layoutId, KNOWN);
    QueryParameters query = read.parameters();
    Representation form = Negotiation.chooseForCell(request, query, OFFERED, OddsReplies.VALUE);
    Body sent = OddsByAddress.body(query);
    OddsRequest asked = OddsRequest.of(read.layout(), sent);
    new OddsReview(asked, LayoutPlace.ADDRESS).check(sent, limits);
    cost.check(read.layout(), LayoutPlace.ADDRESS);
    return answers.addressed(
        query,
        odds,
        asked,
        computations.of(asked, LayoutPlace.ADDRESS),
        OddsReplies.writer(form, query, LayoutPlace.ADDRESS));
  }
}
