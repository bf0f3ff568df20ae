package lodeswing.web.trace;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.limits.Limits;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.KeptReplies;
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

  private final TraceStore traces;
  private final TraceByAddress address;
  private final TraceComputations computations;
  private final ComputedAnswers answers;
  private final Limits limits;
  private final KeptReplies kept;

  TraceGlowController(
      TraceStore traces,
      TraceByAddress address,
      TraceComputations computations,
      ComputedAnswers answers,
      Limits limits,
      KeptReplies kept) {
    this.traces = traces;
    this.address = address;
    this.computations = computations;
    this.answers = answers;
    this.limits = limits;
    this.kept = kept;
  }

  @GetMapping("/v1/traces/{traceId}/glow")
  ResponseEntity<byte[]> getTraceGlow(@PathVariable String traceId, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, GlowSettings.parameters());
    Representation form = Negotiation.choose(request, query, PICTURE);
    Optional<ResponseEntity<byte[]>> written = kept.find(request, query, form);
    if (written.isPresent()) {
      return written.get();
    }
    TraceRequest trace = traces.get(traceId);
    GlowSettings settings = GlowSettings.of(query, trace);
    return answers.replyAsStored(
        request,
        query,
        trace,
        asked -> List.of(computations.of(asked, asked.url(), LayoutPlace.STORED)),
        (asked, result) ->
            kept.keep(
                asked.url() + "/glow",
                query,
                form,
                result,
                () ->
                    new TraceGlow(asked, result.bytes(), settings)
                        .reply(form, limits)
                        .cache(CachePolicy.IMMUTABLE)));
  }

  @GetMapping("/v1/layouts/{layoutId}/trace/glow")
  ResponseEntity<byte[]> getLayoutTraceGlow(
      @PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked = address.read(request, layoutId, GlowSettings.parameters());
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.choose(request, query, PICTURE);
    TraceRequest trace = address.trace(asked);
    GlowSettings settings = GlowSettings.of(query, trace);
    return answers.reply(
        request,
        query,
        computations.of(trace, trace.url(), LayoutPlace.ADDRESS),
        result ->
            new TraceGlow(trace, result.bytes(), settings)
                .reply(form, limits)
                .cache(CachePolicy.SHORT));
  }
}
