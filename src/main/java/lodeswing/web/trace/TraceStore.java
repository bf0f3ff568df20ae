package lodeswing.web.trace;

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

/** Keeps what was asked under each trace's id, so that its answer can be made again. */
@Component
final class TraceStore {

  private static final String KIND = "trace-request";
  private static final int HELD_IN_MEMORY = 500;

  private final ResultStore store;
  private final LayoutStore layouts;
  private final Clock clock;
  private final Cache<String, TraceRequest> read =
      Caffeine.newBuilder().executor(Runnable::run).maximumSize(HELD_IN_MEMORY).build();

  TraceStore(ResultStore store, LayoutStore layouts, Clock clock) {
    this.store = store;
    this.layouts = layouts;
    this.clock = clock;
  }

  void save(TraceRequest request) {
    String canonical = request.stored().toJson();
    store.saveIfAbsent(
        StoredResult.document(
            request.traceId(),
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
  TraceRequest get(String traceId) {
    return Optional.ofNullable(read.getIfPresent(traceId))
        .orElseGet(
            () -> {
              TraceRequest request = lookUp(traceId);
              read.put(traceId, request);
              return request;
            });
  }

  private TraceRequest lookUp(String traceId) {
    Body stored =
        store
            .find(traceId)
            .filter(result -> result.kind().equals(KIND))
            .map(result -> BodyReader.read(result.bytes(), TraceShapes.STORED))
            .orElseThrow(
                () ->
                    new ProblemException(
                        ProblemCode.NOT_FOUND,
                        "No trace of this id is stored; post it again at /v1/traces.",
                        List.of()));
    TraceRequest request =
        TraceRequest.of(layouts.get(stored.text("layoutId")), stored).asNamed(traceId);
    if (request.revision() != request.today().revision()) {
      // So that the address of today's answer, which an older one names, leads there.
      save(request.today());
    }
    return request;
  }
}
