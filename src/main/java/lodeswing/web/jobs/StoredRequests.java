package lodeswing.web.jobs;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import lodeswing.job.Realm;
import lodeswing.job.ResultStore;
import lodeswing.job.StoredResult;
import lodeswing.web.body.Body;
import lodeswing.web.body.BodyReader;
import lodeswing.web.body.RecordShape;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * Keeps what was asked under each id of one resource, so that its answer can be made again.
 *
 * @param <R> a request
 */
public final class StoredRequests<R extends Revised<R>> {

  private static final int HELD_IN_MEMORY = 500;

  private final ResultStore store;
  private final Clock clock;
  private final Kind<R> kind;
  private final Cache<String, R> read =
      Caffeine.newBuilder().executor(Runnable::run).maximumSize(HELD_IN_MEMORY).build();

  /**
   * The requests of one resource.
   *
   * @param store keeps them
   * @param clock tells when
   * @param kind how they are written and read
   */
  public StoredRequests(ResultStore store, Clock clock, Kind<R> kind) {
    this.store = store;
    this.clock = clock;
    this.kind = kind;
  }

  /**
   * How the requests of one resource are written and read.
   *
   * @param word names the kind in the store
   * @param shape of what is written
   * @param missing for whoever asks for an id that is not stored
   * @param id of a request
   * @param written the request as it is written
   * @param remade the request from what was written and its id
   */
  public record Kind<R>(
      String word,
      RecordShape shape,
      String missing,
      Function<R, String> id,
      Function<R, Body> written,
      BiFunction<Body, String, R> remade) {}

  /** Keeps a request; returns whether it was new. */
  public boolean save(R request) {
    String canonical = kind.written().apply(request).toJson();
    return store
        .saveIfAbsent(
            StoredResult.document(
                kind.id().apply(request),
                kind.word(),
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
  public R get(String id) {
    return Optional.ofNullable(read.getIfPresent(id))
        .orElseGet(
            () -> {
              R request = lookUp(id);
              if (Realm.in(id).isEmpty()) {
                read.put(id, request);
              }
              return request;
            });
  }

  private R lookUp(String id) {
    Body stored =
        store
            .find(id)
            .filter(result -> result.kind().equals(kind.word()))
            .map(result -> BodyReader.read(result.bytes(), kind.shape()))
            .orElseThrow(
                () -> new ProblemException(ProblemCode.NOT_FOUND, kind.missing(), List.of()));
    R request = kind.remade().apply(stored, id);
    if (request.revision() != request.today().revision()) {
      // So that the address of today's answer, which an older one names, leads there.
      save(request.today());
    }
    return request;
  }
}
