package lodeswing.benchmark;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.integrate.Event;
import lodeswing.core.integrate.EventFinder;
import lodeswing.core.integrate.EventFunction;
import lodeswing.core.integrate.IntegrationFailure;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Step;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.outcome.ReleaseWatch;

/** One release at a time by our own integrator: once until sealed, once until rest. */
final class ScalarRunOn {

  private final Landscape landscape;
  private final Motion motion;
  private final WellOfPlace wells;
  private final Tolerance tolerance;
  private final double longest;

  ScalarRunOn(Landscape landscape, Tolerance tolerance, double longest) {
    this.landscape = landscape;
    this.motion = landscape.motion();
    this.wells = new WellOfPlace(landscape);
    this.tolerance = tolerance;
    this.longest = longest;
  }

  /** What a run until the end is certain names. */
  ReleaseWatch sealed(double[] start) {
    ReleaseWatch watch = new ReleaseWatch(landscape, start, false);
    if (!watch.done()) {
      try {
        ScalarIntegrator.forMotion(motion).integrate(start, longest, tolerance, watch.observer());
      } catch (IntegrationFailure e) {
        throw new IllegalStateException("a run ran out of numbers", e);
      }
    }
    return watch;
  }

  /** The same path until rest. */
  RunOn untilRest(double[] start, double settledShare) {
    RunOn[] stopped = {RunOn.OPEN};
    List<Event> stops = new ArrayList<>();
    for (Limit limit : motion.limits()) {
      int code = LimitCodes.of(limit);
      stops.add(
          stop(
              (time, state) -> limit.margin(state),
              (time, state) -> stopped[0] = new RunOn(code, false, time)));
    }
    stops.add(
        stop(
            (time, state) -> motion.slideMargin(state),
            (time, state) ->
                stopped[0] = RunOn.held(wells, state, motion.potential(state[0], state[1]), time)));
    RunOn[] settled = {RunOn.OPEN};
    EventFinder finder =
        new EventFinder(
            stops,
            (Step step) -> {
              double energy = motion.energy(step.end(0), step.end(1), step.end(2), step.end(3));
              int well = wells.settledAt(step.end(0), step.end(1), energy, settledShare);
              if (well != WellOfPlace.NONE) {
                settled[0] = new RunOn(well, false, step.endTime());
              }
              return well == WellOfPlace.NONE;
            });
    ScalarIntegrator.forMotion(motion).integrate(start, longest, tolerance, finder);
    return stopped[0].open() ? settled[0] : stopped[0];
  }

  private static Event stop(EventFunction margin, Event.Listener listener) {
    return new Event(margin, Event.Direction.FALLING, true, listener);
  }
}
