package lodeswing.web.trace;

import java.time.Clock;
import lodeswing.job.ResultStore;
import lodeswing.web.jobs.StoredRequests;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/** Keeps what was asked under each trace's id, so that its answer can be made again. */
@Component
final class TraceStore {

  private final StoredRequests<TraceRequest> requests;

  TraceStore(ResultStore store, LayoutStore layouts, Clock clock) {
    this.requests =
        new StoredRequests<>(
            store,
            clock,
            new StoredRequests.Kind<>(
                "trace-request",
                TraceShapes.STORED,
                "No trace of this id is stored; post it again at /v1/traces.",
                TraceRequest::traceId,
                TraceRequest::stored,
                (stored, id) ->
                    TraceRequest.of(layouts.get(stored.text("layoutId")), stored).asNamed(id)));
  }

  void save(TraceRequest request) {
    requests.save(request);
  }

  /**
   * What was asked under an id.
   *
   * @throws ProblemException {@code not-found}
   */
  TraceRequest get(String traceId) {
    return requests.get(traceId);
  }
}
