package lodeswing.web.trace;

import java.util.List;
import java.util.Locale;
import lodeswing.analysis.trace.Trace;
import lodeswing.analysis.trace.TraceSpec;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Limit;
import lodeswing.job.Computation;
import lodeswing.web.landscape.Landscapes;
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

  /** Plan distance at 60 degrees, as a share of the arm; a yoke's shorter axis reaches less far. */
  private static final double FARTHEST = 0.866;

  private final Landscapes landscapes;
  private final Limits limits;

  TraceComputations(Landscapes landscapes, Limits limits) {
    this.landscapes = landscapes;
    this.limits = limits;
  }

  /**
   * The work for a trace.
   *
   * @param request what is asked
   * @param resultUrl where its answer is found
   * @param fromQuery whether faults are those of a query, not of a body
   */
  Computation of(TraceRequest request, String resultUrl, boolean fromQuery) {
    return new Computation(
        request.pathKey(), KIND, resultUrl, progress -> compute(request, fromQuery));
  }

  private byte[] compute(TraceRequest request, boolean fromQuery) {
    Landscape landscape = landscapes.of(request.layout());
    TraceSpec spec = request.spec(limits);
    double[] start =
        landscape
            .motion()
            .toState(spec.release())
            .orElseThrow(
                () ->
                    impossible(
                        fromQuery,
                        "lies beyond the angle of 60 degrees up to which the suspension is"
                            + " computed; release within "
                            + String.format(
                                Locale.ROOT,
                                "%.0f mm of the middle",
                                1e3 * FARTHEST * landscape.planScale().perCoordinate())));
    for (Limit limit : landscape.motion().limits()) {
      if (!(limit.margin(start) > 0)) {
        throw impossible(fromQuery, reason(limit, start));
      }
    }
    List<RestPlace> places = landscape.restPoints().list().stream().map(RestPlace::of).toList();
    return new StoredPath(new Trace(landscape).run(spec, start), places).written();
  }

  private static String reason(Limit limit, double[] start) {
    String by = String.format(Locale.ROOT, "%.3g", -limit.margin(start));
    String millimetres = String.format(Locale.ROOT, "%.3g mm", -1e3 * limit.margin(start));
    return switch (limit.kind()) {
      case MAGNET_CONTACT ->
          "puts the bob into a magnet, by " + millimetres + "; release elsewhere";
      case PLATE_CONTACT ->
          "puts the bob into the plate, by " + millimetres + "; release elsewhere";
      case ANGLE_LIMIT -> "passes the greatest angle by " + by + " rad; release nearer";
      case SUSPENSION_SLACK ->
          "leaves the suspension slack, by " + by + " N; release where the magnets push less";
    };
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
