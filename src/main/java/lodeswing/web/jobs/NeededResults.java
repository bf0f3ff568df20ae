package lodeswing.web.jobs;

import java.time.Duration;
import lodeswing.job.Answer;
import lodeswing.job.Computation;
import lodeswing.job.Computations;
import lodeswing.job.StoredResult;
import lodeswing.job.TooMuchWorkException;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.springframework.stereotype.Component;

/** Results that other work is made of: each is kept by itself as soon as it is there. */
@Component
public final class NeededResults {

  private static final Duration TAKES_AT_MOST = Duration.ofHours(1);

  private final Computations computations;

  NeededResults(Computations computations) {
    this.computations = computations;
  }

  /**
   * A result from memory, from the store, or computed on this thread.
   *
   * @param still what to say where another process is still at it
   * @throws ProblemException {@code service-busy}, or whatever the work threw
   */
  public byte[] now(Computation computation, String still) {
    return resultNow(computation, still).bytes();
  }

  /**
   * The same with what is told of it.
   *
   * @param still what to say where another process is still at it
   * @throws ProblemException {@code service-busy}, or whatever the work threw
   */
  public StoredResult resultNow(Computation computation, String still) {
    try {
      if (computations.answer(computation, TAKES_AT_MOST) instanceof Answer.Ready ready) {
        return ready.result();
      }
    } catch (TooMuchWorkException e) {
      throw ProblemException.passing(
          ProblemCode.SERVICE_BUSY, e.getMessage() + ".", Duration.ofSeconds(5));
    }
    throw ProblemException.passing(ProblemCode.SERVICE_BUSY, still, Duration.ofSeconds(60));
  }
}
