package lodeswing.web.basin;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.DryRun;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.PreparingCost;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.limits.Limits;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Ends of lists of releases, posted as columns or as a table. */
@RestController
final class OutcomeListController {

  static final List<Representation> OFFERED =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR);

  private final LayoutStore layouts;
  private final OutcomeListComputations computations;
  private final ComputedAnswers answers;
  private final PreparingCost cost;
  private final DryRun dryRun;
  private final Limits limits;

  OutcomeListController(
      LayoutStore layouts,
      OutcomeListComputations computations,
      ComputedAnswers answers,
      PreparingCost cost,
      DryRun dryRun,
      Limits limits) {
    this.layouts = layouts;
    this.computations = computations;
    this.answers = answers;
    this.cost = cost;
    this.dryRun = dryRun;
    this.limits = limits;
  }

  @PostMapping(
      path = "/v1/layouts/{layoutId}/outcomes",
      consumes = {MediaType.APPLICATION_JSON_VALUE, "text/csv"})
  ResponseEntity<byte[]> createOutcomes(
      @PathVariable String layoutId,
      @RequestBody(required = false) byte[] body,
      HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(request, BasinQuery.SETTLED, GeneralParameters.DRY_RUN);
    Representation form = Negotiation.choose(request, query, OFFERED);
    boolean settled = query.get(BasinQuery.SETTLED);
    int most = settled ? limits.settledReleases() : limits.releases();
    byte[] bytes = body == null ? new byte[0] : body;
    Body sent =
        isTable(request)
            ? ReleaseTable.read(bytes, most)
            : BodyReader.read(bytes, OutcomeShapes.REQUEST);
    ReleaseList list = ReleaseList.of(layouts.get(layoutId), sent, settled, most);
    cost.check(list.layout(), LayoutPlace.STORED);
    if (query.get(GeneralParameters.DRY_RUN)) {
      Map<String, Object> count = Map.of("releases", (double) list.count());
      return Reply.ofJson(
              Representation.JSON, dryRun.of(list.layout(), computations.of(list), count))
          .to(request, list.layout().subject().unstored());
    }
    computations.save(list);
    String url = "/v1/outcomes/" + list.listId();
    return answers.reply(
        request,
        query,
        list.layout().subject(),
        computations.of(list),
        result -> reply(form, list, result.bytes(), query).readAt(url));
  }

  private static boolean isTable(HttpServletRequest request) {
    return Optional.ofNullable(request.getContentType())
        .filter(type -> MediaType.parseMediaType(type).getSubtype().equals("csv"))
        .isPresent();
  }

  @GetMapping("/v1/outcomes/{outcomesId}")
  ResponseEntity<byte[]> getOutcomes(@PathVariable String outcomesId, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, OFFERED);
    ReleaseList list = computations.get(outcomesId);
    return answers.replyAsStored(
        request,
        query,
        list.layout().subject(),
        list,
        asked -> List.of(computations.of(asked)),
        (asked, result) -> reply(form, asked, result.bytes(), query).cache(CachePolicy.IMMUTABLE));
  }

  private static Reply reply(
      Representation form, ReleaseList list, byte[] result, QueryParameters query) {
    var answer = new OutcomeListAnswers(list, result);
    return form == Representation.CSV
        ? Reply.of(form, answer.csv(TableDialect.of(query)))
        : Reply.ofResult(form, answer.json(), list.revision());
  }
}
