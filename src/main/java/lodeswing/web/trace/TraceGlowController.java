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

/** Long exposures of traces. */
@RestController
final class TraceGlowController {

  static final List<Representation> PICTURE = List.of(Representation.PNG, Representation.TEXT);

  private final PostedRequests<TraceRequest> traces;
  private final TraceByAddress address;
  private final TraceComputations computations;
  private final PostedAnswers answers;
  private final Limits limits;

  TraceGlowController(
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

  @GetMapping("/v1/traces/{traceId}/glow")
  ResponseEntity<byte[]> getTraceGlow(@PathVariable String traceId, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, GlowSettings.parameters());
    Representation form = Negotiation.choose(request, query, PICTURE);
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, "/glow"),
        () -> traces.get(traceId),
        asked -> List.of(computations.of(asked, LayoutPlace.STORED)),
        asked -> writer(form, GlowSettings.of(query, asked)));
  }

  @GetMapping("/v1/layouts/{layoutId}/trace/glow")
  ResponseEntity<byte[]> getLayoutTraceGlow(
      @PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked = address.read(Asking.of(request), layoutId, GlowSettings.parameters());
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.choose(request, query, PICTURE);
    TraceRequest trace = address.trace(asked);
    GlowSettings settings = GlowSettings.of(query, trace);
    return answers.addressed(
        request,
        query,
        traces,
        trace,
        computations.of(trace, LayoutPlace.ADDRESS),
        writer(form, settings));
  }

  private PostedAnswers.Writer<TraceRequest> writer(Representation form, GlowSettings settings) {
    return (asked, result) -> new TraceGlow(asked, result.bytes(), settings).reply(form, limits);
  }
}
