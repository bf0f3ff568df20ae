package lodeswing.analysis.freeswing;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import lodeswing.core.geometry.PathCurve;
import lodeswing.core.integrate.EventFinder;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Step;
import lodeswing.core.integrate.StepObserver;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.motion.Motion;
import lodeswing.core.outcome.Endings;
import lodeswing.core.outcome.PathEnd;

/**
 * Follows a release among the magnets beside its free path, until the two are a given distance
 * apart in plan at the same time.
 *
 * <p>The distance is looked at 128 times in a small swing, the passage then found by halving; the
 * free path's curve keeps to it within 2e-5 of the swing.
 */
public final class Parting {

  private static final double LOOKS = 128;
  private static final int HALVINGS = 50;
  private static final int STEPS = 100;

  /** How much tighter the path is computed again. */
  private static final double TIGHTER = 0.01;

  /** Part of a small swing's period by which both may tell another moment. */
  private static final double SAME = 1e-3;

  private final Motion motion;
  private final PathCurve free;
  private final double within;
  private final double duration;

  /**
   * A release to be followed.
   *
   * @param motion the motion among the magnets
   * @param free the free path of the same release
   * @param within the distance, above 0
   * @param duration how long to follow it, at most as long as the free path
   */
  public Parting(Motion motion, PathCurve free, double within, double duration) {
    this.motion = motion;
    this.free = free;
    this.within = within;
    this.duration = duration;
  }

  /**
   * What was found.
   *
   * @param at when the two were the distance apart; empty where they never were
   * @param sure whether a hundredfold tighter tolerance tells the same
   * @param end what ended the path among the magnets before the two had parted
   */
  public record Result(OptionalDouble at, boolean sure, Optional<PathEnd> end) {}

  /**
   * Follows the release.
   *
   * @param start its state, inside the motion's limits
   * @param progress told every hundred steps a fraction done; may throw to end the work
   */
  public Result follow(double[] start, DoubleConsumer progress) {
    Watch first = run(start, Tolerance.TRACE, done -> progress.accept(done / 2));
    Tolerance tighter = new Tolerance(1e-15, Tolerance.TRACE.relative() * TIGHTER);
    Watch again = run(start, tighter, done -> progress.accept((1 + done) / 2));
    boolean sure =
        Double.isNaN(first.partedAt)
            ? Double.isNaN(again.partedAt)
            : Math.abs(first.partedAt - again.partedAt)
                <= SAME * 2 * Math.PI / motion.naturalRate();
    return new Result(
        Double.isNaN(first.partedAt) ? OptionalDouble.empty() : OptionalDouble.of(first.partedAt),
        sure,
        Double.isNaN(first.partedAt) ? first.endings.end() : Optional.empty());
  }

  private Watch run(double[] start, Tolerance tolerance, DoubleConsumer progress) {
    Watch watch = new Watch(start, progress);
    if (watch.endings.end().isEmpty()) {
      ScalarIntegrator.forMotion(motion)
          .integrate(start, duration, tolerance, new EventFinder(watch.endings.events(), watch));
    }
    if (watch.endings.held() && Double.isNaN(watch.partedAt)) {
      watch.stayed();
    }
    return watch;
  }

  /** Sees the steps of one path. */
  private final class Watch implements StepObserver {

    private final Endings endings;
    private final DoubleConsumer progress;
    private final double[] state = new double[4];
    private final double[] plan = new double[4];
    private final double[] beside = new double[4];
    private double partedAt = Double.NaN;
    private int steps;

    Watch(double[] start, DoubleConsumer progress) {
      this.endings = new Endings(motion, start);
      this.progress = progress;
    }

    @Override
    public boolean accept(Step step) {
      steps++;
      if (steps % STEPS == 0) {
        progress.accept(Math.min(1, step.endTime() / duration));
      }
      double until = endings.until(step.endTime());
      look(step, until);
      return endings.end().isEmpty() && Double.isNaN(partedAt);
    }

    private void look(Step step, double until) {
      double piece = 2 * Math.PI / motion.naturalRate() / LOOKS;
      int pieces = (int) Math.ceil((until - step.startTime()) / piece);
      double from = step.startTime();
      for (int i = 1; i <= pieces; i++) {
        double to =
            i == pieces ? until : step.startTime() + i * (until - step.startTime()) / pieces;
        if (apart(step, to) > within) {
          partedAt = passage(step, from, to);
          return;
        }
        from = to;
      }
    }

    private double passage(Step step, double near, double far) {
      double low = near;
      double high = far;
      for (int i = 0; i < HALVINGS; i++) {
        double half = 0.5 * (low + high);
        if (apart(step, half) > within) {
          high = half;
        } else {
          low = half;
        }
      }
      return high;
    }

    private double apart(Step step, double time) {
      step.at(time, state);
      motion.toPlan(state, plan);
      free.at(time, beside);
      return Math.hypot(plan[0] - beside[0], plan[1] - beside[1]);
    }

    /** A bob that friction holds stays, while the free one goes on. */
    private void stayed() {
      double[] held = endings.state();
      motion.toPlan(new double[] {held[0], held[1], 0, 0}, plan);
      double from = endings.until(duration);
      double piece = 2 * Math.PI / motion.naturalRate() / LOOKS;
      for (double time = from; time <= duration && Double.isNaN(partedAt); time += piece) {
        free.at(time, beside);
        if (Math.hypot(plan[0] - beside[0], plan[1] - beside[1]) > within) {
          partedAt = time;
        }
      }
    }
  }
}
