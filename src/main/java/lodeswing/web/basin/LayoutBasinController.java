package lodeswing.web.basin;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.limits.Limits;
import lodeswing.web.posted.PostedRequests;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Maps by one address, for spreadsheets; a layout's figures may be changed on the way. */
@RestController
final class LayoutBasinController {

  static final List<Representation> OFFERED =
      List.of(Representation.JSON, Representation.CBOR, Representation.TEXT, Representation.PNG);

  private static final Parameter<?>[] KNOWN = {
    BasinByAddress.X,
    BasinByAddress.Y,
    BasinByAddress.HALF_WIDTH,
    BasinQuery.WIDTH,
    BasinQuery.HEIGHT,
    BasinQuery.PATTERNS
  };

  private final BasinByAddress byAddress;
  private final PostedRequests<BasinRequest> basins;
  private final BasinComputations computations;
  private final BasinReplies replies;
  private final ComputedAnswers answers;
  private final Limits limits;

  // One more than usual: a map by address is stored, computed and drawn in one request.
  LayoutBasinController(
      BasinByAddress byAddress,
      PostedRequests<BasinRequest> basins,
      BasinComputations computations,
      BasinReplies replies,
      ComputedAnswers answers,
      Limits limits) {
    this.byAddress = byAddress;
    this.basins = basins;
    this.computations = computations;
    this.replies = replies;
    this.answers = answers;
    this.limits = limits;
  }

  @GetMapping("/v1/layouts/{layoutId}/basin")
  ResponseEntity<byte[]> getLayoutBasin(@PathVariable String layoutId, HttpServletRequest request) {
    return answers.reply(request, asked(layoutId, Asking.of(request)));
  }

  /** What is asked for, without HTTP. */
  Answerable asked(String layoutId, Asking request) {
    LayoutQuery asked = byAddress.read(request, layoutId, KNOWN);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.choose(request, query, OFFERED);
    BasinRequest basin = byAddress.basin(asked);
    BasinQuery.Size size = BasinQuery.Size.of(query, limits);
    basins.save(basin);
    if (form == Representation.PNG) {
      return Answerable.of(
          query,
          basin.layout().subject(),
          computations.preview(basin, size.width(), size.height()),
          result ->
              replies.preview(form, basin, size, result.bytes(), query).cache(CachePolicy.SHORT));
    }
    return Answerable.of(
        query,
        basin.layout().subject(),
        computations.survey(basin),
        result -> document(form, basin, result.bytes()).cache(CachePolicy.SHORT));
  }

  private static Reply document(Representation form, BasinRequest basin, byte[] survey) {
    return form == Representation.TEXT
        ? Reply.ofWords(basin.id())
        : Reply.ofJson(form, new BasinAnswers(basin, StoredSurvey.read(survey)).json());
  }
}
