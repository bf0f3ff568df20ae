package lodeswing.web.sweep;

import java.time.Clock;
import lodeswing.job.ResultStore;
import lodeswing.web.jobs.StoredRequests;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/** Keeps what was asked under each id of a sweep. */
@Component
final class SweepStore {

  private final LayoutStore layouts;
  private final StoredRequests<SweepRequest> requests;

  SweepStore(ResultStore store, LayoutStore layouts, Clock clock) {
    this.layouts = layouts;
    this.requests =
        new StoredRequests<>(
            store,
            clock,
            new StoredRequests.Kind<>(
                "sweep-request",
                SweepShapes.STORED,
                "No sweep of this id is stored; post it again at /v1/sweeps.",
                SweepRequest::sweepId,
                SweepRequest::stored,
                (stored, id) ->
                    SweepRequest.of(layouts.get(stored.text("layoutId")), stored).asNamed(id)));
  }

  /** Keeps a request and its layout. */
  void save(SweepRequest request) {
    layouts.save(request.layout());
    requests.save(request);
  }

  /**
   * What was asked under an id.
   *
   * @throws ProblemException {@code not-found}
   */
  SweepRequest get(String sweepId) {
    return requests.get(sweepId);
  }
}
