package lodeswing.web.twins;

import java.time.Clock;
import lodeswing.job.ResultStore;
import lodeswing.web.jobs.StoredRequests;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/** Keeps what was asked under the id of each pair of twins. */
@Component
final class TwinsStore {

  private final StoredRequests<TwinsRequest> requests;

  TwinsStore(ResultStore store, LayoutStore layouts, Clock clock) {
    this.requests =
        new StoredRequests<>(
            store,
            clock,
            new StoredRequests.Kind<>(
                "twins-request",
                TwinsShapes.STORED,
                "No twins of this id are stored; post them again at /v1/twins.",
                TwinsRequest::twinsId,
                TwinsRequest::stored,
                (stored, id) ->
                    TwinsRequest.of(layouts.get(stored.text("layoutId")), stored, false)
                        .asNamed(id)));
  }

  void save(TwinsRequest request) {
    requests.save(request);
  }

  /**
   * What was asked under an id.
   *
   * @throws ProblemException {@code not-found}
   */
  TwinsRequest get(String twinsId) {
    return requests.get(twinsId);
  }
}
