package lodeswing.web.basin;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;
import lodeswing.core.window.BasinWindow;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.posted.Posted;
import lodeswing.web.posted.PostedKind;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * A map as it is asked for, in the layout's own unit of length.
 *
 * @param layout the layout
 * @param x middle of its window
 * @param y middle of its window
 * @param halfWidth half of the window's side
 * @param revision of the engine that answers
 */
record BasinRequest(LayoutDocument layout, double x, double y, double halfWidth, int revision)
    implements Posted<BasinRequest> {

  static final PostedKind KIND =
      new PostedKind(
          "bas",
          "basin",
          "/v1/basins/",
          BasinShapes.STORED,
          "No map of this id is stored; post it again at /v1/basins.");

  /** From a body that {@link BasinShapes#REQUEST} has read. */
  static BasinRequest of(LayoutDocument layout, Body body) {
    return body.findObject("window")
        .map(
            window ->
                new BasinRequest(
                    layout,
                    window.number("x"),
                    window.number("y"),
                    window.number("halfWidth"),
                    ComputationKey.ENGINE_REVISION))
        .orElseGet(() -> usual(layout));
  }

  /** The map of the window that a layout has where the request names none. */
  static BasinRequest usual(LayoutDocument layout) {
    return new BasinRequest(
        layout, 0, 0, UsualWindow.halfWidth(layout), ComputationKey.ENGINE_REVISION);
  }

  @Override
  public Body canonical() {
    return Body.of(Map.of("window", windowBody()));
  }

  /** The window in its one canonical form. */
  Body windowBody() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("x", x);
    members.put("y", y);
    members.put("halfWidth", halfWidth);
    return Body.of(members);
  }

  @Override
  public PostedKind kind() {
    return KIND;
  }

  @Override
  public BasinRequest of(int other) {
    return new BasinRequest(layout, x, y, halfWidth, other);
  }

  /** Names something computed of this window, without labels. */
  ComputationKey key(String prefix, String what) {
    return new ComputationKey(
        prefix,
        KIND.word() + "|" + what + "|" + layout.physicsKey() + "|" + windowBody().toJson(),
        revision);
  }

  /** Metres in a unit of length of this layout. */
  double unit() {
    return 1 / layout.shownPerUnit();
  }

  boolean bench() {
    return layout.model().equals("bench");
  }

  /** The window in SI. */
  BasinWindow window() {
    return new BasinWindow(x * unit(), y * unit(), halfWidth * unit());
  }

  /**
   * Refuses windows that show nothing.
   *
   * @param pointer of the window's members in the request, such as {@code /window/}
   */
  BasinRequest checked(String pointer) {
    BasinWindow window = window();
    double least = 256 * 64 * Math.ulp(window.reach()) / unit();
    if (!window.resolves(2 * window.halfWidth() / 256)) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "The window is too small for its distance from the middle.",
          List.of(
              new Fault(
                  pointer + "halfWidth",
                  "is " + Numbers.shortest(halfWidth) + "; raise it to " + rounded(least))));
    }
    if (layout.layout() instanceof BenchLayout bench) {
      Release nearest =
          new Release(
              nearest(window.x(), window.halfWidth()),
              nearest(window.y(), window.halfWidth()),
              0,
              0);
      if (BenchMotion.withoutMagnets(bench).toState(nearest).isEmpty()) {
        throw new ProblemException(
            ProblemCode.IMPOSSIBLE_RELEASE,
            "The bob can be released nowhere in this window.",
            List.of(
                new Fault(
                    pointer + "x",
                    "leaves the whole window beyond the angle of 60 degrees up to which the"
                        + " suspension is computed; move it towards the middle")));
      }
    }
    return this;
  }

  private static double nearest(double middle, double halfWidth) {
    return Math.signum(middle) * Math.max(0, Math.abs(middle) - halfWidth);
  }

  private static String rounded(double value) {
    return String.format(Locale.ROOT, "%.2g", 1.1 * value);
  }
}
