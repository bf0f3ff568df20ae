package lodeswing.core.outcome;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.integrate.Event;
import lodeswing.core.integrate.EventFinder;
import lodeswing.core.integrate.EventFunction;
import lodeswing.core.integrate.Step;
import lodeswing.core.integrate.StepObserver;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.rest.SealRule;
import lodeswing.core.rig.BenchLayout;

/** Follows one release until its end is certain: sealed, held by friction, or beyond the model. */
public final class ReleaseWatch implements StepObserver {

  private final Landscape landscape;
  private final Motion motion;
  private final SealRule rule;
  private final EnergyWatch energy;
  private final boolean untilSettled;
  private final double[] last = new double[4];
  private double stoppedAt = Double.NaN;
  private int stop = Ends.UNSETTLED;

  /**
   * A watch.
   *
   * @param landscape the layout, prepared
   * @param start state at the release, four numbers
   * @param untilSettled whether to follow on until the bob has settled
   */
  public ReleaseWatch(Landscape landscape, double[] start, boolean untilSettled) {
    this.landscape = landscape;
    this.motion = landscape.motion();
    this.rule = landscape.sealRule();
    this.energy = new EnergyWatch(landscape, start);
    this.untilSettled = untilSettled;
  }

  /** This watch behind a finder of the events that stop the bob, where there can be any. */
  public StepObserver observer() {
    List<Event> stops = new ArrayList<>();
    for (Limit limit : motion.limits()) {
      stops.add(stop((time, state) -> limit.margin(state), code(limit.kind())));
    }
    if (landscape.layout() instanceof BenchLayout bench && bench.loss().pivotTorque() > 0) {
      stops.add(stop((time, state) -> motion.slideMargin(state), Ends.HELD));
    }
    return stops.isEmpty() ? this : new EventFinder(stops, this);
  }

  private static int code(Limit.Kind kind) {
    return switch (kind) {
      case MAGNET_CONTACT -> Ends.MAGNET_CONTACT;
      case PLATE_CONTACT -> Ends.PLATE_CONTACT;
      case SUSPENSION_SLACK -> Ends.SUSPENSION_SLACK;
      case ANGLE_LIMIT -> Ends.ANGLE_LIMIT;
    };
  }

  private Event stop(EventFunction margin, int code) {
    return new Event(
        margin,
        Event.Direction.FALLING,
        true,
        (time, state) -> {
          stop = code;
          stoppedAt = time;
          System.arraycopy(state, 0, last, 0, 4);
        });
  }

  @Override
  public boolean accept(Step step) {
    boolean stopped = stoppedAt <= step.endTime();
    energy.look(step, stopped ? stoppedAt : step.endTime());
    return !stopped && !done();
  }

  /** Whether nothing more is to be learned. */
  public boolean done() {
    return untilSettled ? energy.settledAt().isPresent() : energy.well() != SealRule.NONE;
  }

  /** The end as {@link Ends} codes it. */
  public int end() {
    if (energy.well() != SealRule.NONE) {
      return energy.well();
    }
    if (stop == Ends.HELD) {
      int well = rule.sealedWell(last[0], last[1], motion.potential(last[0], last[1]));
      return well == SealRule.NONE ? Ends.HELD : well;
    }
    return stop;
  }

  /** When the end was certain; NaN where it never was. */
  public double sealedAt() {
    return energy.sealedAt().orElse(stoppedAt);
  }

  /** When the bob had settled; NaN where it never did, or was not followed so far. */
  public double settledAt() {
    double byEnergy = energy.settledAt().orElse(Double.NaN);
    return stop == Ends.HELD && !(byEnergy <= stoppedAt) ? stoppedAt : byEnergy;
  }
}
