package lodeswing.benchmark;

import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.motion.MotionSystem;
import lodeswing.core.rest.RestPoint;
import lodeswing.core.rig.BenchLayout;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.exception.NumberIsTooSmallException;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * Where a release ends by Commons Math's {@link DormandPrince853Integrator}: the order 8 pair of
 * Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I (1993), with the dense
 * output of that book.
 *
 * <p>The force is ours, everything else is its own: a run goes on until a well holds the bob with
 * less than half its barrier, a limit is met, or friction holds the bob. One release each.
 */
final class CommonsMathRun {

  private static final double SMALLEST_STEP = 1e-14;
  private static final int MOST_EVALUATIONS = 3_000_000;

  /** Part of the barrier below which the well is looked for. */
  private static final double SHARE = 0.5;

  /** Times within which a limit or friction may not come and go unseen [s on the bench]. */
  private static final double LOOK_EVERY = 0.01;

  private final Motion motion;
  private final WellOfPlace wells;
  private double energyTime = Double.NaN;
  private double energy;
  private RunOn rest = RunOn.OPEN;

  private CommonsMathRun(Landscape landscape, WellOfPlace wells) {
    this.motion = landscape.motion();
    this.wells = wells;
  }

  /**
   * Follows a release.
   *
   * @param start its state
   * @param tolerance absolute and relative
   * @return its end; open where the integrator gave up
   */
  static RunOn follow(
      Landscape landscape, WellOfPlace wells, double[] start, double tolerance, double longest) {
    CommonsMathRun run = new CommonsMathRun(landscape, wells);
    int held = wells.settledAt(start[0], start[1], run.energy(0, start), SHARE);
    if (held != WellOfPlace.NONE) {
      return new RunOn(held, false, 0);
    }
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(SMALLEST_STEP, longest, tolerance, tolerance);
    integrator.setMaxEvaluations(MOST_EVALUATIONS);
    run.watch(integrator, landscape);
    try {
      integrator.integrate(MotionSystem.of(run.motion), 0, start, longest, new double[4]);
    } catch (NumberIsTooSmallException | MathIllegalStateException e) {
      return RunOn.OPEN;
    }
    return run.rest;
  }

  private void watch(DormandPrince853Integrator integrator, Landscape landscape) {
    for (RestPoint point : wells.points()) {
      int w = point.index();
      double level = wells.level(w, SHARE);
      // Energy only falls, so it crosses a level once: no look within a step is needed.
      add(
          integrator,
          Double.POSITIVE_INFINITY,
          (t, y) -> energy(t, y) - level,
          (t, y) -> {
            if (wells.holding(y[0], y[1], energy(t, y)) == w) {
              rest = new RunOn(w, false, t);
            }
          });
    }
    // Where the map has no doubtful place no limit but the angles' can be met, and none is missed.
    double every = landscape.limitMap().empty() ? Double.POSITIVE_INFINITY : LOOK_EVERY;
    for (Limit limit : motion.limits()) {
      int code = LimitCodes.of(limit);
      add(integrator, every, (t, y) -> limit.margin(y), (t, y) -> rest = new RunOn(code, false, t));
    }
    if (landscape.layout() instanceof BenchLayout bench && bench.loss().pivotTorque() > 0) {
      add(
          integrator,
          LOOK_EVERY,
          (t, y) -> motion.slideMargin(y),
          (t, y) -> rest = RunOn.held(wells, y, motion.potential(y[0], y[1]), t));
    }
  }

  private interface Margin {
    double at(double t, double[] y);
  }

  private interface Fall {
    void happens(double t, double[] y);
  }

  private void add(DormandPrince853Integrator integrator, double every, Margin margin, Fall fall) {
    EventHandler handler =
        new EventHandler() {
          @Override
          public void init(double t0, double[] y0, double t) {}

          @Override
          public double g(double t, double[] y) {
            return margin.at(t, y);
          }

          @Override
          public Action eventOccurred(double t, double[] y, boolean increasing) {
            if (!increasing) {
              fall.happens(t, y);
            }
            return rest.open() ? Action.CONTINUE : Action.STOP;
          }

          @Override
          public void resetState(double t, double[] y) {}
        };
    integrator.addEventHandler(handler, every, 1e-10, 200);
  }

  /** Each step's end is asked by every well in turn. */
  private double energy(double t, double[] y) {
    if (t != energyTime) {
      energy = motion.energy(y[0], y[1], y[2], y[3]);
      energyTime = t;
    }
    return energy;
  }
}
