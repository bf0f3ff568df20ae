package lodeswing.web.basin;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.limits.Limits;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.posted.PostedRequests;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** The pictures of maps: tiles, previews, overlays and legends. */
@RestController
final class BasinPictureController {

  static final List<Representation> TILE =
      List.of(Representation.PNG, Representation.BINARY, Representation.CSV);
  static final List<Representation> PREVIEW = List.of(Representation.PNG, Representation.BINARY);
  static final List<Representation> OVERLAY = List.of(Representation.SVG);
  static final List<Representation> LEGEND =
      List.of(
          Representation.JSON,
          Representation.CBOR,
          Representation.TEXT,
          Representation.SVG,
          Representation.PNG);

  private static final Parameter<Integer> LEGEND_WIDTH = DrawnReply.pixels(720);

  private final PostedRequests<BasinRequest> basins;
  private final BasinComputations computations;
  private final BasinReplies replies;
  private final PostedAnswers answers;
  private final Limits limits;

  BasinPictureController(
      PostedRequests<BasinRequest> basins,
      BasinComputations computations,
      BasinReplies replies,
      PostedAnswers answers,
      Limits limits) {
    this.basins = basins;
    this.computations = computations;
    this.replies = replies;
    this.answers = answers;
    this.limits = limits;
  }

  @GetMapping("/v1/basins/{basinId}/tiles/{z}/{x}/{y}")
  ResponseEntity<byte[]> getBasinTile(
      @PathVariable String basinId,
      @PathVariable String z,
      @PathVariable String x,
      @PathVariable String y,
      HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(
            request, BasinQuery.SIZE, BasinQuery.SETTLED, BasinQuery.PATTERNS, BasinQuery.LOOK);
    Representation form = Negotiation.choose(request, query, TILE);
    boolean settled = BasinQuery.settled(query, form);
    TilePlace place = TilePlace.read(z, x, y);
    int size = Integer.parseInt(query.get(BasinQuery.SIZE));
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, "/tiles/" + place.path()),
        () -> basins.get(basinId),
        asked ->
            List.of(computations.tile(asked, place, size, settled), computations.survey(asked)),
        basin -> (asked, result) -> replies.tile(form, asked, place, result.bytes(), query));
  }

  @GetMapping("/v1/basins/{basinId}/preview")
  ResponseEntity<byte[]> getBasinPreview(@PathVariable String basinId, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(
            request, BasinQuery.WIDTH, BasinQuery.HEIGHT, BasinQuery.PATTERNS, BasinQuery.LOOK);
    Representation form = Negotiation.choose(request, query, PREVIEW);
    BasinQuery.Size size = BasinQuery.Size.of(query, limits);
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, "/preview"),
        () -> basins.get(basinId),
        asked ->
            List.of(
                computations.preview(asked, size.width(), size.height()),
                computations.survey(asked)),
        basin -> (asked, result) -> replies.preview(form, asked, size, result.bytes(), query));
  }

  @GetMapping("/v1/basins/{basinId}/overlay")
  ResponseEntity<byte[]> getBasinOverlay(@PathVariable String basinId, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, BasinQuery.LOOK);
    Representation form = Negotiation.choose(request, query, OVERLAY);
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, "/overlay"),
        () -> basins.get(basinId),
        asked -> List.of(computations.survey(asked)),
        basin ->
            (asked, result) ->
                DrawnReply.of(
                    form, picture(asked, result.bytes()).overlay(), DrawnReply.USUAL_WIDTH));
  }

  @GetMapping("/v1/basins/{basinId}/legend")
  ResponseEntity<byte[]> getBasinLegend(@PathVariable String basinId, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(request, LEGEND_WIDTH, BasinQuery.PATTERNS, BasinQuery.LOOK);
    Representation form = Negotiation.choose(request, query, LEGEND);
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, "/legend"),
        () -> basins.get(basinId),
        asked -> List.of(computations.survey(asked)),
        basin -> (asked, result) -> legend(form, asked, result.bytes(), query));
  }

  /** The legend of a map that somebody has asked for, without HTTP. */
  Answerable legendAsked(String basinId, Asking asking) {
    QueryParameters query =
        QueryParameters.read(asking, LEGEND_WIDTH, BasinQuery.PATTERNS, BasinQuery.LOOK);
    Representation form = Negotiation.choose(asking, query, LEGEND);
    BasinRequest basin = basins.get(basinId);
    return Answerable.of(
        query,
        basin.layout().subject(),
        computations.survey(basin),
        result -> legend(form, basin, result.bytes(), query).cache(CachePolicy.IMMUTABLE));
  }

  private static Reply legend(
      Representation form, BasinRequest basin, byte[] survey, QueryParameters query) {
    var documents = new BasinAnswers(basin, StoredSurvey.read(survey));
    return switch (form) {
      case TEXT -> Reply.ofLines(documents.legendLines());
      case SVG, PNG ->
          DrawnReply.of(
              form,
              picture(basin, survey).legend(query.get(BasinQuery.PATTERNS)),
              query.get(LEGEND_WIDTH));
      default -> Reply.ofJson(form, documents.legendJson());
    };
  }

  private static BasinPicture picture(BasinRequest basin, byte[] survey) {
    return new BasinPicture(basin, StoredSurvey.read(survey));
  }
}
