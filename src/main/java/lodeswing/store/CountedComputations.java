package lodeswing.store;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import lodeswing.job.Answer;
import lodeswing.job.Computation;
import lodeswing.job.Computations;
import lodeswing.job.JobCancelledException;
import lodeswing.job.TooMuchWorkException;

/**
 * Counts what other computations answer, by where it came from, and times the work itself.
 *
 * <p>{@code lodeswing.answers} has the tags {@code source} (memory, store, computed, joined, or
 * pending where the caller was sent to a job) and {@code asker} (request, work where a running
 * computation asked for another, or job where the queue asked for a job's result, counted once it
 * is there). Refusals are those of requests; the queue tries its jobs again. {@code
 * lodeswing.computations} times each run of a work, all that it asked for included, with the tags
 * {@code kind} and {@code end} (done, failed, cancelled).
 */
public final class CountedComputations implements Computations {

  /** Bounds of the counted durations: every kind and end has a line for each on the page. */
  private static final Duration[] BOUNDS = {
    Duration.ofMillis(10),
    Duration.ofMillis(100),
    Duration.ofMillis(300),
    Duration.ofSeconds(1),
    Duration.ofSeconds(3),
    Duration.ofSeconds(10),
    Duration.ofSeconds(30),
    Duration.ofMinutes(2),
    Duration.ofMinutes(10)
  };

  private final Computations counted;
  private final Backlog backlog;
  private final MeterRegistry meters;
  private final Counter refused;

  /**
   * Counts the answers of others.
   *
   * @param counted gives the answers
   * @param backlog is told what may be waiting
   * @param meters keeps the counts
   */
  public CountedComputations(Computations counted, Backlog backlog, MeterRegistry meters) {
    this.counted = counted;
    this.backlog = backlog;
    this.meters = meters;
    this.refused =
        Counter.builder("lodeswing.refusals")
            .description("Computations that were not taken in, since too many were waiting")
            .register(meters);
  }

  @Override
  public Answer answer(Computation computation, Duration wait, Urgency urgency) {
    backlog.enter(computation);
    boolean leaves = true;
    try {
      Answer answer = counted.answer(watched(computation), wait, urgency);
      leaves = answer instanceof Answer.Ready;
      count(answer, urgency);
      return answer;
    } catch (TooMuchWorkException e) {
      if (urgency != Urgency.QUEUED) {
        refused.increment();
      }
      throw e;
    } finally {
      if (leaves) {
        backlog.leave(computation);
      }
    }
  }

  @Override
  public Optional<Answer.Ready> find(String id) {
    Optional<Answer.Ready> found = counted.find(id);
    found.ifPresent(answer -> count(answer, Urgency.WAITED_FOR));
    return found;
  }

  private void count(Answer answer, Urgency urgency) {
    if (urgency == Urgency.QUEUED && !(answer instanceof Answer.Ready)) {
      return;
    }
    String source =
        answer instanceof Answer.Ready ready
            ? ready.source().name().toLowerCase(Locale.ROOT)
            : "pending";
    Counter.builder("lodeswing.answers")
        .description("Answers to requests, running computations and the queue, by their source")
        .tag("source", source)
        .tag("asker", asker(urgency))
        .register(meters)
        .increment();
  }

  private static String asker(Urgency urgency) {
    if (Thread.currentThread() instanceof ComputingThread) {
      return "work";
    }
    return urgency == Urgency.QUEUED ? "job" : "request";
  }

  private Computation watched(Computation computation) {
    Computation.Work work = CarriedContext.over(computation.work());
    Computation.Work timed = progress -> timed(computation.kind(), work, progress);
    return computation.done(timed);
  }

  private byte[] timed(String kind, Computation.Work work, Computation.Progress progress) {
    Timer.Sample sample = Timer.start(meters);
    String end = "failed";
    try {
      byte[] body = work.compute(progress);
      end = "done";
      return body;
    } catch (JobCancelledException e) {
      end = "cancelled";
      throw e;
    } finally {
      sample.stop(
          Timer.builder("lodeswing.computations")
              .description("Runs of computations, all that they asked for included")
              .tag("kind", kind)
              .tag("end", end)
              .serviceLevelObjectives(BOUNDS)
              .register(meters));
    }
  }
}
