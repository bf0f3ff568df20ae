package lodeswing.web.trace;

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

/** Traces that are posted and then fetched. */
@RestController
final class TraceController {

  static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR);
  static final List<Representation> PICTURE = List.of(Representation.SVG, Representation.PNG);

  private final LayoutStore layouts;
  private final PostedRequests<TraceRequest> traces;
  private final TraceComputations computations;
  private final PreparingCost cost;
  private final Limits limits;
  private final PostedAnswers answers;

  TraceController(
      LayoutStore layouts,
      PostedRequests<TraceRequest> traces,
      TraceComputations computations,
      PreparingCost cost,
      Limits limits,
      PostedAnswers answers) {
    this.layouts = layouts;
    this.traces = traces;
    this.computations = computations;
    this.cost = cost;
    this.limits = limits;
    this.answers = answers;
  }

  @PostMapping(path = "/v1/traces", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createTrace(
      @RequestBody(required = false) byte @Nullable [] body, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, GeneralParameters.DRY_RUN);
    Representation form = Negotiation.choose(request, query, DOCUMENT);
    SentRequest sent = SentRequest.read(body, TraceShapes.REQUEST, layouts);
    TraceRequest trace = TraceRequest.of(sent.layout(), sent.body());
    trace.checkCost(limits, false);
    computations.checkShapes(trace, sent.place());
    cost.check(sent.layout(), sent.place());
    return answers.created(
        request,
        query,
        traces,
        trace,
        computations.of(trace, sent.place()),
        named(trace),
        TraceReplies.writer(form, query));
  }

  private static Map<String, Object> named(TraceRequest trace) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("traceId", trace.id());
    members.put("samples", (double) trace.samples());
    return members;
  }

  @GetMapping("/v1/traces/{traceId}")
  ResponseEntity<byte[]> getTrace(@PathVariable String traceId, HttpServletRequest request) {
    return answer(traceId, "", request, DOCUMENT);
  }

  @GetMapping("/v1/traces/{traceId}/path")
  ResponseEntity<byte[]> getTracePath(@PathVariable String traceId, HttpServletRequest request) {
    return answer(traceId, "/path", request, PICTURE);
  }

  private ResponseEntity<byte[]> answer(
      String traceId, String path, HttpServletRequest request, List<Representation> offered) {
    QueryParameters query =
        offered.equals(PICTURE)
            ? QueryParameters.read(request, DrawnReply.PIXELS)
            : QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, offered);
    return answers.fetched(
        new PostedAnswers.Part(request, query, form, path),
        () -> traces.get(traceId),
        asked -> List.of(computations.of(asked, LayoutPlace.STORED)),
        asked -> TraceReplies.writer(form, query));
  }
}
