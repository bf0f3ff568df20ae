package lodeswing.web.odds;

import java.time.Clock;
import lodeswing.job.ResultStore;
import lodeswing.web.jobs.StoredRequests;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/** Keeps what was asked under each id of odds. */
@Component
final class OddsStore {

  private final LayoutStore layouts;
  private final StoredRequests<OddsRequest> requests;

  OddsStore(ResultStore store, LayoutStore layouts, Clock clock) {
    this.layouts = layouts;
    this.requests =
        new StoredRequests<>(
            store,
            clock,
            new StoredRequests.Kind<>(
                "odds-request",
                OddsShapes.STORED,
                "No odds of this id are stored; post them again at /v1/odds.",
                OddsRequest::oddsId,
                OddsRequest::stored,
                (stored, id) ->
                    OddsRequest.of(layouts.get(stored.text("layoutId")), stored).asNamed(id)));
  }

  /** Keeps a request and its layout. */
  void save(OddsRequest request) {
    layouts.save(request.layout());
    requests.save(request);
  }

  /**
   * What was asked under an id.
   *
   * @throws ProblemException {@code not-found}
   */
  OddsRequest get(String oddsId) {
    return requests.get(oddsId);
  }
}
