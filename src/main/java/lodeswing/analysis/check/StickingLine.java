package lodeswing.analysis.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.analysis.check.ReleaseRegion.Found;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.PlateForces;
import lodeswing.core.motion.Limit;
import lodeswing.core.rig.BenchLayout;

/**
 * Whether a bob that touches a magnet comes free: by its own weight where it can touch on its way,
 * by fingers where it was put there.
 */
record StickingLine() implements CheckLine {

  @Override
  public CheckCode code() {
    return CheckCode.STICKING;
  }

  /**
   * A touch.
   *
   * @param magnet its index
   * @param force that holds the bob [N]
   * @param distance of the facing faces [m]
   */
  private record Touch(int magnet, double force, double distance) {}

  @Override
  public Judged judge(Trial trial) {
    BenchLayout bench = trial.onBench();
    if (!trial.model().pulls()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOTHING_PULLS, Needs.magnets(trial));
    }
    Optional<Touch> worst = Optional.empty();
    boolean points = bench.bob().orElseThrow().magnet() instanceof Dipole;
    for (int i = 0; i < bench.magnets().size(); i++) {
      points |= bench.magnets().get(i).magnet() instanceof Dipole;
      Optional<Touch> touch = touch(bench, i);
      if (touch.isPresent() && (worst.isEmpty() || touch.get().force > worst.get().force)) {
        worst = touch;
      }
    }
    if (points) {
      return Judged.unknown(OptionalDouble.empty(), Cause.POINTS_DO_NOT_TOUCH, pointNeeds(bench));
    }
    Band free = Band.atMost(fingers(trial), CheckLimits.TOOL * fingers(trial));
    return worst
        .map(touch -> judge(trial, touch, free))
        .orElseGet(() -> Judged.by(free, 0, Cause.NOTHING_STICKS, List.of()));
  }

  private static List<String> pointNeeds(BenchLayout bench) {
    if (bench.bob().orElseThrow().magnet() instanceof Dipole) {
      return List.of("/bobMagnet/shape");
    }
    for (int i = 0; i < bench.magnets().size(); i++) {
      if (bench.magnets().get(i).magnet() instanceof Dipole) {
        return List.of("/magnets/" + i + "/shape");
      }
    }
    return List.of();
  }

  private static double fingers(Trial trial) {
    OptionalDouble youngest = trial.rig().around().youngest();
    return youngest.isPresent() && youngest.getAsDouble() < CheckLimits.CHILD
        ? CheckLimits.CHILDS_FINGERS
        : CheckLimits.FINGERS;
  }

  private Judged judge(Trial trial, Touch touch, Band free) {
    List<Way> ways = List.of(Way.down(Knob.BOB_HEIGHT), Way.up(Knob.GAP));
    if (!withinReach(trial, touch)) {
      return Judged.by(
          free, touch.force, Cause.FREED_BY_FINGERS, ways, touch.magnet, touch.distance);
    }
    OptionalDouble friction = trial.rig().around().plate().friction();
    if (friction.isEmpty()) {
      return Judged.unknown(
          OptionalDouble.of(touch.force),
          Cause.STICKS_WITHOUT_FRICTION,
          List.of("/plate/frictionCoefficient"),
          touch.magnet);
    }
    PlacedMagnet magnet = trial.onBench().magnets().get(touch.magnet);
    double back =
        trial
            .model()
            .state(magnet.centre().x(), magnet.centre().y())
            .map(q -> trial.model().weightPull(q[0], q[1]))
            .orElse(0.0);
    double frees = friction.getAsDouble() > 0 ? back / friction.getAsDouble() : 1e6;
    Band slides = Band.atMost(Math.min(free.good(), frees), frees);
    return Judged.by(slides, touch.force, Cause.FREED_BY_SWING, ways, touch.magnet, frees);
  }

  /** Whether the bob comes as near as the gap's error to what covers the magnet. */
  private static boolean withinReach(Trial trial, Touch touch) {
    PlacedMagnet magnet = trial.onBench().magnets().get(touch.magnet);
    boolean below = magnet.centre().z() + magnet.magnet().halfHeight() < 0;
    Limit.Kind kind = below ? Limit.Kind.PLATE_CONTACT : Limit.Kind.MAGNET_CONTACT;
    Optional<Found> least = trial.region().least((q0, q1) -> trial.model().margin(kind, q0, q1));
    return least.isPresent() && least.get().value() <= trial.gapError();
  }

  private static Optional<Touch> touch(BenchLayout bench, int index) {
    PlacedMagnet magnet = bench.magnets().get(index);
    BenchLayout.BobMagnet bob = bench.bob().orElseThrow();
    if (bob.poleDown() == magnet.poleUp()
        || bob.magnet() instanceof Dipole
        || magnet.magnet() instanceof Dipole) {
      return Optional.empty();
    }
    double top = magnet.centre().z() + magnet.magnet().halfHeight();
    double distance = Math.max(CheckLimits.PAINT, -top);
    Vec3 centre = magnet.centre();
    PlacedMagnet above =
        new PlacedMagnet(
            bob.magnet(),
            new Vec3(centre.x(), centre.y(), top + distance + bob.magnet().halfHeight()),
            magnet.turn(),
            bob.poleDown().opposite());
    double force = -PlateForces.between(above, magnet).z();
    return Optional.of(new Touch(index, force, distance));
  }
}
