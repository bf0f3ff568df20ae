package lodeswing.web.trace;

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

/** Traces that are posted and then fetched. */
@RestController
final class TraceController {

  static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR);
  static final List<Representation> PICTURE = List.of(Representation.SVG, Representation.PNG);
  private static final Parameter<Boolean> DRY_RUN = Parameter.flag("dry-run").orElse(false);

  private final LayoutStore layouts;
  private final TraceStore traces;
  private final TraceComputations computations;
  private final PreparingCost cost;
  private final DryRun dryRun;
  private final ComputedAnswers answers;
  private final Limits limits;
  private final KeptReplies kept;

  TraceController(
      LayoutStore layouts,
      TraceStore traces,
      TraceComputations computations,
      PreparingCost cost,
      DryRun dryRun,
      ComputedAnswers answers,
      Limits limits,
      KeptReplies kept) {
    this.layouts = layouts;
    this.traces = traces;
    this.computations = computations;
    this.cost = cost;
    this.dryRun = dryRun;
    this.answers = answers;
    this.limits = limits;
    this.kept = kept;
  }

  @PostMapping(path = "/v1/traces", consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<byte[]> createTrace(
      @RequestBody(required = false) byte[] body, HttpServletRequest request) {
    QueryParameters query = QueryParameters.read(request, DRY_RUN);
    Representation form = Negotiation.choose(request, query, DOCUMENT);
    Body read = BodyReader.read(body == null ? new byte[0] : body, TraceShapes.REQUEST);
    LayoutDocument layout =
        read.findObject("layout").map(LayoutDocument::of).orElseGet(() -> stored(read));
    TraceRequest trace = TraceRequest.of(layout, read);
    trace.checkCost(limits, false);
    LayoutPlace place = read.has("layout") ? LayoutPlace.WHOLE : LayoutPlace.STORED;
    computations.checkShapes(trace, place);
    cost.check(layout, place);
    String url = "/v1/traces/" + trace.traceId();
    Computation work = computations.of(trace, url, place);
    if (query.get(DRY_RUN)) {
      return Reply.ofJson(Representation.JSON, dryRun.of(layout, work, named(trace))).to(request);
    }
    layouts.save(layout);
    traces.save(trace);
    return answers.reply(
        request,
        query,
        work,
        result -> TraceReplies.of(form, trace, result.bytes(), query).readAt(url));
  }

  private LayoutDocument stored(Body read) {
    return layouts.get(read.text("layoutId"));
  }

  private static Map<String, Object> named(TraceRequest trace) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("traceId", trace.traceId());
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
      String traceId, String part, HttpServletRequest request, List<Representation> offered) {
    QueryParameters query =
        offered.equals(PICTURE)
            ? QueryParameters.read(request, TraceReplies.WIDTH)
            : QueryParameters.read(request);
    Representation form = Negotiation.choose(request, query, offered);
    Optional<ResponseEntity<byte[]>> written = kept.find(request, query, form);
    if (written.isPresent()) {
      return written.get();
    }
    TraceRequest trace = traces.get(traceId);
    return answers.replyAsStored(
        request,
        query,
        trace,
        asked -> List.of(computations.of(asked, asked.url(), LayoutPlace.STORED)),
        (asked, result) ->
            kept.keep(
                asked.url() + part,
                query,
                form,
                result,
                () ->
                    TraceReplies.of(form, asked, result.bytes(), query)
                        .cache(CachePolicy.IMMUTABLE)));
  }
}
