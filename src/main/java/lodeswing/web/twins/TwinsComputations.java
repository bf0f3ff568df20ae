package lodeswing.web.twins;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import lodeswing.analysis.trace.Trace;
import lodeswing.analysis.trace.TraceEvent;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.analysis.trace.TraceSpec;
import lodeswing.analysis.twins.TwinPath;
import lodeswing.analysis.twins.TwinWatch;
import lodeswing.analysis.twins.Twins;
import lodeswing.core.integrate.IntegrationFailure;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.Limit;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.job.Computation;
import lodeswing.job.Stages;
import lodeswing.job.WorkCost;
import lodeswing.web.body.Numbers;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.landscape.StartState;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.restpoint.RestPlace;
import lodeswing.web.trace.StoredPath;
import lodeswing.web.trace.TraceComputations;
import lodeswing.web.trace.TraceRequest;
import org.springframework.stereotype.Component;

/** The work behind twins. */
@Component
final class TwinsComputations {

  /** How many times the least distance that can be told apart a shift must be. */
  private static final double LEAST_SHIFT = 10;

  private final Landscapes landscapes;
  private final TraceComputations traces;
  private final Limits limits;

  TwinsComputations(Landscapes landscapes, TraceComputations traces, Limits limits) {
    this.landscapes = landscapes;
    this.traces = traces;
    this.limits = limits;
  }

  /**
   * The work for a pair.
   *
   * @param request what is asked
   * @param place where the layout stands in the request
   */
  Computation of(TwinsRequest request, LayoutPlace place) {
    return new Computation(
            request.pathsKey(),
            request.kind().word(),
            request.url(),
            progress -> compute(request, place, progress))
        .remadeFrom(request.id())
        .costing(landscapes.costOf(request.layout()).twins());
  }

  /**
   * Refuses releases that the shapes alone rule out, and shifts too small to be followed, before
   * anything costly.
   *
   * @throws ProblemException {@code impossible-release} or {@code invalid-request}
   */
  void check(TwinsRequest request, LayoutPlace place) {
    boolean fromQuery = place == LayoutPlace.ADDRESS;
    traces.checkShapes(request.first(), StartState.pointers(fromQuery));
    traces.checkShapes(request.second(), shiftPointers(fromQuery));
    double rate = naturalRate(request.layout().layout());
    double least = LEAST_SHIFT * Twins.RESOLVED_SHARE * swing(request, rate);
    List<Double> shift = request.shift();
    double own = size(shift, rate);
    if (own < least) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "So near to each other the two paths cannot be told apart by computing them.",
          List.of(
              new Fault(
                  fromQuery ? "?shiftX" : "/shift",
                  "is "
                      + Numbers.shortest(rounded(own))
                      + ", a push taken over the rate of small swings; from this release it must be"
                      + " at least "
                      + Numbers.shortest(rounded(least)))));
    }
  }

  private static double naturalRate(Layout layout) {
    return layout instanceof BenchLayout bench
        ? BenchMotion.withoutMagnets(bench).naturalRate()
        : ((TextbookLayout) layout).omega0();
  }

  private static double rounded(double value) {
    return Double.parseDouble(String.format(Locale.ROOT, "%.3g", value));
  }

  private static double swing(TwinsRequest request, double rate) {
    return Math.max(largest(request.first(), rate), largest(request.second(), rate));
  }

  private static double largest(TraceRequest request, double rate) {
    List<Double> release = request.release();
    return Math.max(
        Math.hypot(release.get(0), release.get(1)),
        Math.hypot(release.get(2), release.get(3)) / rate);
  }

  private static double size(List<Double> state, double rate) {
    return Math.hypot(
        Math.hypot(state.get(0), state.get(1)), Math.hypot(state.get(2), state.get(3)) / rate);
  }

  private static List<String> shiftPointers(boolean fromQuery) {
    return fromQuery ? List.of("?shiftX", "?shiftY") : List.of("/shift/x", "/shift/y");
  }

  private byte[] compute(TwinsRequest request, LayoutPlace place, Computation.Progress progress) {
    boolean fromQuery = place == LayoutPlace.ADDRESS;
    WorkCost cost = landscapes.costOf(request.layout());
    Stages stages = new Stages(progress, cost.makingReady(), cost.twin(), cost.twin());
    Landscape landscape = landscapes.of(request.layout(), place, stages.next());
    double[] one = start(landscape, request.first(), StartState.pointers(fromQuery));
    double[] other = start(landscape, request.second(), shiftPointers(fromQuery));
    Twins twins = new Twins(landscape, request.first().durationS());
    double[] shift = new double[4];
    for (int i = 0; i < 4; i++) {
      shift[i] = other[i] - one[i];
    }
    try {
      Followed first = follow(landscape, twins, request.first(), one, shift, stages.next());
      Followed second = follow(landscape, twins, request.second(), other, shift, stages.next());
      return new StoredTwins(
              first.stored(), second.stored(), twins.compare(first.seen(), second.seen()))
          .written();
    } catch (IntegrationFailure e) {
      throw StartState.beyondComputing(e, fromQuery);
    }
  }

  private double[] start(Landscape landscape, TraceRequest request, List<String> pointers) {
    return StartState.of(
        landscape.motion(),
        request.spec(limits).release(),
        EnumSet.allOf(Limit.Kind.class),
        pointers);
  }

  /** One path as it is stored, and as it is compared. */
  private record Followed(StoredPath stored, TwinPath seen) {}

  // One more than usual: each says another thing of one path of the pair.
  private Followed follow(
      Landscape landscape,
      Twins twins,
      TraceRequest request,
      double[] start,
      double[] shift,
      Computation.Progress progress) {
    TraceSpec spec = request.spec(limits);
    TwinWatch watch = new TwinWatch(landscape.motion(), twins.grid(), start, shift);
    TraceResult path = new Trace(landscape).run(spec, start, progress::report, watch::look);
    if (path.events().stream().anyMatch(e -> e.kind() == TraceEvent.Kind.STUCK)) {
      watch.stay();
    }
    List<RestPlace> places = landscape.restPoints().list().stream().map(RestPlace::of).toList();
    return new Followed(
        new StoredPath(path, places, OptionalInt.empty()),
        new TwinPath(watch, path.trustedUntil(), path.sealedAt()));
  }
}
