package lodeswing.analysis.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.analysis.check.ReleaseRegion.Found;

/** Room of the bob to plate and magnets, hanging or on its way from anywhere. */
record RoomLine(CheckCode code) implements CheckLine {

  @Override
  public Judged judge(Trial trial) {
    RigModel model = trial.model();
    double error = trial.gapError();
    Band band = Band.atLeast(CheckLimits.CLEARANCE + error, CheckLimits.LEAST_CLEARANCE + error);
    List<Way> ways = List.of(Way.up(Knob.GAP));
    if (code == CheckCode.CLEARANCE_AT_REST) {
      return Judged.by(
          band, model.room(0, 0), Cause.ROOM_AT_REST, ways, model.nearest(0, 0), error);
    }
    Optional<Found> least = trial.region().least(model::room);
    if (least.isEmpty()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOWHERE_TO_RELEASE, List.of());
    }
    Found found = least.get();
    double nearest = model.nearest(found.q0(), found.q1());
    return Judged.by(
        band, found.value(), Cause.ROOM_ON_THE_WAY, ways, nearest, error, found.x(), found.y());
  }
}
