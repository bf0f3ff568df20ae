package lodeswing.web.basin;

import java.time.Clock;
import lodeswing.job.ResultStore;
import lodeswing.web.jobs.StoredRequests;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/** Keeps what was asked under each map's id. */
@Component
final class BasinStore {

  private final LayoutStore layouts;
  private final StoredRequests<BasinRequest> requests;

  BasinStore(ResultStore store, LayoutStore layouts, Clock clock) {
    this.layouts = layouts;
    this.requests =
        new StoredRequests<>(
            store,
            clock,
            new StoredRequests.Kind<>(
                "basin-request",
                BasinShapes.STORED,
                "No map of this id is stored; post it again at /v1/basins.",
                BasinRequest::basinId,
                BasinRequest::stored,
                (stored, id) ->
                    BasinRequest.of(layouts.get(stored.text("layoutId")), stored).asNamed(id)));
  }

  /** Keeps a request and its layout; returns whether the request was new. */
  boolean save(BasinRequest request) {
    layouts.save(request.layout());
    return requests.save(request);
  }

  /**
   * What was asked under an id.
   *
   * @throws ProblemException {@code not-found}
   */
  BasinRequest get(String basinId) {
    return requests.get(basinId);
  }
}
