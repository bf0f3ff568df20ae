package lodeswing.web.comparison;

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
import lodeswing.web.recording.SentRecording;
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

/** Comparisons that are posted and then fetched. */
@RestController
final class ComparisonController {

  static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);
  static final List<Representation> PICTURE = List.of(Representation.SVG, Representation.PNG);

  private final LayoutStore layouts;
  private final PostedRequests<ComparisonRequest> comparisons;
  private final ComparisonComputations computations;
  private final PreparingCost cost;
  private final Limits limits;
  private final PostedAnswers answers;

  ComparisonController(
      LayoutStore layouts,
      PostedRequests<ComparisonRequest> comparisons,
      ComparisonComputations computations,
      PreparingCost cost,
      Limits limits,
      PostedAnswers answers) {
    this.layouts = layouts;
    this.comparisons = comparisons;
    this.computations = computations;
    this.cost = cost;
    this.limits = limits;
    this.answers = answers;
  }

  @PostMapping(path = "/v1/comparisons", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createComparison(
      @RequestBody(required = false) byte @Nullable [] body, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(request, GeneralParameters.DRY_RUN, ComparisonReplies.VALUE);
    Representation form =
        Negotiation.chooseForCell(request, query, DOCUMENT, ComparisonReplies.VALUE);
    SentRequest sent = SentRequest.read(body, ComparisonShapes.REQUEST, layouts);
    ComparisonReview.check(sent.body());
    SentRecording recording =
        SentRecording.read(sent.body(), sent.layout(), ComparisonReview.FEWEST, limits);
    ComparisonRequest asked = ComparisonRequest.of(sent.layout(), sent.body(), recording);
    ComparisonReview.check(asked, limits);
    cost.check(sent.layout(), sent.place());
    return answers.created(
        request,
        query,
        comparisons,
        asked,
        computations.of(asked, sent.place()),
        named(asked),
        ComparisonReplies.writer(form, "", query));
  }

  private static Map<String, Object> named(ComparisonRequest asked) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("comparisonId", asked.id());
    members.put("places", (double) asked.kept().inSi().count());
    return members;
  }

  @GetMapping("/v1/comparisons/{comparisonId}")
  ResponseEntity<byte[]> getComparison(
      @PathVariable String comparisonId, HttpServletRequest request) {
    return answer(
        comparisonId,
        "",
        request,
        DOCUMENT,
        QueryParameters.read(request, ComparisonReplies.VALUE));
  }

  @GetMapping("/v1/comparisons/{comparisonId}/paths")
  ResponseEntity<byte[]> getComparisonPaths(
      @PathVariable String comparisonId, HttpServletRequest request) {
    return picture(comparisonId, ComparisonReplies.PATHS, request);
  }

  @GetMapping("/v1/comparisons/{comparisonId}/distance")
  ResponseEntity<byte[]> getComparisonDistance(
      @PathVariable String comparisonId, HttpServletRequest request) {
    return picture(comparisonId, ComparisonReplies.DISTANCE, request);
  }

  private ResponseEntity<byte[]> picture(String id, String part, HttpServletRequest request) {
    return answer(id, part, request, PICTURE, QueryParameters.read(request, DrawnReply.PIXELS));
  }

  private ResponseEntity<byte[]> answer(
      String id,
      String part,
      HttpServletRequest request,
      List<Representation> offered,
      QueryParameters query) {
    Representation form =
        Negotiation.chooseForCell(request, query, offered, ComparisonReplies.VALUE);
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, part),
        () -> comparisons.get(id),
        asked -> List.of(computations.of(asked, LayoutPlace.STORED)),
        asked -> ComparisonReplies.writer(form, part, query));
  }
}
