package lodeswing.safety;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.magnet.BobEnergy;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.magnet.MagneticConstant;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.PlateForces;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * What the cautions for one bench rig are made of; each figure is computed when it is asked for.
 */
final class SafetyFacts {

  /** The swing by which the bob's speed is told [rad]. Common practice: a wide, usual release. */
  static final double USUAL_SWING = Math.toRadians(30);

  /** The swing by which the support's load is told [rad]: the widest that the model follows. */
  static final double WIDEST_SWING = Math.toRadians(60);

  /** A support is tried with so many times its load. Common practice. */
  static final double MARGIN = 5;

  /** So many of the plate's magnets, the hardest pressed by a rough look, are looked at closely. */
  private static final int CLOSER = 4;

  /** Far fewer magnets than this could never be told apart by the rough look. */
  private static final int MOST_UNDER_BOB = 12;

  private final SafetyRig rig;
  private final BenchLayout bench;
  private final List<KindFacts> kinds;
  private final Optional<Grip> grip;
  private final OptionalDouble jump;

  SafetyFacts(SafetyRig rig, BenchLayout bench) {
    this.rig = rig;
    this.bench = bench;
    List<MagnetKind> own = MagnetKind.of(bench);
    this.kinds = own.stream().map(KindFacts::of).toList();
    this.grip = Grip.of(own);
    this.jump = farthestJump();
  }

  SafetyRig rig() {
    return rig;
  }

  BenchLayout bench() {
    return bench;
  }

  List<KindFacts> kinds() {
    return kinds;
  }

  boolean hasMagnets() {
    return !kinds.isEmpty();
  }

  /** The kinds that have a size. */
  List<KindFacts> sized() {
    return kinds.stream().filter(kind -> kind.index().isPresent()).toList();
  }

  /** Of the kinds that are small parts, else of all, the one with the greatest index. */
  Optional<KindFacts> gravest() {
    boolean anySmall = sized().stream().anyMatch(KindFacts::smallPart);
    return sized().stream()
        .filter(kind -> kind.smallPart() || !anySmall)
        .max(Comparator.comparingDouble(kind -> kind.index().orElseThrow().value()));
  }

  /** How many magnets are small parts with an index over the limit. */
  int overFluxIndex() {
    return kinds.stream().filter(KindFacts::overFluxIndex).mapToInt(k -> k.kind().count()).sum();
  }

  int smallParts() {
    return kinds.stream().filter(KindFacts::smallPart).mapToInt(k -> k.kind().count()).sum();
  }

  int magnets() {
    return kinds.stream().mapToInt(k -> k.kind().count()).sum();
  }

  /** What the strongest magnets can do; empty where none has a size. */
  Optional<Grip> grip() {
    return grip;
  }

  /** The most that fingers can be pinched with [N]. */
  double pinch() {
    return grip.map(Grip::force).orElse(0.0);
  }

  /**
   * Greatest gap at which two of the strongest draw each other as strongly as the lighter one
   * weighs [m]; empty where no masses are known.
   */
  OptionalDouble jump() {
    return jump;
  }

  private OptionalDouble farthestJump() {
    return grip.stream()
        .flatMap(own -> own.pairs().stream())
        .flatMapToDouble(
            pair -> {
              OptionalDouble one = mass(pair.one());
              OptionalDouble other = mass(pair.other());
              return one.isPresent() && other.isPresent()
                  ? DoubleStream.of(
                      pair.pull()
                          .gapAt(
                              Math.min(one.getAsDouble(), other.getAsDouble()) * bench.gravity()))
                  : DoubleStream.empty();
            })
        .max();
  }

  private OptionalDouble mass(MagnetKind kind) {
    return kind.plate().isEmpty()
        ? rig.bobMagnetMass()
        : rig.plateMasses().get(kind.plate().get(0));
  }

  /** Farthest reach of a flux density by any one magnet [m]. */
  double reach(SafetyLimit density) {
    return kinds.stream().mapToDouble(kind -> kind.reach(density)).max().orElse(0);
  }

  /**
   * Farthest reach of a flux density by all together, counted from the nearest, however they lie
   * [m]; steel below the plate counts as its images.
   */
  double reachTogether(SafetyLimit density) {
    return FieldReach.of(shares(true), density.value());
  }

  private List<FieldReach.Share> shares(boolean withImages) {
    int images = withImages && bench.backing().isPresent() ? 2 : 1;
    return kinds.stream()
        .map(kind -> new FieldReach.Share(kind.kind().magnet(), images * kind.kind().count()))
        .toList();
  }

  /**
   * Flux density of all magnets in one package, their axes in line [T]: that of a dipole with all
   * their moments, on its axis.
   *
   * @param distance from the package [m]
   */
  double packed(double distance) {
    double moment =
        kinds.stream().mapToDouble(k -> k.kind().count() * k.kind().magnet().moment()).sum();
    return MagneticConstant.MU_0 * moment / (2 * Math.PI * Math.pow(distance, 3));
  }

