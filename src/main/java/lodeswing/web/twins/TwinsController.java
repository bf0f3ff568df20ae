package lodeswing.web.twins;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import lodeswing.web.representation.Negotiation;
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

/** Twins that are posted and then fetched. */
@RestController
final class TwinsController {

  static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR);
  static final List<Representation> PICTURE = List.of(Representation.SVG, Representation.PNG);
  private static final Parameter<Boolean> DRY_RUN = Parameter.flag("dry-run").orElse(false);

  private final LayoutStore layouts;
  private final TwinsStore pairs;
  private final TwinsComputations computations;
  private final PreparingCost cost;
  private final DryRun dryRun;
  private final ComputedAnswers answers;
  private final Limits limits;
  private final KeptReplies kept;

  TwinsController(
      LayoutStore layouts,
      TwinsStore pairs,
      TwinsComputations computations,
      PreparingCost cost,
      DryRun dryRun,
      ComputedAnswers answers,
      Limits limits,
      KeptReplies kept) {
    this.layouts = layouts;
    this.pairs = pairs;
    this.computations = computations;
    this.cost = cost;
    this.dryRun = dryRun;
    this.answers = answers;
    this.limits = limits;
    this.kept = kept;
  }

  @PostMapping(path = "/v1/twins", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createTwins(
      @RequestBody(required = false) byte[] body, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, DRY_RUN);
    Representation form = Negotiation.choose(request, query, DOCUMENT);
    Body read = BodyReader.read(body == null ? new byte[0] : body, TwinsShapes.REQUEST);
    LayoutDocument layout =
        read.findObject("layout").map(LayoutDocument::of).orElseGet(() -> stored(read));
    TwinsRequest twins = TwinsRequest.of(layout, read, false);
    twins.first().checkCost(limits, false);
    LayoutPlace place = read.has("layout") ? LayoutPlace.WHOLE : LayoutPlace.STORED;
    computations.check(twins, place);
    cost.check(layout, place);
    String url = "/v1/twins/" + twins.twinsId();
    Computation work = computations.of(twins, url, place);
    if (query.get(DRY_RUN)) {
      return Reply.ofJson(Representation.JSON, dryRun.of(layout, work, named(twins))).to(request);
    }
    layouts.save(layout);
    pairs.save(twins);
    return answers.reply(
        request,
        query,
        work,
        result ->
            TwinsReplies.of(form, twins, result.bytes(), TwinsReplies.Picture.PATHS, query)
                .readAt(url));
  }

  private LayoutDocument stored(Body read) {
    return layouts.get(read.text("layoutId"));
  }

  private static Map<String, Object> named(TwinsRequest twins) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("twinsId", twins.twinsId());
    members.put("samples", (double) twins.first().samples());
    return members;
  }

  @GetMapping("/v1/twins/{twinsId}")
  ResponseEntity<byte[]> getTwins(@PathVariable String twinsId, HttpServletRequest request) {
    return answer(twinsId, "", request, DOCUMENT);
  }

  @GetMapping("/v1/twins/{twinsId}/paths")
  ResponseEntity<byte[]> getTwinsPaths(@PathVariable String twinsId, HttpServletRequest request) {
    return answer(twinsId, "/paths", request, PICTURE);
  }

  @GetMapping("/v1/twins/{twinsId}/separation")
  ResponseEntity<byte[]> getTwinsSeparation(
      @PathVariable String twinsId, HttpServletRequest request) {
    return answer(twinsId, "/separation", request, PICTURE);
  }

  private ResponseEntity<byte[]> answer(
      String twinsId, String part, HttpServletRequest request, List<Representation> offered) {
    QueryParameters query =
        offered.equals(PICTURE)
            ? QueryParameters.read(request, TwinsReplies.WIDTH)
            : QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, offered);
    Optional<ResponseEntity<byte[]>> written = kept.find(request, query, form);
    if (written.isPresent()) {
      return written.get();
    }
    TwinsRequest twins = pairs.get(twinsId);
    return answers.replyAsStored(
        request,
        query,
        twins,
        asked -> List.of(computations.of(asked, asked.url(), LayoutPlace.STORED)),
        (asked, result) ->
            kept.keep(
                asked.url() + part,
                query,
                form,
                result,
                () ->
                    TwinsReplies.of(form, asked, result.bytes(), picture(part), query)
                        .cache(CachePolicy.IMMUTABLE)));
  }

  private static TwinsReplies.Picture picture(String part) {
    return part.equals("/separation")
        ? TwinsReplies.Picture.SEPARATION
        : TwinsReplies.Picture.PATHS;
  }
}
