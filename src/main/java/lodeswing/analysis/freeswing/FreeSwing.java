package lodeswing.analysis.freeswing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import lodeswing.core.geometry.PathCurve;
import lodeswing.core.integrate.CurveKnots;
import lodeswing.core.integrate.Event;
import lodeswing.core.integrate.EventFinder;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Step;
import lodeswing.core.integrate.StepObserver;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.motion.FreeMotion;
import lodeswing.core.motion.Motion;
import lodeswing.core.outcome.Endings;
import lodeswing.core.outcome.PathEnd;
import lodeswing.core.rig.Layout;

/**
 * A rig without its magnets, followed from a release by the exact equations of motion, whatever the
 * size of the swing and the law of its loss.
 */
public final class FreeSwing {

  private static final double HALF_SIZE_ENERGY = 0.25;
  private static final int STEPS = 100;

  private final Motion motion;

  private FreeSwing(Motion motion) {
    this.motion = motion;
  }

  /** The free swing of a layout: magnets and steel are set aside, the bob keeps its own. */
  public static FreeSwing of(Layout layout) {
    return new FreeSwing(FreeMotion.of(layout));
  }

  /** Its equations of motion. */
  public Motion motion() {
    return motion;
  }

  /**
   * Follows a release.
   *
   * @param start the release's state, inside the motion's limits
   * @param duration how long its path is taken, above 0
   * @param longest how long it is followed at most until its swing has half its size
   * @param progress told every hundred steps a fraction done; may throw to end the work
   */
  public FreePath follow(double[] start, double duration, double longest, DoubleConsumer progress) {
    Watch watch = new Watch(start, duration, longest, progress);
    if (watch.endings.end().isEmpty()) {
      List<Event> events = new ArrayList<>(watch.endings.events());
      events.add(watch.halving());
      ScalarIntegrator.forMotion(motion)
          .integrate(
              start, Math.max(duration, longest), Tolerance.TRACE, new EventFinder(events, watch));
    }
    return watch.path(start);
  }

  /** Sees the steps of one path. */
  private final class Watch implements StepObserver {

    private final Endings endings;
    private final CurveKnots knots;
    private final double duration;
    private final double longest;
    private final DoubleConsumer progress;
    private final double halfSize;
    private final boolean still;
    private double halvedAt = Double.NaN;
    private int steps;

    Watch(double[] start, double duration, double longest, DoubleConsumer progress) {
      this.endings = new Endings(motion, start);
      this.knots = new CurveKnots(motion, duration, start);
      this.duration = duration;
      this.longest = longest;
      this.progress = progress;
      double lowest = motion.potential(0, 0);
      double above = motion.energy(start[0], start[1], start[2], start[3]) - lowest;
      this.halfSize = lowest + HALF_SIZE_ENERGY * above;
      this.still = !(above > 0);
    }

    Event halving() {
      return new Event(
          (time, s) -> motion.energy(s[0], s[1], s[2], s[3]) - halfSize,
          Event.Direction.FALLING,
          false,
          (time, state) -> halvedAt = Double.isNaN(halvedAt) ? time : halvedAt);
    }

    @Override
    public boolean accept(Step step) {
      steps++;
      if (steps % STEPS == 0) {
        progress.accept(Math.min(1, step.endTime() / Math.max(duration, longest)));
      }
      knots.take(step, endings.until(step.endTime()));
      boolean known = still || !Double.isNaN(halvedAt) || step.endTime() >= longest;
      return endings.end().isEmpty() && !(known && step.endTime() >= duration);
    }

    FreePath path(double[] start) {
      Optional<PathEnd> end = endings.end();
      if (endings.held()) {
        knots.stay(endings.state());
      }
      PathCurve curve = knots.curve();
      return new FreePath(
          curve,
          end.filter(e -> e.time() < duration),
          still || Double.isNaN(halvedAt) ? OptionalDouble.empty() : OptionalDouble.of(halvedAt),
          widest(start, curve));
    }

    private double widest(double[] start, PathCurve curve) {
      double[] plan = new double[4];
      motion.toPlan(start, plan);
      double reach = Math.hypot(plan[0], plan[1]);
      double widest = 0;
      for (int i = 0; reach > 0 && i < curve.count(); i++) {
        double aside = Math.abs(plan[0] * curve.y(i) - plan[1] * curve.x(i)) / reach;
        widest = Math.max(widest, aside);
      }
      return widest;
    }
  }
}
