package lodeswing.analysis.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.analysis.check.ReleaseRegion.Found;
import lodeswing.core.motion.SupportLoad;

/** The most that the hook carries: weight, magnets and swing. */
record HookLoadLine() implements CheckLine {

  @Override
  public CheckCode code() {
    return CheckCode.HOOK_LOAD;
  }

  @Override
  public Judged judge(Trial trial) {
    RigModel model = trial.model();
    ReleaseRegion region = trial.region();
    SupportLoad load = model.bench().orElseThrow().supportLoad();
    Optional<Found> highest = region.greatest(region.clear(model::potential));
    if (highest.isEmpty()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOWHERE_TO_RELEASE, List.of());
    }
    double energy = highest.get().value();
    Found most =
        region
            .greatest(
                region.clear(
                    (q0, q1) ->
                        load.still(q0, q1)
                            + load.perJoule(q0) * Math.max(0, energy - model.potential(q0, q1))))
            .orElseThrow();
    OptionalDouble rated = trial.rig().around().hook().rated();
    if (rated.isEmpty()) {
      return Judged.unknown(
          OptionalDouble.of(most.value()),
          Cause.LOAD_WITHOUT_RATING,
          List.of("/hook/ratedLoadN"),
          trial.weight(),
          most.x(),
          most.y());
    }
    double allowed = rated.getAsDouble();
    return Judged.by(
        Band.atMost(CheckLimits.RATED_SHARE * allowed, allowed),
        most.value(),
        Cause.LOAD_AND_RATING,
        List.of(Way.up(Knob.HOOK_RATED)),
        trial.weight(),
        most.x(),
        most.y());
  }
}
