package lodeswing.web.posted;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import lodeswing.job.Computation;
import lodeswing.job.StoredResult;
import lodeswing.web.jobs.Answerable;
import lodeswing.web.jobs.ComputedAnswers;
import lodeswing.web.landscape.DryRun;
import lodeswing.web.representation.CachePolicy;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.KeptReplies;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;

/** Answers posts, and what is asked below the address of each posted request. */
@Component
public final class PostedAnswers {

  private final DryRun dryRun;
  private final ComputedAnswers answers;
  private final KeptReplies kept;

  PostedAnswers(DryRun dryRun, ComputedAnswers answers, KeptReplies kept) {
    this.dryRun = dryRun;
    this.answers = answers;
    this.kept = kept;
  }

  /**
   * Writes an answer.
   *
   * @param <R> a request
   */
  @FunctionalInterface
  public interface Writer<R> {

    /** The answer to a request from its result. */
    Reply write(R asked, StoredResult result);
  }

  /**
   * A part of a resource in one form.
   *
   * @param request that asks for it
   * @param query its parameters
   * @param form its form
   * @param path below the address of what was posted; empty for the document
   */
  public record Part(
      HttpServletRequest request, QueryParameters query, Representation form, String path) {}

  /**
   * The answer to a post: what it would cost, or the result, or 202 with a job.
   *
   * @param query knows {@link GeneralParameters#DRY_RUN}
   * @param requests keep what was asked
   * @param asked what was asked, found to be sound
   * @param work that answers it
   * @param about what a dry run names, by member
   */
  public <R extends Posted<R>> ResponseEntity<byte[]> created(
      HttpServletRequest request,
      QueryParameters query,
      PostedRequests<R> requests,
      R asked,
      Computation work,
      Map<String, Object> about,
      Writer<R> writer) {
    if (query.get(GeneralParameters.DRY_RUN)) {
      return Reply.ofJson(Representation.JSON, dryRun.of(asked.layout(), work, about))
          .to(request, asked.layout().subject().unstored());
    }
    requests.save(asked);
    return answers.reply(
        request,
        query,
        asked.layout().subject(),
        work,
        result -> writer.write(asked, result).readAt(asked.url()));
  }

  /** The answer to the same by one address alone, which may be computed better one day. */
  public <R extends Posted<R>> ResponseEntity<byte[]> addressed(
      HttpServletRequest request,
      QueryParameters query,
      PostedRequests<R> requests,
      R asked,
      Computation work,
      Writer<R> writer) {
    return answers.reply(request, addressed(query, requests, asked, work, writer));
  }

  /** The same without HTTP. */
  public <R extends Posted<R>> Answerable addressed(
      QueryParameters query,
      PostedRequests<R> requests,
      R asked,
      Computation work,
      Writer<R> writer) {
    requests.save(asked);
    return Answerable.of(
        query,
        asked.layout().subject(),
        work,
        result -> writer.write(asked, result).cache(CachePolicy.SHORT));
  }

  /**
   * The answer to what is asked by an id, which never changes.
   *
   * @param find the request of that id
   * @param needed the computations that it is made of; the first one's result is handed on
   * @param prepared the writer for that request, or a problem where this part cannot be made of it
   */
  public <R extends Posted<R>> ResponseEntity<byte[]> fetched(
      Part part,
      Supplier<R> find,
      Function<R, List<Computation>> needed,
      Function<R, Writer<R>> prepared) {
    Optional<ResponseEntity<byte[]>> written = kept.find(part.request(), part.query(), part.form());
    if (written.isPresent()) {
      return written.get();
    }
    R stored = find.get();
    Writer<R> writer = prepared.apply(stored);
    return answers.replyAsStored(
        part.request(),
        part.query(),
        stored.layout().subject(),
        stored,
        needed,
        (asked, result) ->
            kept.keep(
                asked.url() + part.path(),
                part.query(),
                part.form(),
                result,
                asked.layout().subject(),
                () -> writer.write(asked, result).cache(CachePolicy.IMMUTABLE)));
  }
}
