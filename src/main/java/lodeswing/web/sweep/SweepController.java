package lodeswing.web.sweep;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.job.Computation;
import lodeswing.web.landscape.LayoutPlace;
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

/** Sweeps that are posted and then fetched. */
@RestController
final class SweepController {

  static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);
  static final List<Representation> PICTURE = List.of(Representation.SVG, Representation.PNG);

  private final LayoutStore layouts;
  private final PostedRequests<SweepRequest> sweeps;
  private final SweepComputations computations;
  private final Limits limits;
  private final PostedAnswers answers;

  SweepController(
      LayoutStore layouts,
      PostedRequests<SweepRequest> sweeps,
      SweepComputations computations,
      Limits limits,
      PostedAnswers answers) {
    this.layouts = layouts;
    this.sweeps = sweeps;
    this.computations = computations;
    this.limits = limits;
    this.answers = answers;
  }

  @PostMapping(path = "/v1/sweeps", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createSweep(
      @RequestBody(required = false) byte @Nullable [] body, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(
            request,
            GeneralParameters.DRY_RUN,
            SweepReplies.VALUE,
            SweepReplies.COLUMN,
            SweepReplies.ROW);
    Representation form = Negotiation.chooseForCell(request, query, DOCUMENT, SweepReplies.VALUE);
    SentRequest sent = SentRequest.read(body, SweepShapes.REQUEST, layouts);
    var review = new SweepReview(sent.layout(), sent.body(), LayoutPlace.WHOLE);
    SweepRequest asked = review.request(limits);
    Computation work = computations.of(asked);
    review.affordable(asked, work.releases(), limits);
    return answers.created(
        request, query, sweeps, asked, work, named(asked), SweepReplies.writer(form, query));
  }

  private static Map<String, Object> named(SweepRequest asked) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("sweepId", asked.id());
    members.put("points", (double) asked.points());
    members.put("pieces", (double) asked.pieces());
    return members;
  }

  @GetMapping("/v1/sweeps/{sweepId}")
  ResponseEntity<byte[]> getSweep(@PathVariable String sweepId, HttpServletRequest request) {
    return answer(
        sweepId,
        "",
        request,
        DOCUMENT,
        QueryParameters.read(request, SweepReplies.VALUE, SweepReplies.COLUMN, SweepReplies.ROW));
  }

  @GetMapping("/v1/sweeps/{sweepId}/plot")
  ResponseEntity<byte[]> getSweepPlot(@PathVariable String sweepId, HttpServletRequest request) {
    return answer(
        sweepId,
        "/plot",
        request,
        PICTURE,
        QueryParameters.read(request, DrawnReply.PIXELS, SweepReplies.COLUMN));
  }

  private ResponseEntity<byte[]> answer(
      String sweepId,
      String path,
      HttpServletRequest request,
      List<Representation> offered,
      QueryParameters query) {
    Representation form = Negotiation.chooseForCell(request, query, offered, SweepReplies.VALUE);
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, path),
        () -> sweeps.get(sweepId),
        asked -> List.of(computations.of(asked)),
        asked -> SweepReplies.writer(form, query));
  }
}
