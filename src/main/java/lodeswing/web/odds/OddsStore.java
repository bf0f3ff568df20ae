package lodeswing.web.odds;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import lodeswing.job.ResultStore;
import lodeswing.job.StoredResult;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/** Keeps what was asked under each id of odds. */
@Component
final class OddsStore {

  private static final String KIND = "odds-request";
  private static final int HELD_IN_MEMORY = 500;

  private final ResultStore store;
  private final LayoutStore layouts;
  private final Clock clock;
  private final Cache<String, OddsRequest> read =
      Caffeine.newBuilder().executor(Runnable::run).maximumSize(HELD_IN_MEMORY).build();

  OddsStore(ResultStore store, LayoutStore layouts, Clock clock) {
    this.store = store;
    this.layouts = layouts;
    this.clock = clock;
  }

  /** Keeps a request and its layout. */
  void save(OddsRequest request) {
    layouts.save(request.layout());
    String canonical = request.stored().toJson();
    store.saveIfAbsent(
        StoredResult.document(
            request.oddsId(),
            KIND,
            canonical,
            canonical.getBytes(StandardCharsets.UTF_8),
            clock.instant()));
  }

  /**
   * What was asked under an id.
   *
   * @throws ProblemException {@code not-found}
   */
  OddsRequest get(String oddsId) {
    return Optional.ofNullable(read.getIfPresent(oddsId))
        .orElseGet(
            () -> {
              OddsRequest request = lookUp(oddsId);
              read.put(oddsId, request);
              return request;
            });
  }

  private OddsRequest lookUp(String oddsId) {
    Body stored =
        store
            .find(oddsId)
            .filter(result -> result.kind().equals(KIND))
            .map(result -> BodyReader.read(result.bytes(), OddsShapes.STORED))
            .orElseThrow(
                () ->
                    new ProblemException(
                        ProblemCode.NOT_FOUND,
                        "No odds of this id are stored; post them again at /v1/odds.",
                        List.of()));
    OddsRequest request =
        OddsRequest.of(layouts.get(stored.text("layoutId")), stored).asNamed(oddsId);
    if (request.revision() != request.today().revision()) {
      // So that the address of today's answer, which an older one names, leads there.
      save(request.today());
    }
    return request;
  }
}
