package lodeswing.web.basin;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.limits.Limits;
import lodeswing.web.posted.PostedRequests;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** What maps amount to, of a stored map or by one address below a layout. */
@RestController
final class BasinSummaryController {

  static final List<Representation> OFFERED =
      List.of(Representation.JSON, Representation.CBOR, Representation.CSV, Representation.TEXT);

  static final int LONGEST_NAME = 200;

  private static final Parameter<SummaryValue> VALUE =
      Parameter.constant("value", SummaryValue.class, SummaryValue::word);
  private static final Parameter<String> OUTCOME = Parameter.text("outcome", LONGEST_NAME);

  private static final Parameter<?>[] KNOWN = {
    BasinByAddress.X,
    BasinByAddress.Y,
    BasinByAddress.HALF_WIDTH,
    SummaryRequest.SIDE,
    SummaryRequest.SEED,
    VALUE,
    OUTCOME
  };

  private final PostedRequests<BasinRequest> basins;
  private final BasinByAddress byAddress;
  private final SummaryComputations computations;
  private final ComputedAnswers answers;
  private final Limits limits;

  BasinSummaryController(
      PostedRequests<BasinRequest> basins,
      BasinByAddress byAddress,
      SummaryComputations computations,
      ComputedAnswers answers,
      Limits limits) {
    this.basins = basins;
    this.byAddress = byAddress;
    this.computations = computations;
    this.answers = answers;
    this.limits = limits;
  }

  @GetMapping("/v1/basins/{basinId}/summary")
  ResponseEntity<byte[]> getBasinSummary(@PathVariable String basinId, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(request, SummaryRequest.SIDE, SummaryRequest.SEED, VALUE, OUTCOME);
    Representation form = form(request, query);
    BasinRequest basin = basins.get(basinId);
    return reply(request, query, form, basin, CachePolicy.IMMUTABLE);
  }

  @GetMapping("/v1/layouts/{layoutId}/basin/summary")
  ResponseEntity<byte[]> getLayoutBasinSummary(
      @PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked = byAddress.read(Asking.of(request), layoutId, KNOWN);
    QueryParameters query = asked.parameters();
    Representation form = form(request, query);
    BasinRequest basin = byAddress.basin(asked);
    basins.save(basin);
    return reply(request, query, form, basin, CachePolicy.SHORT);
  }

  private static Representation form(HttpServletRequest request, QueryParameters query) {
    Optional<SummaryValue> value = query.find(VALUE);
    if (value.filter(SummaryValue::ofOneEnd).isPresent() && query.find(OUTCOME).isEmpty()) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "A share is that of one end.",
          List.of(new Fault("?outcome", "is missing: give the label or name of an end")));
    }
    return Negotiation.chooseForCell(request, query, OFFERED, VALUE);
  }

  private ResponseEntity<byte[]> reply(
      HttpServletRequest request,
      QueryParameters query,
      Representation form,
      BasinRequest basin,
      CachePolicy cache) {
    SummaryRequest asked = SummaryRequest.of(basin, query, limits);
    return answers.replyAsStored(
        request,
        query,
        basin.layout().subject(),
        asked,
        summary -> List.of(computations.of(summary)),
        (summary, result) ->
            written(form, summary, StoredSummary.read(result.bytes()), query).cache(cache));
  }

  private static Reply written(
      Representation form, SummaryRequest asked, StoredSummary stored, QueryParameters query) {
    return switch (form) {
      case TEXT -> cell(asked, stored, query);
      case CSV -> Reply.of(form, new SummaryAnswers(asked, stored).csv(TableDialect.of(query)));
      default -> Reply.ofResult(form, new SummaryAnswers(asked, stored).json(), asked.revision());
    };
  }

  /** The single value. */
  private static Reply cell(SummaryRequest asked, StoredSummary stored, QueryParameters query) {
    SummaryValue value = query.find(VALUE).orElse(SummaryValue.SENTENCE);
    String text = new SummaryCells(asked, stored).text(value, query.find(OUTCOME).orElse(""));
    return value.inWords() ? Reply.ofWords(text) : Reply.ofFigure(text, query);
  }
}
