package lodeswing.analysis.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.analysis.check.ReleaseRegion.Found;
import lodeswing.core.motion.Limit;
import lodeswing.core.suspension.PullLine;

/** Whether the magnets can push the bob up until its cord is slack or its hook lifts off. */
record SlackLine() implements CheckLine {

  /** Below this the figure says no more. */
  private static final double LOWEST = -1000;

  @Override
  public CheckCode code() {
    return CheckCode.SUSPENSION_SLACK;
  }

  @Override
  public Judged judge(Trial trial) {
    RigModel model = trial.model();
    double weight = trial.weight();
    ReleaseRegion region = trial.region();
    Optional<Found> least =
        region.least(
            region.clear(
                (q0, q1) ->
                    Math.max(LOWEST, model.margin(Limit.Kind.SUSPENSION_SLACK, q0, q1) / weight)));
    if (least.isEmpty()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOWHERE_TO_RELEASE, List.of());
    }
    Found found = least.get();
    boolean hook = trial.onBench().suspension().pullLine() == PullLine.BETWEEN_AXES;
    Judged judged =
        Judged.by(
            CheckLimits.SLACK,
            found.value(),
            Cause.LEAST_PULL,
            List.of(Way.up(Knob.MASS), Way.up(Knob.GAP), Way.up(Knob.SPAN)),
            found.x(),
            found.y(),
            found.value() * weight,
            hook ? 1 : 0);
    // A cord that goes slack catches the bob again; a hook that lifts off lets it fall.
    return hook || judged.good() ? judged : judged.as(Verdict.WATCH);
  }
}
