package lodeswing.analysis.occupancy;

import java.util.SplittableRandom;
import java.util.function.DoubleConsumer;
import lodeswing.core.integrate.EventFinder;
import lodeswing.core.integrate.IntegrationFailure;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Step;
import lodeswing.core.integrate.StepObserver;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.motion.Motion;
import lodeswing.core.outcome.Endings;
import lodeswing.core.rig.Release;
import lodeswing.core.statistics.ShiftedSobol;

/**
 * Counts, cell by cell, how often the bobs of one lot are met at moments evenly apart.
 *
 * <p>Whole numbers, so that their sums are the same in any order. For one thread.
 */
final class TimeCount {

  /** Moments in a small swing: between two of them a bob passes less than a cell. */
  private static final double MOMENTS = 256;

  private static final int TOLD_EVERY = 8;

  private final Motion motion;
  private final Tolerance tolerance;
  private final OccupancySpec spec;
  private final CellGrid grid;
  private final double interval;
  private final int moments;
  private final int[] counts;
  private final double[] state = new double[4];
  private final double[] plan = new double[4];
  private int elsewhere;
  private int notReleased;
  private int endedEarly;

  TimeCount(Motion motion, Tolerance tolerance, OccupancySpec spec, CellGrid grid) {
    this.motion = motion;
    this.tolerance = tolerance;
    this.spec = spec;
    this.grid = grid;
    double wished = 2 * Math.PI / motion.naturalRate() / MOMENTS;
    this.moments = (int) Math.ceil(spec.duration() / wished);
    this.interval = spec.duration() / moments;
    this.counts = new int[grid.count()];
  }

  /**
   * Follows the releases of a lot.
   *
   * @param lot its number from 0
   * @param progress told the fraction of the lot that is done; may throw to end the work
   */
  LotCount run(int lot, DoubleConsumer progress) {
    int size = spec.releases() / OccupancySpec.LOTS;
    ShiftedSobol places = new ShiftedSobol(2, seed(lot));
    for (int i = 0; i < size; i++) {
      if (i % TOLD_EVERY == 0) {
        progress.accept((double) i / size);
      }
      double[] point = places.next();
      // Even over the area; strict, so that every machine gets the same bits.
      double radius = spec.radius() * Math.sqrt(point[0]);
      double angle = 2 * Math.PI * point[1];
      follow(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
    }
    return new LotCount(counts, elsewhere, notReleased, endedEarly);
  }

  private long seed(int lot) {
    SplittableRandom seeds = new SplittableRandom(spec.seed());
    for (int i = 0; i < lot; i++) {
      seeds.nextLong();
    }
    return seeds.nextLong();
  }

  private void follow(double x, double y) {
    double[] start = motion.toState(new Release(x, y, 0, 0)).orElse(null);
    if (start == null || !motion.allows(start)) {
      notReleased++;
      return;
    }
    Watch watch = new Watch(start);
    if (watch.endings.end().isEmpty()) {
      try {
        ScalarIntegrator.forMotion(motion)
            .integrate(
                start, spec.duration(), tolerance, new EventFinder(watch.endings.events(), watch));
      } catch (IntegrationFailure e) {
        endedEarly++;
        return;
      }
    }
    if (watch.endings.held()) {
      count(watch.endings.state(), moments - watch.next);
    } else if (watch.endings.end().isPresent()) {
      endedEarly++;
    }
  }

  private void count(double[] at, int times) {
    motion.toPlan(at, plan);
    int cell = grid.index(plan[0], plan[1]);
    if (cell == CellGrid.OUTSIDE) {
      elsewhere += times;
    } else {
      counts[cell] += times;
    }
  }

  /** Sees the steps of one path. */
  private final class Watch implements StepObserver {

    private final Endings endings;
    private int next;

    Watch(double[] start) {
      this.endings = new Endings(motion, start);
    }

    @Override
    public boolean accept(Step step) {
      double until = endings.until(step.endTime());
      while (next < moments && (next + 0.5) * interval <= until) {
        step.glimpse((next + 0.5) * interval, state);
        count(state, 1);
        next++;
      }
      return endings.end().isEmpty() && next < moments;
    }
  }
}
