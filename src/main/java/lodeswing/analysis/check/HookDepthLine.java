package lodeswing.analysis.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.CheckedRig.Hook;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.analysis.check.ReleaseRegion.Found;

/**
 * Whether the hook closes far enough round the eye. A round hook of opening w and depth d holds an
 * eye up to the angle 2 atan(2 d/w) from straight down, that of a circle's arc over its chord; the
 * pull leans as far as the swing, so that d must be w/2 tan(angle/2) at least.
 */
record HookDepthLine() implements CheckLine {

  @Override
  public CheckCode code() {
    return CheckCode.HOOK_DEPTH;
  }

  @Override
  public Judged judge(Trial trial) {
    Hook hook = trial.rig().around().hook();
    List<String> needs = new ArrayList<>();
    if (hook.depth().isEmpty()) {
      needs.add("/hook/depthMm");
    }
    if (hook.opening().isEmpty()) {
      needs.add("/hook/openingMm");
    }
    if (!needs.isEmpty()) {
      return Judged.unknown(hook.depth(), Cause.HOOK_NOT_TOLD, needs);
    }
    OptionalDouble widest = widest(trial);
    if (widest.isEmpty()) {
      return Judged.unknown(hook.depth(), Cause.NOWHERE_TO_RELEASE, List.of());
    }
    double opening = hook.opening().getAsDouble();
    double angle = widest.getAsDouble();
    double good =
        Math.max(CheckLimits.HOOK_DEPTH, needed(opening, angle + CheckLimits.HOOK_ALLOWANCE));
    return Judged.by(
        Band.atLeast(good, needed(opening, angle)),
        hook.depth().getAsDouble(),
        Cause.DEPTH_OF_HOOK,
        List.of(Way.up(Knob.HOOK_DEPTH)),
        angle,
        opening);
  }

  private static double needed(double opening, double angle) {
    return opening / 2 * Math.tan(angle / 2);
  }

  /** The widest angle from straight down within the region [rad]. */
  static OptionalDouble widest(Trial trial) {
    Optional<Found> found =
        trial.region().greatest((q0, q1) -> Math.acos(StrictMath.cos(q0) * StrictMath.cos(q1)));
    return found.stream().mapToDouble(Found::value).findFirst();
  }
}
