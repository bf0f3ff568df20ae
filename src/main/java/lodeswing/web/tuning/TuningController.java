package lodeswing.web.tuning;

import jakarta.servlet.http.HttpServletRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.analysis.tuning.TuningSpec;
import lodeswing.core.chance.OddsSpec;
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

/** Tunings that are posted and then fetched. */
@RestController
final class TuningController {

  static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);
  static final List<Representation> PICTURE = List.of(Representation.SVG, Representation.PNG);

  private final LayoutStore layouts;
  private final PostedRequests<TuningRequest> tunings;
  private final TuningComputations computations;
  private final PreparingCost cost;
  private final Limits limits;
  private final PostedAnswers answers;

  TuningController(
      LayoutStore layouts,
      PostedRequests<TuningRequest> tunings,
      TuningComputations computations,
      PreparingCost cost,
      Limits limits,
      PostedAnswers answers) {
    this.layouts = layouts;
    this.tunings = tunings;
    this.computations = computations;
    this.cost = cost;
    this.limits = limits;
    this.answers = answers;
  }

  @PostMapping(path = "/v1/tunings", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createTuning(
      @RequestBody(required = false) byte @Nullable [] body, HttpServletRequest request) {
    QueryParameters query =
        QueryParameters.read(
            request,
            GeneralParameters.DRY_RUN,
            TuningReplies.VALUE,
            TuningReplies.LABEL,
            TuningReplies.TABLE);
    Representation form = Negotiation.chooseForCell(request, query, DOCUMENT, TuningReplies.VALUE);
    SentRequest sent = SentRequest.read(body, TuningShapes.REQUEST, layouts);
    TuningRequest asked = TuningRequest.of(sent.layout(), sent.body());
    TuningReview review = new TuningReview(asked, sent.place());
    review.check(sent.body());
    cost.check(sent.layout(), sent.place());
    review.checkCost(computations, limits);
    return answers.created(
        request,
        query,
        tunings,
        asked,
        computations.of(asked, sent.place()),
        named(asked),
        TuningReplies.writer(form, query));
  }

  private Map<String, Object> named(TuningRequest asked) {
    TuningSpec spec = asked.spec(limits);
    long full = 2L * OddsSpec.mostReleases(asked.width(), asked.rule());
    long releases =
        (1L + asked.answers()) * full
            + (long) asked.candidates() * TuningSpec.GLANCE
            + (long) spec.looks() * TuningSpec.LOOK;
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("tuningId", asked.id());
    members.put("candidates", (double) asked.candidates());
    members.put("releases", (double) releases);
    return members;
  }

  @GetMapping("/v1/tunings/{tuningId}")
  ResponseEntity<byte[]> getTuning(@PathVariable String tuningId, HttpServletRequest request) {
    return answer(
        tuningId,
        "",
        request,
        DOCUMENT,
        QueryParameters.read(
            request, TuningReplies.VALUE, TuningReplies.LABEL, TuningReplies.TABLE));
  }

  @GetMapping("/v1/tunings/{tuningId}/plate")
  ResponseEntity<byte[]> getTuningPlate(@PathVariable String tuningId, HttpServletRequest request) {
    return answer(
        tuningId,
        "/plate",
        request,
        PICTURE,
        QueryParameters.read(request, DrawnReply.PIXELS, TuningReplies.RANK));
  }

  private ResponseEntity<byte[]> answer(
      String tuningId,
      String path,
      HttpServletRequest request,
      List<Representation> offered,
      QueryParameters query) {
    Representation form = Negotiation.chooseForCell(request, query, offered, TuningReplies.VALUE);
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, path),
        () -> tunings.get(tuningId),
        asked -> List.of(computations.of(asked, LayoutPlace.STORED)),
        asked -> TuningReplies.writer(form, query));
  }
}
