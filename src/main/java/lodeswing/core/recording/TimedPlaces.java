package lodeswing.core.recording;

import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import lodeswing.core.integrate.IntegrationFailure;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Step;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.Release;

/**
 * Plan places of a bob at given times along the path of one release: what a recording of it would
 * hold.
 *
 * <p>Before the release it stands there. Where its path cannot be computed, or not so far, it stays
 * where it was last: far off, and finite.
 */
public final class TimedPlaces {

  /** Of the swing: its error grows as everything does on a chaotic path. */
  public static final Tolerance TOLERANCE = Tolerance.of(1e-9);

  private final IntToDoubleFunction times;
  private final double[] places;
  private final int count;
  private final double begin;
  private final double[] state = new double[4];
  private final double[] at = new double[4];
  private int taken;

  private TimedPlaces(IntToDoubleFunction times, int count, double begin, Release release) {
    this.times = times;
    this.places = new double[2 * count];
    this.count = count;
    this.begin = begin;
    at[0] = release.x();
    at[1] = release.y();
  }

  /**
   * Places x, y side by side [m].
   *
   * @param motion what moves; empty where it cannot be built
   * @param release how the bob was let go
   * @param begin when that was [s]
   * @param times when it is looked at, rising [s]
   * @param count how many of them
   */
  public static double[] of(
      Optional<Motion> motion,
      Release release,
      double begin,
      IntToDoubleFunction times,
      int count) {
    TimedPlaces along = new TimedPlaces(times, count, begin, release);
    along.stand();
    motion.ifPresent(rig -> rig.toState(release).ifPresent(start -> along.follow(rig, start)));
    along.stay();
    return along.places;
  }

  private void stand() {
    while (taken < count && times.applyAsDouble(taken) <= begin) {
      put();
    }
  }

  private void follow(Motion motion, double[] start) {
    if (taken == count) {
      return;
    }
    double end = times.applyAsDouble(count - 1) - begin;
    if (!(end > 0)) {
      return;
    }
    try {
      ScalarIntegrator.forMotion(motion)
          .integrate(start, end, TOLERANCE, step -> take(motion, step));
    } catch (IntegrationFailure e) {
      // What was taken stays, and the rest stands still.
      return;
    }
  }

  private boolean take(Motion motion, Step step) {
    while (taken < count && times.applyAsDouble(taken) - begin <= step.endTime()) {
      step.at(Math.max(step.startTime(), times.applyAsDouble(taken) - begin), state);
      motion.toPlan(state, at);
      put();
    }
    return taken < count;
  }

  private void put() {
    places[2 * taken] = at[0];
    places[2 * taken + 1] = at[1];
    taken++;
  }

  private void stay() {
    while (taken < count) {
      put();
    }
  }
}
