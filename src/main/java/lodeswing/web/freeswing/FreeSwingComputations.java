package lodeswing.web.freeswing;

import java.util.EnumSet;
import java.util.Optional;
import lodeswing.analysis.freeswing.FreePath;
import lodeswing.analysis.freeswing.FreeSwing;
import lodeswing.analysis.freeswing.Parting;
import lodeswing.analysis.trace.Trace;
import lodeswing.analysis.trace.TraceEvent;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.analysis.trace.TraceSpec;
import lodeswing.core.integrate.IntegrationFailure;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.outcome.PathEnd;
import lodeswing.core.rig.Release;
import lodeswing.core.swing.SmallSwings;
import lodeswing.job.Computation;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.StartState;
import lodeswing.web.limits.Limits;
import org.springframework.stereotype.Component;

/** The work behind free swings. */
@Component
final class FreeSwingComputations {

  static final String KIND = "free-swing";

  /** Samples of the second path are not kept; a trace takes some. */
  private static final int FEW = 2;

  /** The hand's spread is of no interest here; a trace takes one. */
  private static final double SPREAD = 1e-3;

  private final Landscapes landscapes;
  private final Limits limits;

  FreeSwingComputations(Landscapes landscapes, Limits limits) {
    this.landscapes = landscapes;
    this.limits = limits;
  }

  /**
   * The work for a request.
   *
   * @param place where the layout stands in the request
   */
  Computation of(FreeSwingRequest request, LayoutPlace place) {
    WorkCost cost = landscapes.costOf(request.layout());
    long magnets = request.among().isPresent() ? cost.trace() : 0;
    return new Computation(
            request.key(), KIND, request.url(), progress -> compute(request, place, progress))
        .remadeFrom(request.words().toArray(String[]::new))
        .costing(cost.freeSwing(swings(request)) + magnets);
  }

  /** Swings that are followed at most. */
  private double swings(FreeSwingRequest request) {
    SmallSwings small = SmallSwings.of(request.layout().layout());
    double halves =
        small.lossX().isPresent()
            ? SmallSwings.halvingTime(small.lossX().getAsDouble()).orElse(0)
            : limits.followedS();
    return Math.max(request.durationS(), Math.min(halves, limits.followedS())) / small.periodX();
  }

  /**
   * Refuses a release that the rig itself rules out, before anything costly.
   *
   * @throws lodeswing.web.problem.ProblemException {@code impossible-release}
   */
  void checkShapes(FreeSwingRequest request) {
    start(FreeSwing.of(request.layout().layout()).motion(), request.start());
  }

  private static double[] start(Motion motion, Release release) {
    return StartState.of(motion, release, EnumSet.allOf(Limit.Kind.class), true);
  }

  private byte[] compute(
      FreeSwingRequest request, LayoutPlace place, Computation.Progress progress) {
    WorkCost cost = landscapes.costOf(request.layout());
    long path = request.among().isPresent() ? cost.trace() - cost.makingReady() : 0;
    long making = request.among().isPresent() ? cost.makingReady() : 0;
    Stages stages =
        new Stages(progress, cost.freeSwing(swings(request)), making, path / 2, path / 2);
    try {
      FreePath free = free(request, stages.next());
      if (request.among().isEmpty()) {
        return new StoredSwing(free, Optional.empty(), Optional.empty()).written();
      }
      Landscape landscape = landscapes.of(request.layout(), place, stages.next());
      double[] start = start(landscape.motion(), request.start());
      Parting parting =
          new Parting(
              landscape.motion(),
              free.curve(),
              request.among().get().within() * request.unit(),
              Math.min(request.durationS(), free.curve().ends()));
      Parting.Result parted = parting.follow(start, stages.next()::report);
      Optional<StoredSwing.Second> second =
          request.among().get().drawn()
              ? Optional.of(second(request, landscape, start, stages.next()))
              : Optional.empty();
      return new StoredSwing(free, Optional.of(parted), second).written();
    } catch (IntegrationFailure e) {
      throw StartState.beyondComputing(e, true);
    }
  }

  private FreePath free(FreeSwingRequest request, Computation.Progress progress) {
    FreeSwing swing = FreeSwing.of(request.layout().layout());
    return swing.follow(
        start(swing.motion(), request.start()),
        request.durationS(),
        request.layout().layout().lossless() ? 0 : limits.followedS(),
        progress::report);
  }

  private static StoredSwing.Second second(
      FreeSwingRequest request,
      Landscape landscape,
      double[] start,
      Computation.Progress progress) {
    double duration = request.durationS();
    TraceSpec spec = new TraceSpec(request.start(), duration, duration / FEW, SPREAD, duration);
    TraceResult path = new Trace(landscape).run(spec, start, progress::report);
    Optional<PathEnd> end =
        path.events().stream()
            .filter(event -> event.kind().endsModel() || event.kind() == TraceEvent.Kind.STUCK)
            .findFirst()
            .map(event -> new PathEnd(event.time(), limit(event.kind())));
    return new StoredSwing.Second(path.curve(), path.trustedUntil(), end);
  }

  private static Optional<Limit.Kind> limit(TraceEvent.Kind kind) {
    return switch (kind) {
      case SUSPENSION_SLACK -> Optional.of(Limit.Kind.SUSPENSION_SLACK);
      case MAGNET_CONTACT -> Optional.of(Limit.Kind.MAGNET_CONTACT);
      case PLATE_CONTACT -> Optional.of(Limit.Kind.PLATE_CONTACT);
      case ANGLE_LIMIT -> Optional.of(Limit.Kind.ANGLE_LIMIT);
      case SEALED, SETTLED, STUCK, TRUST_ENDS, FORETELLING_ENDS -> Optional.empty();
    };
  }
}
