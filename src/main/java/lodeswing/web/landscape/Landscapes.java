package lodeswing.web.landscape;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.WorkExceededException;
import lodeswing.job.Computation;
import lodeswing.job.JobCancelledException;
import lodeswing.job.WorkCost;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.ProblemException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/**
 * Makes layouts ready once and holds the latest up to a weight; two layouts that move alike share
 * one.
 *
 * <p>The cache holds futures, so that a second caller of a layout waits for the first one's and no
 * other layout waits for either; a failed one leaves by itself.
 */
@Component
public final class Landscapes {

  private static final Logger LOG = LoggerFactory.getLogger(Landscapes.class);

  private final Limits limits;
  private final PreparingCost cost;
  private final LatestLandscapes held;

  Landscapes(Limits limits, PreparingCost cost) {
    this.limits = limits;
    this.cost = cost;
    this.held = new LatestLandscapes(limits.landscapeBytes());
  }

  /**
   * The landscape of a layout; made now, on this thread, where it is not held.
   *
   * @param place where the layout stands in the request
   * @throws ProblemException {@code too-costly} where it takes more than a layout may
   */
  public Landscape of(LayoutDocument document, LayoutPlace place) {
    return of(document, place, fraction -> {});
  }

  /**
   * The landscape of a layout; made now, on this thread, where it is not held.
   *
   * @param place where the layout stands in the request
   * @param progress hears how far that is where it is made now; cannot end it, for others may wait
   *     for the same landscape
   * @throws ProblemException {@code too-costly} where it takes more than a layout may
   */
  public Landscape of(LayoutDocument document, LayoutPlace place, Computation.Progress progress) {
    var mine = new CompletableFuture<Landscape>();
    Optional<CompletableFuture<Landscape>> seat = held.seat(document.physicsKey(), mine);
    if (seat.isPresent()) {
      return await(seat.get());
    }
    try {
      double expected = cost.of(document);
      Landscape made =
          Landscape.of(
              document.layout(),
              limits.preparingWork(),
              spent -> tell(progress, Math.min(1, spent / expected)));
      held.made(document.physicsKey(), made);
      mine.complete(made);
      return made;
    } catch (WorkExceededException e) {
      ProblemException problem = cost.ranOut(document, place);
      held.failed(document.physicsKey());
      mine.completeExceptionally(problem);
      throw problem;
    } catch (RuntimeException | Error e) {
      held.failed(document.physicsKey());
      mine.completeExceptionally(e);
      throw e;
    }
  }

  private static void tell(Computation.Progress progress, double fraction) {
    try {
      progress.report(fraction);
    } catch (JobCancelledException e) {
      LOG.debug("A layout is made ready to its end, though its job was cancelled");
    }
  }

  /** What work on a layout costs now, which is less once the layout is ready. */
  public WorkCost costOf(LayoutDocument document) {
    boolean ready = held.holds(document.physicsKey());
    return new WorkCost(document.layout(), ready, cost.of(document));
  }

  private static Landscape await(CompletableFuture<Landscape> seat) {
    try {
      return seat.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException failure) {
        throw failure;
      }
      throw e;
    }
  }
}
