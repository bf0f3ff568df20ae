package lodeswing.web.fit;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.analysis.fit.PathFit;
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

/** Fits that are posted and then fetched. */
@RestController
final class FitController {

  static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);
  static final List<Representation> PICTURE = List.of(Representation.SVG, Representation.PNG);

  private final LayoutStore layouts;
  private final PostedRequests<FitRequest> fits;
  private final FitComputations computations;
  private final Limits limits;
  private final PostedAnswers answers;

  FitController(
      LayoutStore layouts,
      PostedRequests<FitRequest> fits,
      FitComputations computations,
      Limits limits,
      PostedAnswers answers) {
    this.layouts = layouts;
    this.fits = fits;
    this.computations = computations;
    this.limits = limits;
    this.answers = answers;
  }

  @PostMapping(path = "/v1/fits", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createFit(
      @RequestBody(required = false) byte @Nullable [] body, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(
            request, GeneralParameters.DRY_RUN, FitReplies.VALUE, FitReplies.PARAMETER);
    Representation form = Negotiation.chooseForCell(request, query, DOCUMENT, FitReplies.VALUE);
    SentRequest sent = SentRequest.read(body, FitShapes.REQUEST, layouts);
    FitReview.check(sent.layout(), sent.body());
    int fewest = PathFit.fewest(sent.body().texts("unknown").size() + 4);
    SentRecording recording = SentRecording.read(sent.body(), sent.layout(), fewest, limits);
    FitRequest asked = FitRequest.of(sent.layout(), sent.body(), recording);
    return answers.created(
        request,
        query,
        fits,
        asked,
        computations.of(asked),
        named(asked),
        FitReplies.writer(form, query));
  }

  private static Map<String, Object> named(FitRequest asked) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("fitId", asked.id());
    members.put("places", (double) asked.recording().count());
    return members;
  }

  @GetMapping("/v1/fits/{fitId}")
  ResponseEntity<byte[]> getFit(@PathVariable String fitId, HttpServletRequest request) {
    return answer(
        fitId,
        "",
        request,
        DOCUMENT,
        QueryParameters.read(request, FitReplies.VALUE, FitReplies.PARAMETER));
  }

  @GetMapping("/v1/fits/{fitId}/paths")
  ResponseEntity<byte[]> getFitPaths(@PathVariable String fitId, HttpServletRequest request) {
    return answer(
        fitId, "/paths", request, PICTURE, QueryParameters.read(request, DrawnReply.PIXELS));
  }

  private ResponseEntity<byte[]> answer(
      String fitId,
      String path,
      HttpServletRequest request,
      List<Representation> offered,
      QueryParameters query) {
    Representation form = Negotiation.chooseForCell(request, query, offered, FitReplies.VALUE);
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, path),
        () -> fits.get(fitId),
        asked -> List.of(computations.of(asked)),
        asked -> FitReplies.writer(form, query));
  }
}
