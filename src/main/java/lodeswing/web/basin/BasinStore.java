package lodeswing.web.basin;

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

/** Keeps what was asked under each map's id. */
@Component
final class BasinStore {

  private static final String KIND = "basin-request";
  private static final int HELD_IN_MEMORY = 500;

  private final ResultStore store;
  private final LayoutStore layouts;
  private final Clock clock;
  private final Cache<String, BasinRequest> read =
      Caffeine.newBuilder().executor(Runnable::run).maximumSize(HELD_IN_MEMORY).build();

  BasinStore(ResultStore store, LayoutStore layouts, Clock clock) {
    this.store = store;
    this.layouts = layouts;
    this.clock = clock;
  }

  /** Keeps a request and its layout; returns whether the request was new. */
  boolean save(BasinRequest request) {
    layouts.save(request.layout());
    String canonical = request.stored().toJson();
    return store
        .saveIfAbsent(
            StoredResult.document(
                request.basinId(),
                KIND,
                canonical,
                canonical.getBytes(StandardCharsets.UTF_8),
                clock.instant()))
        .created();
  }

  /**
   * What was asked under an id.
   *
   * @throws ProblemException {@code not-found}
   */
  BasinRequest get(String basinId) {
    return Optional.ofNullable(read.getIfPresent(basinId))
        .orElseGet(
            () -> {
              BasinRequest request = lookUp(basinId);
              read.put(basinId, request);
              return request;
            });
  }

  private BasinRequest lookUp(String basinId) {
    Body stored =
        store
            .find(basinId)
            .filter(result -> result.kind().equals(KIND))
            .map(result -> BodyReader.read(result.bytes(), BasinShapes.STORED))
            .orElseThrow(
                () ->
                    new ProblemException(
                        ProblemCode.NOT_FOUND,
                        "No map of this id is stored; post it again at /v1/basins.",
                        List.of()));
    BasinRequest request =
        BasinRequest.of(layouts.get(stored.text("layoutId")), stored).asNamed(basinId);
    if (request.revision() != request.today().revision()) {
      // So that the address of today's answer, which an older one names, leads there.
      save(request.today());
    }
    return request;
  }
}
