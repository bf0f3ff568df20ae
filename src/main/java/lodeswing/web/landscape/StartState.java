package lodeswing.web.landscape;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import lodeswing.core.integrate.IntegrationFailure;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.Release;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** The state that a release puts a bob in, and why there may be none. */
public final class StartState {

  private StartState() {}

  /**
   * The state of a release, which must lie within the borders of some kinds.
   *
   * @param motion what moves
   * @param release how the bob is let go
   * @param kinds the borders that count
   * @param fromQuery whether the release stands in the address
   * @throws ProblemException {@code impossible-release}
   */
  public static double[] of(
      Motion motion, Release release, Set<Limit.Kind> kinds, boolean fromQuery) {
    return of(motion, release, kinds, pointers(fromQuery));
  }

  /**
   * The state of a release, which must lie within the borders of some kinds.
   *
   * @param motion what moves
   * @param release how the bob is let go
   * @param kinds the borders that count
   * @param pointers what to point at where it is impossible
   * @throws ProblemException {@code impossible-release}
   */
  public static double[] of(
      Motion motion, Release release, Set<Limit.Kind> kinds, List<String> pointers) {
    double[] start =
        motion.toState(release).orElseThrow(() -> impossible(pointers, beyond(motion)));
    for (Limit limit : motion.limits()) {
      if (kinds.contains(limit.kind()) && !(limit.margin(start) > 0)) {
        throw impossible(pointers, reason(limit, start));
      }
    }
    return start;
  }

  /** The members or parameters that name the place of a request's one release. */
  public static List<String> pointers(boolean fromQuery) {
    return fromQuery ? List.of("?x", "?y") : List.of("/release/x", "/release/y");
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
          "leaves the suspension slack, by "
              + by
              + " N; release nearer to the middle, or where the magnets push less";
    };
  }

  /**
   * A path whose numbers or steps run out: the request's figures are too extreme.
   *
   * @param fromQuery whether the release stands in the address
   */
  public static ProblemException beyondComputing(IntegrationFailure failure, boolean fromQuery) {
    boolean tooLong = failure.reason() == IntegrationFailure.Reason.TOO_MANY_STEPS;
    return new ProblemException(
        tooLong ? ProblemCode.TOO_COSTLY : ProblemCode.IMPOSSIBLE_RELEASE,
        "The path cannot be computed from there with figures as extreme as these.",
        List.of(
            new Fault(
                fromQuery ? "?x" : "/release",
                failure.getMessage() + "; use less extreme figures of layout and release")));
  }

  private static ProblemException impossible(List<String> pointers, String detail) {
    return new ProblemException(
        ProblemCode.IMPOSSIBLE_RELEASE,
        "The bob cannot be released there.",
        pointers.stream().map(pointer -> new Fault(pointer, detail)).toList());
  }
}
