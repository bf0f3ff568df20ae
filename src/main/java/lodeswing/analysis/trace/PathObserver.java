package lodeswing.analysis.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lodeswing.core.geometry.PathCurve;
import lodeswing.core.integrate.CurveKnots;
import lodeswing.core.integrate.Event;
import lodeswing.core.integrate.EventFunction;
import lodeswing.core.integrate.Step;
import lodeswing.core.integrate.StepObserver;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.outcome.EnergyWatch;
import lodeswing.core.rest.SealRule;

/**
 * Sees the steps of one path: takes samples, watches energy and horizons, and ends it when all is
 * known.
 */
final class PathObserver implements StepObserver {

  private final Motion motion;
  private final SealRule rule;
  private final TraceSpec spec;
  private final SampleGrid grid;
  private final CurveKnots knots;
  private final EnergyWatch energy;
  private final Horizons horizons;
  private final List<TraceEvent> events = new ArrayList<>();
  private final double[] last = new double[4];
  private double endedAt = Double.POSITIVE_INFINITY;
  private double followedUntil;

  PathObserver(Landscape landscape, TraceSpec spec, double[] start) {
    this.motion = landscape.motion();
    this.rule = landscape.sealRule();
    this.spec = spec;
    this.grid = new SampleGrid(motion, spec, start);
    this.knots = new CurveKnots(motion, spec.duration(), start);
    this.energy = new EnergyWatch(landscape, start);
    this.horizons = new Horizons(landscape, spec, start);
    System.arraycopy(start, 0, last, 0, 4);
    if (motion.slideMargin(start) <= 0) {
      endedAt = 0;
      events.add(new TraceEvent(0, TraceEvent.Kind.STUCK));
    }
  }

  /** Whether friction holds the bob where it was let go, so that nothing moves. */
  boolean heldFromTheStart() {
    return endedAt == 0;
  }

  /** The events that end the path, for the finder that goes before this observer. */
  List<Event> endings() {
    List<Event> endings = new ArrayList<>();
    for (Limit limit : motion.limits()) {
      TraceEvent.Kind kind =
          switch (limit.kind()) {
            case SUSPENSION_SLACK -> TraceEvent.Kind.SUSPENSION_SLACK;
            case MAGNET_CONTACT -> TraceEvent.Kind.MAGNET_CONTACT;
            case PLATE_CONTACT -> TraceEvent.Kind.PLATE_CONTACT;
            case ANGLE_LIMIT -> TraceEvent.Kind.ANGLE_LIMIT;
          };
      endings.add(ending((time, state) -> limit.margin(state), kind));
    }
    endings.add(ending((time, state) -> motion.slideMargin(state), TraceEvent.Kind.STUCK));
    return endings;
  }

  private Event ending(EventFunction margin, TraceEvent.Kind kind) {
    return new Event(
        margin,
        Event.Direction.FALLING,
        true,
        (time, state) -> {
          endedAt = time;
          events.add(new TraceEvent(time, kind));
          System.arraycopy(state, 0, last, 0, 4);
        });
  }

  @Override
  public boolean accept(Step step) {
    boolean ended = endedAt <= step.endTime();
    followedUntil = ended ? endedAt : step.endTime();
    grid.take(step, followedUntil);
    knots.take(step, followedUntil);
    energy.look(step, followedUntil);
    horizons.look(step, followedUntil);
    if (!ended) {
      step.endState(last);
    }
    return !ended && !(energy.settledAt().isPresent() && followedUntil >= spec.duration());
  }

  /** Fills up what a bob that is held fast leaves out: it stays where it is. */
  void close() {
    if (happened(TraceEvent.Kind.STUCK)) {
      grid.stay(last);
      knots.stay(last);
    }
  }

  Samples samples() {
    return grid.samples();
  }

  PathCurve curve() {
    return knots.curve();
  }

  double followedUntil() {
    return followedUntil;
  }

  OptionalInt outcome() {
    int well = energy.well();
    if (well == SealRule.NONE && happened(TraceEvent.Kind.STUCK)) {
      well = rule.sealedWell(last[0], last[1], motion.potential(last[0], last[1]));
    }
    return well == SealRule.NONE ? OptionalInt.empty() : OptionalInt.of(well);
  }

  OptionalDouble sealedAt() {
    return energy.sealedAt();
  }

  /** When it settled by its energy, or when friction held it, whichever came first. */
  OptionalDouble settledAt() {
    if (happened(TraceEvent.Kind.STUCK)) {
      return OptionalDouble.of(Math.min(endedAt, energy.settledAt().orElse(endedAt)));
    }
    return energy.settledAt();
  }

  OptionalDouble trustedUntil() {
    return horizons.trustedUntil();
  }

  OptionalDouble foretoldUntil() {
    return horizons.foretoldUntil();
  }

  /** All that happened, in order of time. */
  List<TraceEvent> events() {
    List<TraceEvent> all = new ArrayList<>(events);
    sealedAt().ifPresent(t -> all.add(new TraceEvent(t, TraceEvent.Kind.SEALED)));
    settledAt().ifPresent(t -> all.add(new TraceEvent(t, TraceEvent.Kind.SETTLED)));
    trustedUntil().ifPresent(t -> all.add(new TraceEvent(t, TraceEvent.Kind.TRUST_ENDS)));
    foretoldUntil().ifPresent(t -> all.add(new TraceEvent(t, TraceEvent.Kind.FORETELLING_ENDS)));
    all.sort(Comparator.comparingDouble(TraceEvent::time).thenComparing(TraceEvent::kind));
    return all;
  }

  private boolean happened(TraceEvent.Kind kind) {
    return events.stream().anyMatch(event -> event.kind() == kind);
  }
}
