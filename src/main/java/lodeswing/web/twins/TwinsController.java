package lodeswing.web.twins;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

/** Twins that are posted and then fetched. */
@RestController
final class TwinsController {

  static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR);
  static final List<Representation> PICTURE = List.of(Representation.SVG, Representation.PNG);

  private final LayoutStore layouts;
  private final PostedRequests<TwinsRequest> pairs;
  private final TwinsComputations computations;
  private final PreparingCost cost;
  private final Limits limits;
  private final PostedAnswers answers;

  TwinsController(
      LayoutStore layouts,
      PostedRequests<TwinsRequest> pairs,
      TwinsComputations computations,
      PreparingCost cost,
      Limits limits,
      PostedAnswers answers) {
    this.layouts = layouts;
    this.pairs = pairs;
    this.computations = computations;
    this.cost = cost;
    this.limits = limits;
    this.answers = answers;
  }

  @PostMapping(path = "/v1/twins", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createTwins(
      @RequestBody(required = false) byte @Nullable [] body, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, GeneralParameters.DRY_RUN);
    Representation form = Negotiation.choose(request, query, DOCUMENT);
    SentRequest sent = SentRequest.read(body, TwinsShapes.REQUEST, layouts);
    TwinsRequest twins = TwinsRequest.of(sent.layout(), sent.body(), false);
    twins.first().checkCost(limits, false);
    computations.check(twins, sent.place());
    cost.check(sent.layout(), sent.place());
    return answers.created(
        request,
        query,
        pairs,
        twins,
        computations.of(twins, sent.place()),
        named(twins),
        TwinsReplies.writer(form, TwinsReplies.Picture.PATHS, query));
  }

  private static Map<String, Object> named(TwinsRequest twins) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("twinsId", twins.id());
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
      String twinsId, String path, HttpServletRequest request, List<Representation> offered) {
    QueryParameters query =
        offered.equals(PICTURE)
            ? QueryParameters.read(request, DrawnReply.PIXELS)
            : QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, offered);
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, path),
        () -> pairs.get(twinsId),
        asked -> List.of(computations.of(asked, LayoutPlace.STORED)),
        asked -> TwinsReplies.writer(form, picture(path), query));
  }

  private static TwinsReplies.Picture picture(String part) {
    return part.equals("/separation")
        ? TwinsReplies.Picture.SEPARATION
        : TwinsReplies.Picture.PATHS;
  }
}
