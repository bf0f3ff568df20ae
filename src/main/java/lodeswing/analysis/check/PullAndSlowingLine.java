package lodeswing.analysis.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.Judged.Way;

/** Whether what slows the bob leaves anything for the magnets to do. */
record PullAndSlowingLine() implements CheckLine {

  @Override
  public CheckCode code() {
    return CheckCode.PULL_AGAINST_SLOWING;
  }

  @Override
  public Judged judge(Trial trial) {
    RigModel model = trial.model();
    Optional<StrongestPull> pull = StrongestPull.againstWeight(model);
    if (pull.isEmpty()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOTHING_PULLS, Needs.magnets(trial));
    }
    Optional<double[]> edge = model.state(trial.spec().radius(), 0);
    if (edge.isEmpty()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOWHERE_TO_RELEASE, List.of());
    }
    RigModel.Slowing slowing = model.slowing(edge.get());
    return Judged.by(
        CheckLimits.SLOWING,
        slowing.force() / pull.get().pull(),
        Cause.PULL_AND_SLOWING,
        List.of(Way.down(Knob.LOSS), Way.down(Knob.GAP)),
        slowing.force(),
        pull.get().pull(),
        slowing.speed());
  }
}
