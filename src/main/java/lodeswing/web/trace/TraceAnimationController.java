package lodeswing.web.trace;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.limits.Limits;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.posted.PostedRequests;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Animations of traces. */
@RestController
final class TraceAnimationController {

  static final List<Representation> MOVING = List.of(Representation.SVG, Representation.GIF);

  private final PostedRequests<TraceRequest> traces;
  private final TraceByAddress address;
  private final TraceComputations computations;
  private final PostedAnswers answers;
  private final Limits limits;

  TraceAnimationController(
      PostedRequests<TraceRequest> traces,
      TraceByAddress address,
      TraceComputations computations,
      PostedAnswers answers,
      Limits limits) {
    this.traces = traces;
    this.address = address;
    this.computations = computations;
    this.answers = answers;
    this.limits = limits;
  }

  @GetMapping("/v1/traces/{traceId}/animation")
  ResponseEntity<byte[]> getTraceAnimation(
      @PathVariable String traceId, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, AnimationSettings.parameters());
    Representation form = Negotiation.choose(request, query, MOVING);
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, "/animation"),
        () -> traces.get(traceId),
        asked -> List.of(computations.of(asked, LayoutPlace.STORED)),
        asked -> writer(form, AnimationSettings.of(query, asked, limits)));
  }

  @GetMapping("/v1/layouts/{layoutId}/trace/animation")
  ResponseEntity<byte[]> getLayoutTraceAnimation(
      @PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked = address.read(Asking.of(request), layoutId, AnimationSettings.parameters());
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.choose(request, query, MOVING);
    TraceRequest trace = address.trace(asked);
    AnimationSettings settings = AnimationSettings.of(query, trace, limits);
    return answers.addressed(
        request,
        query,
        traces,
        trace,
        computations.of(trace, LayoutPlace.ADDRESS),
        writer(form, settings));
  }

  private PostedAnswers.Writer<TraceRequest> writer(
      Representation form, AnimationSettings settings) {
    return (asked, result) ->
        new TraceAnimation(asked, result.bytes(), settings).reply(form, limits);
  }
}
