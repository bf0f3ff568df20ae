package lodeswing.web.trace;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import lodeswing.analysis.basin.SpecialEnd;
import lodeswing.analysis.trace.Trace;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.analysis.trace.TraceSpec;
import lodeswing.core.integrate.IntegrationFailure;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.Limit;
import lodeswing.core.rig.BenchLayout;
import lodeswing.job.Computation;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
import lodeswing.web.basin.UsualMap;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.StartState;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.restpoint.RestPlace;
import org.springframework.stereotype.Component;

/** The work behind traces. */
@Component
public final class TraceComputations {

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
   * @param place where the layout stands in the request
   */
  Computation of(TraceRequest request, LayoutPlace place) {
    return new Computation(
            request.pathKey(),
            request.kind().word(),
            request.url(),
            progress -> compute(request, place, progress))
        .remadeFrom(request.id())
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
    checkShapes(request, StartState.pointers(place == LayoutPlace.ADDRESS));
  }

  /**
   * Refuses a release that the shapes alone rule out, before anything costly.
   *
   * @param request what is asked
   * @param pointers what to point at where it is impossible
   * @throws ProblemException {@code impossible-release}
   */
  public void checkShapes(TraceRequest request, List<String> pointers) {
    if (request.layout().layout() instanceof BenchLayout bench) {
      StartState.of(
          BenchMotion.withoutMagnets(bench),
          request.spec(limits).release(),
          EnumSet.complementOf(EnumSet.of(Limit.Kind.SUSPENSION_SLACK)),
          pointers);
    }
  }

  private byte[] compute(TraceRequest request, LayoutPlace place, Computation.Progress progress) {
    boolean fromQuery = place == LayoutPlace.ADDRESS;
    TraceSpec spec = request.spec(limits);
    WorkCost cost = landscapes.costOf(request.layout());
    Stages stages = cost.stages(progress, cost.trace());
    Landscape landscape = landscapes.of(request.layout(), place, stages.next());
    double[] start =
        StartState.of(
            landscape.motion(), spec.release(), EnumSet.allOf(Limit.Kind.class), fromQuery);
    List<RestPlace> places = landscape.restPoints().list().stream().map(RestPlace::of).toList();
    try {
      TraceResult path = new Trace(landscape).run(spec, start, stages.next()::report);
      OptionalInt mapEnd = map.end(request.layout(), landscape, spec.release());
      return new StoredPath(path, places, numbered(mapEnd, places)).written();
    } catch (IntegrationFailure e) {
      throw StartState.beyondComputing(e, fromQuery);
    }
  }

  private static OptionalInt numbered(OptionalInt end, List<RestPlace> places) {
    return end.isPresent()
        ? OptionalInt.of(SpecialEnd.index(end.getAsInt(), places.size()))
        : OptionalInt.empty();
  }
}
