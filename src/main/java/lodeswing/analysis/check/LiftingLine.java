package lodeswing.analysis.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.CheckedRig.Plate;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.PlateForces;
import lodeswing.core.rig.BenchLayout;

/** Whether the passing bob lifts a magnet off the plate. */
record LiftingLine() implements CheckLine {

  @Override
  public CheckCode code() {
    return CheckCode.MAGNETS_LIFT;
  }

  @Override
  public Judged judge(Trial trial) {
    BenchLayout bench = trial.onBench();
    if (!trial.model().pulls()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOTHING_PULLS, Needs.magnets(trial));
    }
    int count = bench.magnets().size();
    double[] lifts = new double[count];
    int strongest = 0;
    for (int i = 0; i < count; i++) {
      lifts[i] = lift(trial, bench, bench.magnets().get(i));
      strongest = lifts[i] > lifts[strongest] ? i : strongest;
    }
    if (lifts[strongest] <= 0) {
      return Judged.by(CheckLimits.LIFTING, 0, Cause.NOTHING_LIFTS, List.of());
    }
    Plate plate = trial.rig().around().plate();
    if (plate.fixed().orElse(false)) {
      return Judged.by(
          CheckLimits.LIFTING, 0, Cause.HELD_FAST, List.of(), strongest, lifts[strongest]);
    }
    if (plate.fixed().isEmpty() && plate.friction().isEmpty()) {
      return Judged.unknown(
          OptionalDouble.empty(),
          Cause.HOLD_NOT_TOLD,
          List.of("/plate/fixing"),
          strongest,
          lifts[strongest]);
    }
    PlateForces all = new PlateForces(bench.magnets(), bench.backing());
    double share = -1;
    double down = 0;
    int worst = 0;
    for (int i = 0; i < count; i++) {
      trial.heard().accept((double) i / count);
      Optional<Hold> hold = Hold.of(trial, bench, i, all.on(i));
      if (hold.isEmpty()) {
        return SlidingLine.massNotTold(i);
      }
      double own = Hold.share(Math.max(0, lifts[i]), hold.get().down());
      if (own > share) {
        share = own;
        down = hold.get().down();
        worst = i;
      }
    }
    return Judged.by(
        CheckLimits.LIFTING,
        share,
        Cause.LIFTED_BY_BOB,
        List.of(Way.up(Knob.GAP), Way.word(Knob.FIXING, 0)),
        worst,
        lifts[worst],
        down);
  }

  /** Upward force of the bob on a magnet that it passes straight above [N]. */
  private static double lift(Trial trial, BenchLayout bench, PlacedMagnet magnet) {
    Vec3 centre = magnet.centre();
    BenchLayout.BobMagnet bob = bench.bob().orElseThrow();
    return trial
        .model()
        .state(centre.x(), centre.y())
        .map(
            q -> {
              Vec3 at = new Vec3(centre.x(), centre.y(), bench.bobHeight(q[0], q[1]));
              PlacedMagnet above = new PlacedMagnet(bob.magnet(), at, 0, bob.poleDown().opposite());
              return -PlateForces.between(above, magnet).z();
            })
        .orElse(0.0);
  }
}
