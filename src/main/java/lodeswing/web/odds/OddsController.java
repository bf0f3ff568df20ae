package lodeswing.web.odds;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.analysis.odds.PartsTrial;
import lodeswing.job.Computation;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.DryRun;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.KeptReplies;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
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
  private static final Parameter<Boolean> DRY_RUN = Parameter.flag("dry-run").orElse(false);

  private final LayoutStore layouts;
  private final OddsStore odds;
  private final OddsComputations computations;
  private final PreparingCost cost;
  private final DryRun dryRun;
  private final ComputedAnswers answers;
  private final Limits limits;
  private final KeptReplies kept;

  OddsController(
      LayoutStore layouts,
      OddsStore odds,
      OddsComputations computations,
      PreparingCost cost,
      DryRun dryRun,
      ComputedAnswers answers,
      Limits limits,
      KeptReplies kept) {
    this.layouts = layouts;
    this.odds = odds;
    this.computations = computations;
    this.cost = cost;
    this.dryRun = dryRun;
    this.answers = answers;
    this.limits = limits;
    this.kept = kept;
  }

  @PostMapping(path = "/v1/odds", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createOdds(
      @RequestBody(required = false) byte[] body, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(request, DRY_RUN, OddsReplies.VALUE, OddsReplies.OUTCOME);
    Representation form = OddsForm.choose(request, query, DOCUMENT);
    Body sent = BodyReader.read(body == null ? new byte[0] : body, OddsShapes.REQUEST);
    LayoutDocument layout =
        sent.findObject("layout")
            .map(LayoutDocument::of)
            .orElseGet(() -> layouts.get(sent.text("layoutId")));
    LayoutPlace place = sent.has("layout") ? LayoutPlace.WHOLE : LayoutPlace.STORED;
    OddsRequest asked = OddsRequest.of(layout, sent);
    new OddsReview(asked, place).check(sent, limits);
    cost.check(layout, place);
    Computation work = computations.of(asked, place);
    if (query.get(DRY_RUN)) {
      return Reply.ofJson(Representation.JSON, dryRun.of(layout, work, named(asked))).to(request);
    }
    odds.save(asked);
    return answers.reply(
        request,
        query,
        work,
        result -> OddsReplies.of(form, asked, result.bytes(), query).readAt(asked.url()));
  }

  private Map<String, Object> named(OddsRequest asked) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("oddsId", asked.oddsId());
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
        oddsId, "/bars", request, PICTURE, QueryParameters.read(request, OddsReplies.PIXELS));
  }

  private ResponseEntity<byte[]> answer(
      String oddsId,
      String part,
      HttpServletRequest request,
      List<Representation> offered,
      QueryParameters query) {
    Representation form = OddsForm.choose(request, query, offered);
    Optional<ResponseEntity<byte[]>> written = kept.find(request, query, form);
    if (written.isPresent()) {
      return written.get();
    }
    return answers.replyAsStored(
        request,
        query,
        odds.get(oddsId),
        asked -> List.of(computations.of(asked, LayoutPlace.STORED)),
        (asked, result) ->
            kept.keep(
                asked.url() + part,
                query,
                form,
                result,
                () ->
                    OddsReplies.of(form, asked, result.bytes(), query)
                        .cache(CachePolicy.IMMUTABLE)));
  }
}
