package lodeswing.job;

import java.time.Duration;
import java.util.Optional;

/** Answers computations, each key computed at most once at a time. */
public interface Computations {

  /**
   * The result from memory, from the store, or computed now.
   *
   * <p>A failure of the work is thrown as it is and is not kept: the next call tries again.
   *
   * @param computation the work and its result's name
   * @param wait how long to wait for work that is not done; zero does not wait
   * @param urgency whether the work may stand behind other work
   * @throws TooMuchWorkException if no more work can be taken in
   */
  Answer answer(Computation computation, Duration wait, Urgency urgency);

  /** The same; whoever waits is served before those who do not. */
  default Answer answer(Computation computation, Duration wait) {
    return answer(computation, wait, wait.isZero() ? Urgency.LATER : Urgency.WAITED_FOR);
  }

  /** Whether somebody waits for a result. */
  enum Urgency {
    /** Somebody waits. */
    WAITED_FOR,
    /** Whoever asked comes back later. */
    LATER,
    /** The queue of jobs asks, and goes on asking, for those who come back later. */
    QUEUED
  }

  /** The result with an id from memory or the store, without computing anything. */
  Optional<Answer.Ready> find(String id);
}
