package lodeswing.web.twins;

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

/**
 * Keeps what was asked under the id of each pair of twins, so that its answer can be made again.
 */
@Component
final class TwinsStore {

  private static final String KIND = "twins-request";
  private static final int HELD_IN_MEMORY = 500;

  private final ResultStore store;
  private final LayoutStore layouts;
  private final Clock clock;
  private final Cache<String, TwinsRequest> read =
      Caffeine.newBuilder().executor(Runnable::run).maximumSize(HELD_IN_MEMORY).build();

  TwinsStore(ResultStore store, LayoutStore layouts, Clock clock) {
    this.store = store;
    this.layouts = layouts;
    this.clock = clock;
  }

  void save(TwinsRequest request) {
    String canonical = request.stored().toJson();
    store.saveIfAbsent(
        StoredResult.document(
            request.twinsId(),
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
  TwinsRequest get(String twinsId) {
    return Optional.ofNullable(read.getIfPresent(twinsId))
        .orElseGet(
            () -> {
              TwinsRequest request = lookUp(twinsId);
              read.put(twinsId, request);
              return request;
            });
  }

  private TwinsRequest lookUp(String twinsId) {
    Body stored =
        store
            .find(twinsId)
            .filter(result -> result.kind().equals(KIND))
            .map(result -> BodyReader.read(result.bytes(), TwinsShapes.STORED))
            .orElseThrow(
                () ->
                    new ProblemException(
                        ProblemCode.NOT_FOUND,
                        "No twins of this id are stored; post them again at /v1/twins.",
                        List.of()));
    TwinsRequest request =
        TwinsRequest.of(layouts.get(stored.text("layoutId")), stored, false).asNamed(twinsId);
    if (request.revision() != request.today().revision()) {
      // So that the address of today's answer, which an older one names, leads there.
      save(request.today());
    }
    return request;
  }
}
