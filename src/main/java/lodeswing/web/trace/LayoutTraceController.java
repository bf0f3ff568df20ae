package lodeswing.web.trace;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutQuery;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.posted.PostedRequests;
import lodeswing.web.representation.Asking;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.Negotiation;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/**
 * Traces and outcomes by one address, for spreadsheets; a layout's figures may be changed on the
 * way.
 */
@RestController
final class LayoutTraceController {

  static final List<Representation> TRACE =
      List.of(
          Representation.JSON,
          Representation.CSV,
          Representation.CBOR,
          Representation.TEXT,
          Representation.SVG,
          Representation.PNG);
  static final List<Representation> OUTCOME =
      List.of(Representation.JSON, Representation.CSV, Representation.CBOR, Representation.TEXT);

  private final TraceByAddress address;
  private final TraceComputations computations;
  private final PostedRequests<TraceRequest> traces;
  private final PostedAnswers answers;
  private final ComputedAnswers computed;

  LayoutTraceController(
      TraceByAddress address,
      TraceComputations computations,
      PostedRequests<TraceRequest> traces,
      PostedAnswers answers,
      ComputedAnswers computed) {
    this.address = address;
    this.traces = traces;
    this.computations = computations;
    this.answers = answers;
    this.computed = computed;
  }

  @GetMapping("/v1/layouts/{layoutId}/trace")
  ResponseEntity<byte[]> getLayoutTrace(@PathVariable String layoutId, HttpServletRequest request) {
    return computed.reply(request, asked(layoutId, Asking.of(request)));
  }

  /** What is asked for, without HTTP. */
  Answerable asked(String layoutId, Asking request) {
    LayoutQuery asked = address.read(request, layoutId, DrawnReply.PIXELS, TraceReplies.VALUE);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, TRACE, TraceReplies.VALUE);
    TraceRequest trace = address.trace(asked);
    return answers.addressed(
        query,
        traces,
        trace,
        computations.of(trace, LayoutPlace.ADDRESS),
        TraceReplies.writer(form, query));
  }

  @GetMapping("/v1/layouts/{layoutId}/outcome")
  ResponseEntity<byte[]> getOutcome(@PathVariable String layoutId, HttpServletRequest request) {
    LayoutQuery asked = address.readOutcome(request, layoutId);
    QueryParameters query = asked.parameters();
    Representation form = Negotiation.chooseForCell(request, query, OUTCOME, TraceReplies.VALUE);
    TraceRequest trace = address.trace(asked);
    return answers.addressed(
        request,
        query,
        traces,
        trace,
        computations.of(trace, LayoutPlace.ADDRESS),
        TraceReplies.outcomeWriter(form, query));
  }
}
