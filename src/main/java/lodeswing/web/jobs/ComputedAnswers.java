package lodeswing.web.jobs;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import lodeswing.job.Answer;
import lodeswing.job.Computation;
import lodeswing.job.Computations;
import lodeswing.job.JobCancelledException;
import lodeswing.job.StoredResult;
import lodeswing.job.TooMuchWorkException;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Subject;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Answers requests with the results of computations, as long as the client wants to wait. */
@Component
public final class ComputedAnswers {

  private static final Duration A_MOMENT = Duration.ofSeconds(1);

  private final Computations computations;
  private final Limits limits;
  private final Clock clock;
  private final JsonMapper json;

  ComputedAnswers(Computations computations, Limits limits, Clock clock, JsonMapper json) {
    this.computations = computations;
    this.limits = limits;
    this.clock = clock;
    this.json = json;
  }

  /**
   * The answer to what a request asks for, or 202 with a job.
   *
   * @throws ProblemException {@code service-busy}, or whatever the work threw
   */
  public ResponseEntity<byte[]> reply(HttpServletRequest request, Answerable asked) {
    return asked
        .work()
        .map(
            work ->
                reply(
                    request,
                    asked.query(),
                    asked.subject(),
                    work,
                    result -> asked.writer().apply(Optional.of(result))))
        .orElseGet(() -> asked.writer().apply(Optional.empty()).to(request, asked.subject()));
  }

  /**
   * The answer to a request: what {@code ready} makes of the result, or 202 with a job.
   *
   * @param subject what the answer is about
   * @param ready makes the answer; Cache-Status is added to it
   * @throws ProblemException {@code service-busy}, or whatever the work threw
   */
  public ResponseEntity<byte[]> reply(
      HttpServletRequest request,
      QueryParameters query,
      Subject subject,
      Computation computation,
      Function<StoredResult, Reply> ready) {
    WaitPreference preference = WaitPreference.of(request, query, limits);
    Answer answer = answer(computation, preference.patience());
    Reply reply =
        answer instanceof Answer.Ready result
            ? ready.apply(result.result()).source(result.source())
            : Pending.reply(request, (Answer.Pending) answer, clock, json).about(subject.untold());
    Optional<String> applied = preference.applied(answer instanceof Answer.Pending);
    return applied
        .map(confirmed -> reply.header("Preference-Applied", confirmed))
        .orElse(reply)
        .to(request, subject);
  }

  /** The answer to a request for a result by its id; nothing where it is not kept. */
  public Optional<ResponseEntity<byte[]>> find(
      HttpServletRequest request, Subject subject, String id, Function<StoredResult, Reply> ready) {
    return computations
        .find(id)
        .map(found -> ready.apply(found.result()).source(found.source()).to(request, subject));
  }

  /**
   * The answer to a request that was looked up by its id: an older revision's results where all of
   * them are kept, with a link to today's, or else today's.
   *
   * @param subject what the answer is about
   * @param asked as it was stored
   * @param needed the computations that the answer is made of; the first one's result is handed on
   * @param ready makes the answer
   */
  public <R extends Revised<R>> ResponseEntity<byte[]> replyAsStored(
      HttpServletRequest request,
      QueryParameters query,
      Subject subject,
      R asked,
      Function<R, List<Computation>> needed,
      BiFunction<R, StoredResult, Reply> ready) {
    R today = asked.today();
    boolean older = asked.revision() != today.revision() && areKept(needed.apply(asked));
    R used = older ? asked : today;
    return reply(
        request,
        query,
        subject,
        needed.apply(used).get(0),
        result -> {
          Reply reply = ready.apply(used, result);
          return older
              ? reply.link("latest-version", sameOf(request, asked.url(), today.url()))
              : reply;
        });
  }

  /** The same resource below another address. */
  private static String sameOf(HttpServletRequest request, String asked, String today) {
    String path = request.getRequestURI();
    return path.startsWith(asked) ? today + path.substring(asked.length()) : today;
  }

  private boolean areKept(List<Computation> older) {
    return older.stream().allMatch(work -> computations.find(work.key().id()).isPresent());
  }

  private Answer answer(Computation computation, Duration wait) {
    try {
      return computations.answer(computation, wait);
    } catch (TooMuchWorkException e) {
      throw ProblemException.passing(
          ProblemCode.SERVICE_BUSY, e.getMessage() + ".", e.askAgainAfter().plus(A_MOMENT));
    } catch (JobCancelledException e) {
      throw JobProblems.cancelled();
    }
  }
}
