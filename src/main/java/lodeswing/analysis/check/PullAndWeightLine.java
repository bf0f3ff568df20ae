package lodeswing.analysis.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.Judged.Way;

/** Whether the magnets pull harder than the weight draws the bob back to the middle. */
record PullAndWeightLine() implements CheckLine {

  @Override
  public CheckCode code() {
    return CheckCode.PULL_AGAINST_WEIGHT;
  }

  @Override
  public Judged judge(Trial trial) {
    Optional<StrongestPull> found = StrongestPull.againstWeight(trial.model());
    if (found.isEmpty()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOTHING_PULLS, Needs.magnets(trial));
    }
    StrongestPull pull = found.get();
    return Judged.by(
        CheckLimits.PULL,
        pull.ratio(),
        Cause.PULL_AND_WEIGHT,
        List.of(Way.down(Knob.GAP), Way.down(Knob.MASS), Way.down(Knob.PLANE_HEIGHT)),
        pull.magnet(),
        pull.pull(),
        pull.weight());
  }
}