  /** Energy that the bob has in the middle when it is let go at {@link #USUAL_SWING} [J]. */
  double swingEnergy() {
    TwoAxisBody body = bench.suspension().body();
    return bench.gravity() * body.firstMoment() * (1 - Math.cos(USUAL_SWING));
  }

  /** Speed of the bob magnet's middle then [m/s]. */
  double speed() {
    TwoAxisBody body = bench.suspension().body();
    return body.bobArm() * Math.sqrt(2 * swingEnergy() / body.swingInertia());
  }

  /** How far out the bob is then when it is let go [m]. */
  double reachOfSwing() {
    return bench.suspension().body().bobArm() * Math.sin(USUAL_SWING);
  }

  /** Height of the bob's lower face over the plate when it is let go [m]. */
  double highest() {
    return bench.gap() + bench.suspension().body().bobArm() * (1 - Math.cos(USUAL_SWING));
  }

  double weight() {
    return bench.suspension().body().mass() * bench.gravity();
  }

  /**
   * Most that pulls at the support [N]: weight and swing from {@link #WIDEST_SWING}, M g (3 - 2
   * cos) as of a mass on a cord, which a bar does not exceed, and the magnets' strongest pull on
   * the bob.
   */
  double load() {
    return weight() * (3 - 2 * Math.cos(WIDEST_SWING)) + lift();
  }

  /** Strongest pull of the plate's magnets down on the bob's, or up on one of them by it [N]. */
  double lift() {
    if (bench.bob().isEmpty() || bench.magnets().isEmpty()) {
      return 0;
    }
    BenchLayout.BobMagnet bob = bench.bob().get();
    BobEnergy energy =
        BobEnergy.exact(
            bob.magnet(), bob.poleDown(), new MagnetArray(bench.magnets(), bench.backing()));
    double[] work = new double[BobEnergy.WORK_LENGTH];
    double most = 0;
    for (int i : strongest()) {
      Vec3 place = bench.magnets().get(i).centre();
      double[] pose = {place.x(), place.y(), bench.bobCentreHeight(), 1, 0, 0, 0, -1, 0, 0, 0, -1};
      energy.energyAndLoad(pose, work);
      most = Math.max(most, Math.abs(work[2]));
    }
    return most;
  }

  private List<Integer> strongest() {
    return IntStream.range(0, bench.magnets().size())
        .boxed()
        .sorted(
            Comparator.comparingDouble(
                i -> {
                  PlacedMagnet own = bench.magnets().get(i);
                  double apart = Math.abs(bench.bobCentreHeight() - own.centre().z());
                  return -own.magnet().moment() / Math.pow(apart, 4);
                }))
        .limit(MOST_UNDER_BOB)
        .toList();
  }

  /**
   * Strongest force along the plate on one of its magnets by the others [N]; empty where there are
   * no two.
   */
  OptionalDouble sideways() {
    int count = bench.magnets().size();
    if (count < 2) {
      return OptionalDouble.empty();
    }
    PlateForces forces = new PlateForces(bench.magnets(), bench.backing());
    return IntStream.range(0, count)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -roughly(i)))
        .limit(CLOSER)
        .mapToDouble(
            i -> {
              Vec3 force = forces.on(i);
              return Math.hypot(force.x(), force.y());
            })
        .max();
  }

  /** Force along the plate if all were dipoles, side by side: 3 mu0 m m' / (4 pi r^4). */
  private double roughly(int index) {
    PlacedMagnet own = bench.magnets().get(index);
    double x = 0;
    double y = 0;
    for (PlacedMagnet other : bench.magnets()) {
      double dx = own.centre().x() - other.centre().x();
      double dy = own.centre().y() - other.centre().y();
      double apart = Math.hypot(dx, dy);
      if (apart > 0) {
        double sign = own.poleUp() == other.poleUp() ? 1 : -1;
        double strength = sign * other.magnet().moment() / Math.pow(apart, 5);
        x += strength * dx;
        y += strength * dy;
      }
    }
    return own.magnet().moment() * Math.hypot(x, y);
  }

  /**
   * Figures of magnets that are alike.
   *
   * @param kind which
   * @param index flux index; empty for dipoles
   * @param smallPart whether it fits into the gauge for small parts
   */
  record KindFacts(MagnetKind kind, Optional<FluxIndex> index, boolean smallPart) {

    static KindFacts of(MagnetKind kind) {
      return new KindFacts(
          kind, FluxIndex.of(kind.magnet()), SmallPartsCylinder.holds(kind.magnet()));
    }

    boolean overFluxIndex() {
      return smallPart
          && index.isPresent()
          && SafetyLimit.FLUX_INDEX.reachedBy(index.get().value());
    }

    double reach(SafetyLimit density) {
      return FieldReach.of(kind.magnet(), density.value());
    }

    /** Its pull on its like at contact, which is that on thick steel [N]; empty for dipoles. */
    OptionalDouble pinch() {
      return index.isPresent()
          ? OptionalDouble.of(ContactPull.ofLike(kind.magnet()))
          : OptionalDouble.empty();
    }
  }
}
