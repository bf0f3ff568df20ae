package lodeswing.analysis.trace;

import java.util.OptionalInt;
import java.util.function.DoubleConsumer;
import lodeswing.core.integrate.Arrival;
import lodeswing.core.integrate.EventFinder;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Step;
import lodeswing.core.integrate.StepObserver;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.ReleaseWatch;

/**
 * Follows one release until the bob has settled.
 *
 * <p>1. Samples are taken from the dense output on a uniform grid, over the asked duration. The bob
 * is then followed on, without samples, until it has settled or the longest time is over: where it
 * ends is the question, however short the picture.
 *
 * <p>2. Sealed, settled, slack, contact and angle events are roots on the dense output.
 *
 * <p>3. Beside the path the error's covariance grows ({@code ErrorGrowth}); where it reaches the
 * trusted distance the path is no longer trusted, and where a hand's spread has been stretched to
 * the parted distance it can no longer be foretold.
 *
 * <p>4. The outcome is sure if the same release ends alike at a tenfold tighter tolerance.
 */
public final class Trace {

  private static final double TIGHTER = 0.1;
  private static final double TIGHTEST = 1e-15;

  private final Landscape landscape;

  /** Traces over a landscape. */
  public Trace(Landscape landscape) {
    this.landscape = landscape;
  }

  /**
   * Follows a release.
   *
   * @param spec what is asked
   * @param start the release's state {q0, q1, v0, v1}, inside the motion's limits
   */
  public TraceResult run(TraceSpec spec, double[] start) {
    return run(spec, start, Tolerance.TRACE);
  }

  /**
   * Follows a release and tells how far it has come.
   *
   * @param spec what is asked
   * @param start the release's state {q0, q1, v0, v1}, inside the motion's limits
   * @param progress told every hundred steps a fraction done, at least what is sure; may throw to
   *     end the work
   */
  public TraceResult run(TraceSpec spec, double[] start, DoubleConsumer progress) {
    return run(spec, start, progress, (step, until) -> {});
  }

  /** Looks at the steps of the path that is answered, after it has been told of each. */
  @FunctionalInterface
  public interface Onlooker {

    /**
     * Looks at a step.
     *
     * @param step valid only during this call
     * @param until up to when the model holds in it
     */
    void look(Step step, double until);
  }

  /**
   * Follows a release with an onlooker beside it.
   *
   * @param spec what is asked
   * @param start the release's state {q0, q1, v0, v1}, inside the motion's limits
   * @param progress told as by the other ways to run
   * @param onlooker sees each step, also those beyond the duration; none where friction holds the
   *     bob from the start
   */
  public TraceResult run(
      TraceSpec spec, double[] start, DoubleConsumer progress, Onlooker onlooker) {
    return run(spec, start, Tolerance.TRACE, progress, onlooker);
  }

  /**
   * Follows a release at a tolerance other than the traces' own: for checks.
   *
   * @param spec what is asked
   * @param start the release's state {q0, q1, v0, v1}, inside the motion's limits
   * @param tolerance error allowed for a step
   */
  public TraceResult run(TraceSpec spec, double[] start, Tolerance tolerance) {
    return run(spec, start, tolerance, fraction -> {}, (step, until) -> {});
  }

  private TraceResult run(
      TraceSpec spec,
      double[] start,
      Tolerance tolerance,
      DoubleConsumer progress,
      Onlooker onlooker) {
    PathObserver path = new PathObserver(landscape, spec, start);
    long evaluations = 0;
    if (!path.heldFromTheStart()) {
      StepObserver both =
          step -> {
            boolean on = path.accept(step);
            onlooker.look(step, path.followedUntil());
            return on;
          };
      EventFinder finder = new EventFinder(path.endings(), both);
      StepObserver told =
          new ToldProgress(finder, longest(spec), done -> progress.accept(done / 2));
      evaluations = integrate(start, longest(spec), tolerance, told).work().evaluations();
    }
    path.close();
    OptionalInt outcome = path.outcome();
    boolean sure =
        path.sealedAt().isPresent() && outcome.equals(again(spec, start, tolerance, progress));
    return new TraceResult(
        path.samples(),
        path.curve(),
        path.events(),
        outcome,
        sure,
        path.sealedAt(),
        path.settledAt(),
        path.trustedUntil(),
        path.foretoldUntil(),
        path.followedUntil(),
        evaluations);
  }

  /** The outcome at a tenfold tighter tolerance, from the seal rule alone. */
  private OptionalInt again(
      TraceSpec spec, double[] start, Tolerance tolerance, DoubleConsumer progress) {
    Tolerance tighter =
        new Tolerance(
            Math.max(TIGHTEST, tolerance.absolute() * TIGHTER), tolerance.relative() * TIGHTER);
    ReleaseWatch watch = new ReleaseWatch(landscape, start, false);
    if (!watch.done()) {
      StepObserver told =
          new ToldProgress(
              watch.observer(), longest(spec), done -> progress.accept((1 + done) / 2));
      integrate(start, longest(spec), tighter, told);
    }
    return watch.end() >= 0 ? OptionalInt.of(watch.end()) : OptionalInt.empty();
  }

  private double longest(TraceSpec spec) {
    // Without loss nothing is ever decided that was not decided at the release.
    return landscape.lossless() ? spec.duration() : spec.longest();
  }

  private Arrival integrate(
      double[] start, double end, Tolerance tolerance, StepObserver observer) {
    return ScalarIntegrator.forMotion(landscape.motion())
        .integrate(start, end, tolerance, observer);
  }
}
