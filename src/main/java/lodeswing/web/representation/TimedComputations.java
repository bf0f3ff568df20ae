package lodeswing.web.representation;

import java.time.Duration;
import java.util.Optional;
import java.util.function.Supplier;
import lodeswing.job.Answer;
import lodeswing.job.Computation;
import lodeswing.job.Computations;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/** Computations that tell the request on whose thread they are asked for how long they took. */
public final class TimedComputations implements Computations {

  private final Computations computations;

  /** The same computations, timed. */
  public TimedComputations(Computations computations) {
    this.computations = computations;
  }

  @Override
  public Answer answer(Computation computation, Duration wait, Urgency urgency) {
    Optional<ServerTiming> timing = timing();
    timing.ifPresent(ServerTiming::beforeResult);
    Answer answer = computations.answer(computation, wait, urgency);
    timing.ifPresent(at -> at.afterResult(name(answer)));
    return answer;
  }

  @Override
  public Optional<Answer.Ready> find(String id) {
    return timing()
        .map(at -> timed(at, () -> computations.find(id)))
        .orElseGet(() -> computations.find(id));
  }

  private static Optional<Answer.Ready> timed(
      ServerTiming timing, Supplier<Optional<Answer.Ready>> lookUp) {
    timing.beforeResult();
    Optional<Answer.Ready> found = lookUp.get();
    timing.afterResult("store");
    return found;
  }

  private static String name(Answer answer) {
    boolean kept =
        answer instanceof Answer.Ready ready
            && (ready.source() == Answer.Source.MEMORY || ready.source() == Answer.Source.STORE);
    return kept ? "store" : "compute";
  }

  private static Optional<ServerTiming> timing() {
    return RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes request
        ? ServerTiming.of(request.getRequest())
        : Optional.empty();
  }
}
