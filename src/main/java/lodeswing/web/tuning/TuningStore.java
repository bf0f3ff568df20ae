package lodeswing.web.tuning;

import java.time.Clock;
import lodeswing.job.ResultStore;
import lodeswing.web.jobs.StoredRequests;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/** Keeps what was asked under each id of a tuning. */
@Component
final class TuningStore {

  private final LayoutStore layouts;
  private final StoredRequests<TuningRequest> requests;

  TuningStore(ResultStore store, LayoutStore layouts, Clock clock) {
    this.layouts = layouts;
    this.requests =
        new StoredRequests<>(
            store,
            clock,
            new StoredRequests.Kind<>(
                "tuning-request",
                TuningShapes.STORED,
                "No tuning of this id is stored; post it again at /v1/tunings.",
                TuningRequest::tuningId,
                TuningRequest::stored,
                (stored, id) ->
                    TuningRequest.of(layouts.get(stored.text("layoutId")), stored).asNamed(id)));
  }

  /** Keeps a request and its layout. */
  void save(TuningRequest request) {
    layouts.save(request.layout());
    requests.save(request);
  }

  /**
   * What was asked under an id.
   *
   * @throws ProblemException {@code not-found}
   */
  TuningRequest get(String tuningId) {
    return requests.get(tuningId);
  }
}
