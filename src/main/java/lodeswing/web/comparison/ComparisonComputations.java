package lodeswing.web.comparison;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import lodeswing.analysis.comparison.Comparison;
import lodeswing.analysis.comparison.ComparisonResult;
import lodeswing.analysis.comparison.ComparisonSpec;
import lodeswing.analysis.comparison.Prediction;
import lodeswing.analysis.comparison.Start;
import lodeswing.analysis.trace.Trace;
import lodeswing.analysis.trace.TraceEvent;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.analysis.trace.TraceSpec;
import lodeswing.core.integrate.IntegrationFailure;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Limit;
import lodeswing.core.rig.Release;
import lodeswing.job.Computation;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.StartState;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.restpoint.RestPlace;
import lodeswing.web.trace.StoredPath;
import org.springframework.stereotype.Component;

/** The work behind comparisons. */
@Component
final class ComparisonComputations {

  /** Samples of the path are not kept; a trace takes some. */
  private static final int FEW = 2;

  /** The hand's spread is of no interest here; a trace takes one. */
  private static final double SPREAD = 1e-3;

  private final Landscapes landscapes;
  private final Limits limits;

  ComparisonComputations(Landscapes landscapes, Limits limits) {
    this.landscapes = landscapes;
    this.limits = limits;
  }

  /**
   * The work for a comparison.
   *
   * @param request what is asked
   * @param place where the layout stands in the request
   */
  Computation of(ComparisonRequest request, LayoutPlace place) {
    return new Computation(
            request.key(),
            request.kind().word(),
            request.url(),
            progress -> compute(request, place, progress))
        .remadeFrom(request.id())
        .costing(landscapes.costOf(request.layout()).comparison());
  }

  private byte[] compute(
      ComparisonRequest request, LayoutPlace place, Computation.Progress progress) {
    WorkCost cost = landscapes.costOf(request.layout());
    long rest = cost.comparison() - cost.makingReady();
    Stages stages = new Stages(progress, cost.makingReady(), rest / 4, rest - rest / 4);
    Landscape landscape = landscapes.of(request.layout(), place, stages.next());
    ComparisonSpec spec = request.spec();
    Comparison comparison = new Comparison(spec, landscape);
    Start start = comparison.start();
    double[] state = state(request, landscape, start.release());
    Prediction path = new Prediction(landscape, spec.recording(), start, state);
    try {
      TraceResult foretold = follow(landscape, spec, start, state, path, stages.next());
      ComparisonResult found =
          comparison.compare(start, path, foretold.trustedUntil(), stages.next()::report);
      List<RestPlace> places = landscape.restPoints().list().stream().map(RestPlace::of).toList();
      return new StoredComparison(
              StoredComparison.StoredStart.of(start),
              new StoredPath(foretold, places, OptionalInt.empty()),
              found)
          .written();
    } catch (IntegrationFailure e) {
      throw StartState.beyondComputing(e, false);
    }
  }

  private static double[] state(ComparisonRequest request, Landscape landscape, Release release) {
    EnumSet<Limit.Kind> all = EnumSet.allOf(Limit.Kind.class);
    if (request.release().isPresent()) {
      return StartState.of(landscape.motion(), release, all, false);
    }
    try {
      return StartState.of(landscape.motion(), release, all, List.of("/recording"));
    } catch (ProblemException e) {
      throw ComparisonReview.misplaced(request, new double[] {release.x(), release.y()}, e);
    }
  }

  // One more than usual: where, what, from where by place and state, who looks on, who is told.
  private TraceResult follow(
      Landscape landscape,
      ComparisonSpec spec,
      Start start,
      double[] state,
      Prediction path,
      Computation.Progress progress) {
    int last = spec.recording().count() - 1;
    double duration = spec.recording().since(last) - start.time();
    TraceSpec asked =
        new TraceSpec(
            start.release(),
            duration,
            duration / FEW,
            SPREAD,
            Math.max(duration, limits.durationS()));
    TraceResult foretold = new Trace(landscape).run(asked, state, progress::report, path::look);
    if (foretold.events().stream().anyMatch(event -> event.kind() == TraceEvent.Kind.STUCK)) {
      path.stay();
    }
    return foretold;
  }
}
