package lodeswing.web.representation;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import java.util.function.Supplier;
import lodeswing.job.StoredResult;

/**
 * Written answers that never change, with their tags, so that a picture is not drawn for each
 * request; only for what is addressed by a result's id ({@link CachePolicy#IMMUTABLE}).
 */
public final class KeptReplies {

  private final Cache<Key, Reply> replies;

  /**
   * An empty store of answers.
   *
   * @param bytes weight of the answers that are held [byte]
   */
  public KeptReplies(long bytes) {
    replies =
        Caffeine.newBuilder()
            .executor(Runnable::run)
            .maximumWeight(bytes)
            .<Key, Reply>weigher((key, reply) -> reply.weight())
            .build();
  }

  /**
   * What an answer is made of.
   *
   * @param result id of the result, with the engine's revision in it
   * @param path of the resource, which names labels where an answer has any
   * @param form of the answer
   * @param figures of the query that change its bytes
   */
  private record Key(String result, String path, Representation form, String figures) {}

  /** The answer, kept or made now. */
  public Reply reply(
      HttpServletRequest request,
      QueryParameters query,
      Representation form,
      StoredResult result,
      Supplier<Reply> make) {
    var key = new Key(result.id(), request.getRequestURI(), form, query.figures());
    return Optional.ofNullable(replies.getIfPresent(key))
        .orElseGet(
            () -> {
              // Not made within the map: a table asks for other results and may wait for them.
              Reply made = make.get();
              replies.put(key, made);
              return made;
            });
  }
}
