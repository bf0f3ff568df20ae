package lodeswing.analysis.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.analysis.check.ReleaseRegion.Found;
import lodeswing.analysis.check.ReleaseRegion.PlaceFunction;

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
    PlaceFunction energy = region.clear(model::magnetEnergy);
    Optional<Found> low = region.least(energy);
    Optional<Found> high = region.greatest(energy);
    Optional<double[]> edge = model.state(trial.spec().radius(), 0);
    if (low.isEmpty() || high.isEmpty() || edge.isEmpty()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOWHERE_TO_RELEASE, List.of());
    }
    double range = high.get().value() - low.get().value();
    double brought = model.weightEnergy(edge.get()[0], edge.get()[1]);
    return Judged.by(
        CheckLimits.CAPTURE,
        range / brought,
        Cause.ENERGY_AND_WEIGHT,
        List.of(Way.up(Knob.MASS), Way.up(Knob.GAP)),
        range,
        brought);
  }
}
