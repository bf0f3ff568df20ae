package lodeswing.web.basin;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.DryRun;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.posted.PostedRequests;
import lodeswing.web.posted.SentRequest;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Maps that are posted and then fetched: the document of each, and what a viewer needs. */
@RestController
final class BasinController {

  static final List<Representation> DOCUMENT = List.of(Representation.JSON, Representation.CBOR);

  private final LayoutStore layouts;
  private final PostedRequests<BasinRequest> basins;
  private final BasinComputations computations;
  private final PreparingCost cost;
  private final DryRun dryRun;
  private final ComputedAnswers answers;

  BasinController(
      LayoutStore layouts,
      PostedRequests<BasinRequest> basins,
      BasinComputations computations,
      PreparingCost cost,
      DryRun dryRun,
      ComputedAnswers answers) {
    this.layouts = layouts;
    this.basins = basins;
    this.computations = computations;
    this.cost = cost;
    this.dryRun = dryRun;
    this.answers = answers;
  }

  @PostMapping(path = "/v1/basins", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createBasin(
      @RequestBody(required = false) byte @Nullable [] body, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, GeneralParameters.DRY_RUN);
    Representation form = Negotiation.choose(request, query, DOCUMENT);
    SentRequest sent = SentRequest.read(body, BasinShapes.REQUEST, layouts);
    BasinRequest basin = BasinRequest.of(sent.layout(), sent.body()).checked("/window/");
    cost.check(sent.layout(), sent.place());
    if (query.get(GeneralParameters.DRY_RUN)) {
      return Reply.ofJson(form, dryRun.of(sent.layout(), computations.survey(basin), named(basin)))
          .to(request, sent.layout().subject().unstored());
    }
    int status = basins.save(basin) ? 201 : 200;
    return answers.reply(
        request,
        query,
        basin.layout().subject(),
        computations.survey(basin),
        result ->
            Reply.ofJson(form, answers(basin, result.bytes()).json())
                .status(status)
                .readAt(basin.url()));
  }

  private static Map<String, Object> named(BasinRequest basin) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("basinId", basin.id());
    members.put("window", basin.windowBody());
    members.put("releasesPerTile", (double) BasinAnswers.TILE_SIZE * BasinAnswers.TILE_SIZE);
    return members;
  }

  private static BasinAnswers answers(BasinRequest basin, byte[] survey) {
    return new BasinAnswers(basin, StoredSurvey.read(survey));
  }

  @GetMapping("/v1/basins/{basinId}")
  ResponseEntity<byte[]> getBasin(@PathVariable String basinId, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, DOCUMENT);
    BasinRequest basin = basins.get(basinId);
    return answers.replyAsStored(
        request,
        query,
        basin.layout().subject(),
        basin,
        asked -> List.of(computations.survey(asked)),
        (asked, result) ->
            Reply.ofResult(form, answers(asked, result.bytes()).json(), asked.revision())
                .cache(CachePolicy.IMMUTABLE));
  }

  @GetMapping("/v1/basins/{basinId}/viewer")
  ResponseEntity<byte[]> getBasinViewer(@PathVariable String basinId, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, DOCUMENT);
    BasinRequest basin = basins.get(basinId);
    return answers.replyAsStored(
        request,
        query,
        basin.layout().subject(),
        basin,
        asked -> List.of(computations.survey(asked)),
        (asked, result) ->
            Reply.ofJson(form, answers(asked, result.bytes()).viewerJson())
                .cache(CachePolicy.IMMUTABLE));
  }
}
