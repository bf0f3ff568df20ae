package lodeswing.web.representation;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import java.util.function.Supplier;
import lodeswing.job.ComputationKey;
import lodeswing.job.Computations;
import lodeswing.job.Realm;
import lodeswing.job.StoredResult;
import org.springframework.http.ResponseEntity;

/**
 * Written answers that never change, with their tags, so that a picture is not drawn for each
 * request; only for what is addressed by a result's id ({@link CachePolicy#IMMUTABLE}).
 */
public final class KeptReplies {

  private final Computations computations;
  private final Cache<Key, Kept> replies;

  /**
   * An empty store of answers.
   *
   * @param computations tell whether the result behind an answer is still kept, and where
   * @param bytes weight of the answers that are held [byte]
   */
  public KeptReplies(Computations computations, long bytes) {
    this.computations = computations;
    replies =
        Caffeine.newBuilder()
            .executor(Runnable::run)
            .maximumWeight(bytes)
            .<Key, Kept>weigher((key, kept) -> kept.reply().weight())
            .build();
  }

  /**
   * What an answer is asked for by.
   *
   * @param path of the resource, with the id of a result in it
   * @param form of the answer
   * @param figures of the query that change its bytes
   */
  private record Key(String path, Representation form, String figures) {}

  /**
   * An answer.
   *
   * @param result id of the result that it was made from, with the engine's revision in it
   * @param current whether today's engine computed that
   * @param reply the answer
   */
  private record Kept(String result, boolean current, Reply reply) {}

  /**
   * What is sent to a request, without even reading what was asked under its id; nothing where that
   * has to be read: for an answer of an older engine, and where the request states how long it
   * waits, which is to be confirmed.
   */
  public Optional<ResponseEntity<byte[]>> find(
      HttpServletRequest request, QueryParameters query, Representation form) {
    if (request.getHeader("Prefer") != null || query.find(GeneralParameters.WAIT).isPresent()) {
      return Optional.empty();
    }
    return Optional.ofNullable(
            replies.getIfPresent(new Key(request.getRequestURI(), form, query.figures())))
        .filter(Kept::current)
        .flatMap(
            kept ->
                computations
                    .find(kept.result())
                    .map(found -> kept.reply().source(found.source()).to(request, Subject.NONE)));
  }

  /**
   * The answer made from a result, kept or made now.
   *
   * @param path of the resource under the revision of the engine that answers
   * @param subject what it is about
   */
  public Reply keep(
      String path,
      QueryParameters query,
      Representation form,
      StoredResult result,
      Subject subject,
      Supplier<Reply> make) {
    if (Realm.in(path).isPresent()) {
      // What is private is held nowhere but in the store, so that deleting it there deletes it.
      return make.get();
    }
    var key = new Key(path, form, query.figures());
    return Optional.ofNullable(replies.getIfPresent(key))
        .filter(kept -> kept.result().equals(result.id()))
        .map(Kept::reply)
        .orElseGet(
            () -> {
              // Not made within the map: a table asks for other results and may wait for them.
              Reply made = make.get().about(subject);
              boolean current = result.engineRevision() == ComputationKey.ENGINE_REVISION;
              replies.put(key, new Kept(result.id(), current, made));
              return made;
            });
  }
}
