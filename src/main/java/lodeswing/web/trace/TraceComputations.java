package lodeswing.web.trace;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import lodeswing.analysis.basin.SpecialEnd;
import lodeswing.analysis.trace.Trace;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.analysis.trace.TraceSpec;
import lodeswing.core.integrate.IntegrationFailure;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.job.Computation;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
import lodeswing.web.basin.UsualMap;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.restpoint.RestPlace;
import org.springframework.stereotype.Component;

/** The work behind traces. */
@Component
final class TraceComputations {

  private static final String KIND = "trace";

  private final Landscapes landscapes;
  private final UsualMap map;
  private final Limits limits;

  TraceComputations(Landscapes landscapes, UsualMap map, Limits limits) {
    this.landscapes = landscapes;
    this.map = map;
    this.limits = limits;
  }

  /**
   * The work for a trace.
   *
   * @param request what is asked
   * @param resultUrl where its answer is found
   * @param place where the layout stands in the request
   */
  Computation of(TraceRequest request, String resultUrl, LayoutPlace place) {
    return new Computation(
            request.pathKey(), KIND, resultUrl, progress -> compute(request, place, progress))
        .remadeFrom(request.traceId())
        .costing(landscapes.costOf(request.layout()).trace());
  }

  /**
   * Refuses a release that the shapes alone rule out, before anything costly.
   *
   * @param request what is asked
   * @param place where the layout stands in the request
   * @throws ProblemException {@code impossible-release}
   */
  void checkShapes(TraceRequest request, LayoutPlace place) {
    if (request.layout().layout() instanceof BenchLayout bench) {
      start(
          BenchMotion.withoutMagnets(bench),
          request.spec(limits),
          EnumSet.complementOf(EnumSet.of(Limit.Kind.SUSPENSION_SLACK)),
          place == LayoutPlace.ADDRESS);
    }
  }

  private byte[] compute(TraceRequest request, LayoutPlace place, Computation.Progress progress) {
    boolean fromQuery = place == LayoutPlace.ADDRESS;
    TraceSpec spec = request.spec(limits);
    WorkCost cost = landscapes.costOf(request.layout());
    Stages stages = cost.stages(progress, cost.trace());
    Landscape landscape = landscapes.of(request.layout(), place, stages.next());
    double[] start = start(landscape.motion(), spec, EnumSet.allOf(Limit.Kind.class), fromQuery);
    List<RestPlace> places = landscape.restPoints().list().stream().map(RestPlace::of).toList();
    try {
      TraceResult path = new Trace(landscape).run(spec, start, stages.next()::report);
      OptionalInt mapEnd = map.end(request.layout(), landscape, spec.release());
      return new StoredPath(path, places, numbered(mapEnd, places)).written();
    } catch (IntegrationFailure e) {
      throw beyondComputing(e, fromQuery);
    }
  }

  private static OptionalInt numbered(OptionalInt end, List<RestPlace> places) {
    return end.isPresent()
        ? OptionalInt.of(SpecialEnd.index(end.getAsInt(), places.size()))
        : OptionalInt.empty();
  }

  /** The state of the release, which must lie within the borders of some kinds. */
  private static double[] start(
      Motion motion, TraceSpec spec, Set<Limit.Kind> kinds, boolean fromQuery) {
    double[] start =
        motion.toState(spec.release()).orElseThrow(() -> impossible(fromQuery, beyond(motion)));
    for (Limit limit : motion.limits()) {
      if (kinds.contains(limit.kind()) && !(limit.margin(start) > 0)) {
        throw impossible(fromQuery, reason(limit, start));
      }
    }
    return start;
  }

  /** Says how far out along each axis a release is possible. */
  private static String beyond(Motion motion) {
    double[] along = new double[4];
    double[] across = new double[4];
    motion.toPlan(new double[] {motion.reach(), 0, 0, 0}, along);
    motion.toPlan(new double[] {0, motion.reach(), 0, 0}, across);
    return String.format(
        Locale.ROOT,
        "lies beyond the angle of 60 degrees up to which the suspension is computed; along x a"
            + " release is possible up to %.0f mm, along y up to %.0f mm",
        Math.floor(along[0] * 1e3),
        Math.floor(across[1] * 1e3));
  }

  private static String reason(Limit limit, double[] start) {
    double lacking = -limit.margin(start);
    String by = String.format(Locale.ROOT, "%.3g", lacking);
    String byMm = String.format(Locale.ROOT, "%.1f mm", lacking * 1e3);
    return switch (limit.kind()) {
      case MAGNET_CONTACT -> "puts the bob into a magnet, by " + byMm + "; release elsewhere";
      case PLATE_CONTACT -> "puts the bob into the plate, by " + byMm + "; release elsewhere";
      case ANGLE_LIMIT ->
          "passes the greatest angle by " + by + " rad; release nearer to the middle";
      case SUSPENSION_SLACK ->
          "leaves the suspension slack, by " + by + " N; release where the magnets push less";
    };
  }

  /** A path whose numbers or steps run out: the request's figures are too extreme. */
  private static ProblemException beyondComputing(IntegrationFailure failure, boolean fromQuery) {
    boolean tooLong = failure.reason() == IntegrationFailure.Reason.TOO_MANY_STEPS;
    return new ProblemException(
        tooLong ? ProblemCode.TOO_COSTLY : ProblemCode.IMPOSSIBLE_RELEASE,
        "The path cannot be computed from there with figures as extreme as these.",
        List.of(
            new Fault(
                fromQuery ? "?x" : "/release",
                failure.getMessage() + "; use less extreme figures of layout and release")));
  }

  private static ProblemException impossible(boolean fromQuery, String detail) {
    return new ProblemException(
        ProblemCode.IMPOSSIBLE_RELEASE,
        "The bob cannot be released there.",
        List.of(
            new Fault(fromQuery ? "?x" : "/release/x", detail),
            new Fault(fromQuery ? "?y" : "/release/y", detail)));
  }
}
