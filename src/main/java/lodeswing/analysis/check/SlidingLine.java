package lodeswing.analysis.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.CheckedRig.Plate;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.PlateForces;
import lodeswing.core.rig.BenchLayout;

/** Whether the magnets of the plate pull together or push apart. */
record SlidingLine() implements CheckLine {

  @Override
  public CheckCode code() {
    return CheckCode.MAGNETS_SLIDE;
  }

  @Override
  public Judged judge(Trial trial) {
    BenchLayout bench = trial.onBench();
    int count = bench.magnets().size();
    if (count < 2) {
      return count == 1
          ? Judged.by(CheckLimits.SLIDING, 0, Cause.NO_NEIGHBOURS, List.of())
          : Judged.unknown(OptionalDouble.empty(), Cause.NOTHING_PULLS, List.of("/magnets"));
    }
    Plate plate = trial.rig().around().plate();
    List<Vec3> forces = new ArrayList<>();
    PlateForces all = new PlateForces(bench.magnets(), bench.backing());
    int pushed = 0;
    for (int i = 0; i < count; i++) {
      trial.heard().accept((double) i / count);
      forces.add(all.on(i));
      pushed = aside(forces.get(i)) > aside(forces.get(pushed)) ? i : pushed;
    }
    double most = aside(forces.get(pushed));
    if (plate.fixed().orElse(false)) {
      return Judged.by(CheckLimits.SLIDING, 0, Cause.HELD_FAST, List.of(), pushed, most);
    }
    if (plate.friction().isEmpty()) {
      return Judged.unknown(
          OptionalDouble.empty(),
          Cause.HOLD_NOT_TOLD,
          List.of("/plate/fixing", "/plate/frictionCoefficient"),
          pushed,
          most);
    }
    Optional<Hold> worst = Optional.empty();
    double share = -1;
    double friction = plate.friction().getAsDouble();
    for (int i = 0; i < count; i++) {
      Optional<Hold> hold = Hold.of(trial, bench, i, forces.get(i));
      if (hold.isEmpty()) {
        return massNotTold(i);
      }
      double own = Hold.share(hold.get().aside(), friction * hold.get().down());
      if (own > share) {
        share = own;
        worst = hold;
      }
    }
    return judged(bench, worst.orElseThrow(), share, friction);
  }

  static Judged massNotTold(int magnet) {
    return Judged.unknown(
        OptionalDouble.empty(),
        Cause.MASS_NOT_TOLD,
        List.of("/magnets/" + magnet + "/massG"),
        magnet);
  }

  private static double aside(Vec3 force) {
    return Math.hypot(force.x(), force.y());
  }

  private static Judged judged(BenchLayout bench, Hold worst, double share, double friction) {
    int neighbour = neighbour(bench, worst.magnet());
    List<Way> ways = new ArrayList<>();
    if (friction * share / CheckLimits.SLIDING.good() <= CheckLimits.ROUGHEST) {
      ways.add(Way.up(Knob.FRICTION));
    }
    Vec3 away =
        bench.magnets().get(worst.magnet()).centre().minus(bench.magnets().get(neighbour).centre());
    boolean alongX = Math.abs(away.x()) >= Math.abs(away.y());
    double along = alongX ? away.x() : away.y();
    ways.add(new Way(alongX ? Knob.MAGNET_X : Knob.MAGNET_Y, worst.magnet(), along < 0 ? -1 : 1));
    ways.add(Way.word(Knob.FIXING, 0));
    return Judged.by(
        CheckLimits.SLIDING,
        share,
        Cause.HELD_BY_FRICTION,
        ways,
        worst.magnet(),
        worst.aside(),
        friction * worst.down(),
        neighbour);
  }

  private static int neighbour(BenchLayout bench, int magnet) {
    int most = magnet == 0 ? 1 : 0;
    double greatest = -1;
    PlacedMagnet own = bench.magnets().get(magnet);
    for (int i = 0; i < bench.magnets().size(); i++) {
      if (i != magnet) {
        double force = aside(PlateForces.between(own, bench.magnets().get(i)));
        if (force > greatest) {
          greatest = force;
          most = i;
        }
      }
    }
    return most;
  }
}
