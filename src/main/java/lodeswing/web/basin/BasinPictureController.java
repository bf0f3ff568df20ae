package lodeswing.web.basin;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import lodeswing.figure.Drawing;
import lodeswing.render.png.PngWriter;
import lodeswing.render.svg.SvgWriter;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.limits.Limits;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.KeptReplies;
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

  private static final Parameter<Integer> LEGEND_WIDTH =
      Parameter.integer("width", PngWriter.LEAST_WIDTH, PngWriter.GREATEST_WIDTH).orElse(720);

  private final BasinStore basins;
  private final BasinComputations computations;
  private final BasinReplies replies;
  private final ComputedAnswers answers;
  private final Limits limits;
  private final KeptReplies kept;

  BasinPictureController(
      BasinStore basins,
      BasinComputations computations,
      BasinReplies replies,
      ComputedAnswers answers,
      Limits limits,
      KeptReplies kept) {
    this.basins = basins;
    this.computations = computations;
    this.replies = replies;
    this.answers = answers;
    this.limits = limits;
    this.kept = kept;
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
    Optional<ResponseEntity<byte[]>> written = kept.find(request, query, form);
    if (written.isPresent()) {
      return written.get();
    }
    boolean settled = BasinQuery.settled(query, form);
    BasinRequest basin = basins.get(basinId);
    TilePlace place = TilePlace.read(z, x, y);
    int size = Integer.parseInt(query.get(BasinQuery.SIZE));
    return answers.replyAsStored(
        request,
        query,
        basin,
        asked ->
            List.of(computations.tile(asked, place, size, settled), computations.survey(asked)),
        (asked, result) ->
            kept.keep(
                asked.url() + "/tiles/" + place.path(),
                query,
                form,
                result,
                () ->
                    replies
                        .tile(form, asked, place, result.bytes(), query)
                        .cache(CachePolicy.IMMUTABLE)));
  }

  @GetMapping("/v1/basins/{basinId}/preview")
  ResponseEntity<byte[]> getBasinPreview(@PathVariable String basinId, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(
            request, BasinQuery.WIDTH, BasinQuery.HEIGHT, BasinQuery.PATTERNS, BasinQuery.LOOK);
    Representation form = Negotiation.choose(request, query, PREVIEW);
    Optional<ResponseEntity<byte[]>> written = kept.find(request, query, form);
    if (written.isPresent()) {
      return written.get();
    }
    BasinRequest basin = basins.get(basinId);
    BasinQuery.Size size = BasinQuery.Size.of(query, limits);
    return answers.replyAsStored(
        request,
        query,
        basin,
        asked ->
            List.of(
                computations.preview(asked, size.width(), size.height()),
                computations.survey(asked)),
        (asked, result) ->
            kept.keep(
                asked.url() + "/preview",
                query,
                form,
                result,
                () ->
                    replies
                        .preview(form, asked, size, result.bytes(), query)
                        .cache(CachePolicy.IMMUTABLE)));
  }

  @GetMapping("/v1/basins/{basinId}/overlay")
  ResponseEntity<byte[]> getBasinOverlay(@PathVariable String basinId, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, BasinQuery.LOOK);
    Representation form = Negotiation.choose(request, query, OVERLAY);
    Optional<ResponseEntity<byte[]>> written = kept.find(request, query, form);
    if (written.isPresent()) {
      return written.get();
    }
    BasinRequest basin = basins.get(basinId);
    return answers.replyAsStored(
        request,
        query,
        basin,
        asked -> List.of(computations.survey(asked)),
        (asked, result) ->
            kept.keep(
                asked.url() + "/overlay",
                query,
                form,
                result,
                () ->
                    Reply.of(form, svg(picture(asked, result.bytes()).overlay()))
                        .cache(CachePolicy.IMMUTABLE)));
  }

  @GetMapping("/v1/basins/{basinId}/legend")
  ResponseEntity<byte[]> getBasinLegend(@PathVariable String basinId, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(request, LEGEND_WIDTH, BasinQuery.PATTERNS, BasinQuery.LOOK);
    Representation form = Negotiation.choose(request, query, LEGEND);
    Optional<ResponseEntity<byte[]>> written = kept.find(request, query, form);
    if (written.isPresent()) {
      return written.get();
    }
    BasinRequest basin = basins.get(basinId);
    return answers.replyAsStored(
        request,
        query,
        basin,
        asked -> List.of(computations.survey(asked)),
        (asked, result) ->
            kept.keep(
                asked.url() + "/legend",
                query,
                form,
                result,
                () -> legend(form, asked, result.bytes(), query).cache(CachePolicy.IMMUTABLE)));
  }

  private static Reply legend(
      Representation form, BasinRequest basin, byte[] survey, QueryParameters query) {
    var documents = new BasinAnswers(basin, StoredSurvey.read(survey));
    return switch (form) {
      case TEXT -> Reply.ofLines(documents.legendLines());
      case SVG, PNG ->
          drawn(form, picture(basin, survey).legend(query.get(BasinQuery.PATTERNS)), query);
      default -> Reply.ofJson(form, documents.legendJson());
    };
  }

  private static BasinPicture picture(BasinRequest basin, byte[] survey) {
    return new BasinPicture(basin, StoredSurvey.read(survey));
  }

  private static Reply drawn(Representation form, Drawing drawing, QueryParameters query) {
    return form == Representation.PNG
        ? Reply.of(form, PngWriter.write(drawing, query.get(LEGEND_WIDTH)))
        : Reply.of(form, svg(drawing));
  }

  private static byte[] svg(Drawing drawing) {
    return SvgWriter.write(drawing).getBytes(StandardCharsets.UTF_8);
  }
}
