package lodeswing.analysis.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lodeswing.analysis.check.CheckedRig.Stand;
import lodeswing.analysis.check.Judged.Way;

/**
 * Whether the swing can tip the stand: where the line of the hook's pull meets the bench. Within
 * half the base even a stand that weighs nothing stays; its own weight only helps.
 */
record StandTippingLine() implements CheckLine {

  @Override
  public CheckCode code() {
    return CheckCode.STAND_TIPS;
  }

  @Override
  public Judged judge(Trial trial) {
    Stand stand = trial.rig().around().stand();
    OptionalDouble angle = HookDepthLine.widest(trial);
    if (angle.isEmpty()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOWHERE_TO_RELEASE, List.of());
    }
    List<String> needs = new ArrayList<>();
    if (stand.base().isEmpty()) {
      needs.add("/stand/baseMm");
    }
    if (stand.tilt().isEmpty()) {
      needs.add("/stand/tiltDeg");
    }
    double height = stand.height().orElse(trial.onBench().axisHeight());
    double tilt = Math.abs(stand.tilt().orElse(0));
    double meets = height * (Math.tan(angle.getAsDouble()) + Math.tan(tilt));
    if (!needs.isEmpty()) {
      return Judged.unknown(
          OptionalDouble.of(meets), Cause.STAND_NOT_TOLD, needs, height, angle.getAsDouble(), tilt);
    }
    double half = stand.base().getAsDouble() / 2;
    return Judged.by(
        Band.atMost(CheckLimits.BASE_SHARE * half, half),
        meets,
        Cause.LINE_OF_PULL,
        List.of(Way.up(Knob.BASE)),
        height,
        angle.getAsDouble(),
        tilt);
  }
}
