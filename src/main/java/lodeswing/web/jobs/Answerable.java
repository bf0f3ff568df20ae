package lodeswing.web.jobs;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import lodeswing.job.Computation;
import lodeswing.job.StoredResult;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Subject;

/**
 * What was asked for, found to be sound: the result that its answer is made of, and what makes the
 * answer of it. It knows nothing of how it is sent, so a bundle holds the answers that single
 * addresses give.
 *
 * @param query its parameters
 * @param subject what the answer is about
 * @param work the computation that it needs; nothing where it is made at once
 * @param writer makes the answer; handed the result where there is work
 */
public record Answerable(
    QueryParameters query,
    Subject subject,
    Optional<Computation> work,
    Function<Optional<StoredResult>, Reply> writer) {

  /** An answer that needs no result. */
  public static Answerable atOnce(QueryParameters query, Subject subject, Supplier<Reply> writer) {
    return new Answerable(query, subject, Optional.empty(), none -> writer.get());
  }

  /** An answer made of a result. */
  public static Answerable of(
      QueryParameters query,
      Subject subject,
      Computation work,
      Function<StoredResult, Reply> writer) {
    return new Answerable(
        query, subject, Optional.of(work), result -> writer.apply(result.orElseThrow()));
  }
}
