package lodeswing.analysis.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.analysis.check.ReleaseRegion.Found;

/**
 * Whether what hangs is heavy enough to swing over this plate and not be held by the first magnet.
 */
record WeightLine() implements CheckLine {

  @Override
  public CheckCode code() {
    return CheckCode.WEIGHT_FOR_THE_PLATE;
  }

  @Override
  public Judged judge(Trial trial) {
    RigModel model = trial.model();
    if (!model.pulls()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOTHING_PULLS, Needs.magnets(trial));
    }
    ReleaseRegion region = trial.region();
    Optional<Found> most = region.greatest(region.clear(model::pull));
    if (most.isEmpty()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOWHERE_TO_RELEASE, List.of());
    }
    Found found = most.get();
    return Judged.by(
        CheckLimits.PULL_ON_WEIGHT,
        found.value() / trial.weight(),
        Cause.PULL_AND_ALL_WEIGHT,
        List.of(Way.up(Knob.MASS), Way.up(Knob.GAP)),
        model.nearestMagnet(found.q0(), found.q1()),
        found.value(),
        trial.weight());
  }
}
