package lodeswing.analysis.trace;

import java.util.function.DoubleConsumer;
import lodeswing.core.integrate.Step;
import lodeswing.core.integrate.StepObserver;

/** Tells after every so many steps how far a path has come, and hands all of them on. */
final class ToldProgress implements StepObserver {

  /** Steps over the exact energy of many magnets take some milliseconds each. */
  private static final int STEPS = 100;

  private final StepObserver observer;
  private final double longest;
  private final DoubleConsumer progress;
  private int steps;

  /**
   * Before another observer.
   *
   * @param longest the time at which the path is followed no further
   * @param progress told the fraction of that time; may throw to end the work
   */
  ToldProgress(StepObserver observer, double longest, DoubleConsumer progress) {
    this.observer = observer;
    this.longest = longest;
    this.progress = progress;
  }

  @Override
  public boolean accept(Step step) {
    steps++;
    if (steps % STEPS == 0) {
      progress.accept(Math.min(1, step.endTime() / longest));
    }
    return observer.accept(step);
  }
}
