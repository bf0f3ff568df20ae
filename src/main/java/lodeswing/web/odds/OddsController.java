package lodeswing.web.odds;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.analysis.odds.PartsTrial;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.posted.PostedRequests;
import lodeswing.web.posted.SentRequest;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Odds that are posted and then fetched. */
@RestController
final class OddsController {

  static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);
  static final List<Representation> PICTURE = List.of(Representation.SVG, Representation.PNG);

  private final LayoutStore layouts;
  private final PostedRequests<OddsRequest> odds;
  private final OddsComputations computations;
  private final PreparingCost cost;
  private final Limits limits;
  private final PostedAnswers answers;

  OddsController(
      LayoutStore layouts,
      PostedRequests<OddsRequest> odds,
      OddsComputations computations,
      PreparingCost cost,
      Limits limits,
      PostedAnswers answers) {
    this.layouts = layouts;
    this.odds = odds;
    this.computations = computations;
    this.cost = cost;
    this.limits = limits;
    this.answers = answers;
  }

  @PostMapping(path = "/v1/odds", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createOdds(
      @RequestBody(required = false) byte @Nullable [] body, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(
            request, GeneralParameters.DRY_RUN, OddsReplies.VALUE, OddsReplies.OUTCOME);
    Representation form = Negotiation.chooseForCell(request, query, DOCUMENT, OddsReplies.VALUE);
    SentRequest sent = SentRequest.read(body, OddsShapes.REQUEST, layouts);
    OddsRequest asked = OddsRequest.of(sent.layout(), sent.body());
    new OddsReview(asked, sent.place()).check(sent.body(), limits);
    cost.check(sent.layout(), sent.place());
    return answers.created(
        request,
        query,
        odds,
        asked,
        computations.of(asked, sent.place()),
        named(asked),
        OddsReplies.writer(form, query, sent.place()));
  }

  private Map<String, Object> named(OddsRequest asked) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("oddsId", asked.id());
    long varied = (long) asked.rigs() * PartsTrial.RELEASES;
    members.put("releases", (double) (computations.releases(asked) + varied));
    return members;
  }

  @GetMapping("/v1/odds/{oddsId}")
  ResponseEntity<byte[]> getOdds(@PathVariable String oddsId, HttpServletRequest request) {
    return answer(
        oddsId,
        "",
        request,
        DOCUMENT,
        QueryParameters.read(request, OddsReplies.VALUE, OddsReplies.OUTCOME));
  }

  @GetMapping("/v1/odds/{oddsId}/bars")
  ResponseEntity<byte[]> getOddsBars(@PathVariable String oddsId, HttpServletRequest request) {
    return answer(
        oddsId, "/bars", request, PICTURE, QueryParameters.read(request, DrawnReply.PIXELS));
  }

  private ResponseEntity<byte[]> answer(
      String oddsId,
      String path,
      HttpServletRequest request,
      List<Representation> offered,
      QueryParameters query) {
    Representation form = Negotiation.chooseForCell(request, query, offered, OddsReplies.VALUE);
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, path),
        () -> odds.get(oddsId),
        asked -> List.of(computations.of(asked, LayoutPlace.STORED)),
        asked -> OddsReplies.writer(form, query, LayoutPlace.STORED));
  }
}
