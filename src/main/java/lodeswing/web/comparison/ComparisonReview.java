package lodeswing.web.comparison;

import java.util.EnumSet;
import java.util.List;
import lodeswing.analysis.comparison.Comparison;
import lodeswing.core.motion.FreeMotion;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.recording.Recording;
import lodeswing.core.recording.RecordingFrame;
import lodeswing.core.rig.Release;
import lodeswing.web.body.Body;
import lodeswing.web.body.FaultList;
import lodeswing.web.body.Numbers;
import lodeswing.web.landscape.StartState;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** What the shapes of a request for a comparison cannot see. */
final class ComparisonReview {

  /** Places that a recording must have; more are asked of those where the bob moves. */
  static final int FEWEST = Comparison.fewest() + 2;

  /** All that a place alone can break. */
  private static final EnumSet<Limit.Kind> BY_PLACE =
      EnumSet.complementOf(EnumSet.of(Limit.Kind.SUSPENSION_SLACK));

  private ComparisonReview() {}

  /**
   * Checks what a body that {@link ComparisonShapes#REQUEST} has read says of its release.
   *
   * @throws ProblemException {@code invalid-request} with every fault
   */
  static void check(Body sent) {
    var faults = new FaultList();
    for (String name : List.of("placingAccuracy", "releaseTimeS")) {
      if (sent.has(name) && !sent.has("release")) {
        faults.add("/" + name, "means nothing without release; give it, or leave this out");
      }
    }
    faults.refuseIfAny(ProblemCode.INVALID_REQUEST, "The request");
  }

  /**
   * Checks a whole request.
   *
   * @throws ProblemException {@code invalid-request}, {@code impossible-release} or {@code
   *     too-costly}
   */
  static void check(ComparisonRequest asked, Limits limits) {
    Recording recording = asked.kept().inSi();
    double lasts = recording.since(recording.count() - 1);
    if (lasts > limits.durationS()) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY,
          "The recording lasts longer than a path may.",
          List.of(
              new Fault(
                  "/recording",
                  "lasts "
                      + Numbers.plain(lasts)
                      + "; cut it to "
                      + Numbers.plain(limits.durationS()))));
    }
    Motion motion = FreeMotion.of(asked.layout().layout());
    if (asked.release().isPresent()) {
      checkTold(asked, recording);
      StartState.of(
          motion,
          asked.spec().release().orElseThrow().release(),
          BY_PLACE,
          StartState.pointers(false));
      return;
    }
    int moving = recording.count() - recording.firstMoving();
    if (moving < Comparison.fewest()) {
      throw refused(
          "/recording",
          "shows the bob moving plainly in its last "
              + moving
              + " places only; "
              + Comparison.fewest()
              + " or more are needed, spread over a swing or more");
    }
    checkPlace(asked, recording, motion);
  }

  private static void checkTold(ComparisonRequest asked, Recording recording) {
    double time = asked.canonical().findNumber("releaseTimeS").orElse(0);
    int left = recording.count() - recording.within(time);
    if (left < Comparison.fewest()) {
      throw refused(
          "/releaseTimeS",
          "leaves "
              + left
              + " places after it; "
              + Comparison.fewest()
              + " or more are needed, spread over a swing or more");
    }
  }

  /** Whether the bob can be where the recording first shows it move. */
  private static void checkPlace(ComparisonRequest asked, Recording recording, Motion motion) {
    int first = recording.firstMoving();
    RecordingFrame frame = asked.kept().frameInSi();
    double[] plan = new double[2];
    frame.toPlan(recording.x(first), recording.y(first), plan);
    try {
      StartState.of(motion, new Release(plan[0], plan[1], 0, 0), BY_PLACE, List.of("/recording"));
    } catch (ProblemException e) {
      throw misplaced(asked, plan, e);
    }
  }

  /** A start that the layout rules out, told as a fault of the recording. */
  static ProblemException misplaced(
      ComparisonRequest asked, double[] plan, ProblemException cause) {
    double shown = asked.layout().shownPerUnit();
    return new ProblemException(
        cause.code(),
        "The recording begins at x = "
            + Numbers.plain(Numbers.toDigits(plan[0] * shown, 4))
            + ", y = "
            + Numbers.plain(Numbers.toDigits(plan[1] * shown, 4))
            + " on the plate, where this bob cannot be. Look at its unit and scale, origin and"
            + " turn.",
        cause.faults());
  }

  private static ProblemException refused(String pointer, String detail) {
    return new ProblemException(
        ProblemCode.INVALID_REQUEST,
        "The recording cannot be compared.",
        List.of(new Fault(pointer, detail)));
  }
}
