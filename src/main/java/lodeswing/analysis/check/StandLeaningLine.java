package lodeswing.analysis.check;

import java.util.List;
import java.util.OptionalDouble;
import lodeswing.analysis.check.Judged.Way;

/** How far a leaning stand carries the middle of the swing off the middle of the plate. */
record StandLeaningLine() implements CheckLine {

  @Override
  public CheckCode code() {
    return CheckCode.STAND_LEANS;
  }

  @Override
  public Judged judge(Trial trial) {
    OptionalDouble tilt = trial.rig().around().stand().tilt();
    if (tilt.isEmpty()) {
      return Judged.unknown(
          OptionalDouble.empty(), Cause.STAND_NOT_TOLD, List.of("/stand/tiltDeg"));
    }
    double lean = tilt.getAsDouble();
    double height = trial.rig().around().stand().height().orElse(trial.onBench().axisHeight());
    return Judged.by(
        CheckLimits.LEANING,
        height * Math.tan(Math.abs(lean)),
        Cause.MIDDLE_MOVES,
        List.of(new Way(Knob.TILT, 0, lean > 0 ? -1 : 1)),
        lean,
        height);
  }
}
