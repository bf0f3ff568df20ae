package lodeswing.web.posted;

import java.time.Clock;
import java.util.function.BiFunction;
import java.util.function.Function;
import lodeswing.job.Computation;
import lodeswing.job.Recipe;
import lodeswing.job.ResultStore;
import lodeswing.web.body.Body;
import lodeswing.web.jobs.StoredRequests;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/**
 * Keeps what was asked of layouts under each id of one resource.
 *
 * @param <R> a request
 */
public final class PostedRequests<R extends Posted<R>> {

  private final PostedKind kind;
  private final LayoutStore layouts;
  private final StoredRequests<R> requests;

  private PostedRequests(PostedKind kind, LayoutStore layouts, StoredRequests<R> requests) {
    this.kind = kind;
    this.layouts = layouts;
    this.requests = requests;
  }

  /** Makes the stores of all resources. */
  @Component
  public static final class Source {

    private final ResultStore store;
    private final LayoutStore layouts;
    private final Clock clock;

    Source(ResultStore store, LayoutStore layouts, Clock clock) {
      this.store = store;
      this.layouts = layouts;
      this.clock = clock;
    }

    /**
     * The store of one resource.
     *
     * @param kind the resource
     * @param read the request of a layout from what was stored, of today's revision
     */
    public <R extends Posted<R>> PostedRequests<R> of(
        PostedKind kind, BiFunction<LayoutDocument, Body, R> read) {
      return new PostedRequests<>(
          kind,
          layouts,
          new StoredRequests<>(
              store,
              clock,
              new StoredRequests.Kind<>(
                  kind.word() + "-request",
                  kind.shape(),
                  kind.missing(),
                  R::id,
                  R::stored,
                  (stored, id) ->
                      read.apply(layouts.get(stored.text("layoutId")), stored).asNamed(id))));
    }
  }

  /** Keeps a request and its layout; returns whether the request was new. */
  public boolean save(R request) {
    layouts.save(request.layout());
    return requests.save(request);
  }

  /**
   * What was asked under an id.
   *
   * @throws ProblemException {@code not-found}
   */
  public R get(String id) {
    return requests.get(id);
  }

  /** How the answer to an id is computed again after a restart. */
  public Recipe recipe(Function<R, Computation> work) {
    return new Recipe(kind.word(), words -> work.apply(get(words.get(0)).today()));
  }
}
