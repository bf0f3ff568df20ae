package lodeswing.analysis.check;

import java.util.List;
import java.util.Optional;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.FreeMotion;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.motion.TextbookMotion;
import lodeswing.core.rest.ScanRegion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.Release;
import lodeswing.core.rig.TextbookLayout;

/**
 * The forces of a rig by its exact energies, without a table of them. Coordinates are those of its
 * {@link Motion}.
 */
final class RigModel {

  private final Layout layout;
  private final Motion motion;
  private final Motion free;
  private final ScanRegion detail;

  RigModel(Layout layout, Energies energies) {
    this.layout = layout;
    this.motion =
        layout instanceof BenchLayout bench
            ? energies.motion(bench)
            : new TextbookMotion((TextbookLayout) layout);
    this.free = FreeMotion.of(layout);
    this.detail = ScanRegion.of(layout);
  }

  Motion motion() {
    return motion;
  }

  /** The motion on the bench. */
  Optional<BenchMotion> bench() {
    return motion instanceof BenchMotion own ? Optional.of(own) : Optional.empty();
  }

  /** The magnets in plan, with the distance within which a rest point is theirs. */
  List<ScanRegion.MagnetPlace> magnets() {
    return detail.magnets();
  }

  /** Shortest length of the potential's detail [plan unit]. */
  double detail() {
    return detail.lengthScale();
  }

  /** Whether a magnet pushes the bob away. */
  boolean repels(int magnet) {
    return !detail.magnets().get(magnet).attracts();
  }

  /** Whether any force beside the weight acts on the bob. */
  boolean pulls() {
    return layout.magnetCount() > 0
        && (!(layout instanceof BenchLayout bench) || bench.bob().isPresent());
  }

  /** The coordinates of a place, where it can be reached. */
  Optional<double[]> state(double x, double y) {
    return motion.toState(new Release(x, y, 0, 0));
  }

  /** The plan place of coordinates. */
  double[] plan(double q0, double q1) {
    double[] plan = new double[4];
    motion.toPlan(new double[] {q0, q1, 0, 0}, plan);
    return plan;
  }

  /** Plan distance per unit of a coordinate. */
  double arm(int coordinate, double q0) {
    if (layout instanceof BenchLayout rig) {
      var body = rig.suspension().body();
      return coordinate == 0
          ? body.bobArm()
          : body.axisOffset() + body.bobArm() * StrictMath.cos(q0);
    }
    return 1;
  }

  /** Potential energy of weight and magnets. */
  double potential(double q0, double q1) {
    return motion.potential(q0, q1);
  }

  /** Potential energy of the magnets alone. */
  double magnetEnergy(double q0, double q1) {
    return motion.potential(q0, q1) - free.potential(q0, q1);
  }

  /** Potential energy of the weight alone, 0 where the bob hangs. */
  double weightEnergy(double q0, double q1) {
    return free.potential(q0, q1) - free.potential(0, 0);
  }

  /** Sideways pull of the magnets on the bob [N on the bench]. */
  double pull(double q0, double q1) {
    double[] all = slopes(motion, q0, q1);
    double[] weight = slopes(free, q0, q1);
    return Math.hypot((all[1] - weight[1]) / arm(0, q0), (all[2] - weight[2]) / arm(1, q0));
  }

  /** Sideways pull of the weight, towards the middle [N on the bench]. */
  double weightPull(double q0, double q1) {
    double[] weight = slopes(free, q0, q1);
    return Math.hypot(weight[1] / arm(0, q0), weight[2] / arm(1, q0));
  }

  private static double[] slopes(Motion of, double q0, double q1) {
    double[] out = new double[6];
    if (of instanceof BenchMotion bench) {
      bench.potentialEnergy().slopes(q0, q1, out);
    } else {
      of.potentialDerivatives(q0, q1, out);
    }
    return out;
  }

  /**
   * Force of the losses on a bob that passes the middle after a release at rest.
   *
   * @param from the release's coordinates
   */
  Slowing slowing(double[] from) {
    double[] inertia = new double[2];
    motion.inertia(0, 0, inertia);
    double rate = Math.sqrt(2 * weightEnergy(from[0], from[1]) / inertia[0]);
    double speed = arm(0, 0) * rate;
    return new Slowing(speed > 0 ? -motion.power(0, 0, rate, 0) / speed : 0, speed);
  }

  /**
   * What slows a bob.
   *
   * @param force [N on the bench]
   * @param speed at which it does [m/s]
   */
  record Slowing(double force, double speed) {}

  /** Least margin of a border at a place, whatever the speed; infinite where there is none. */
  double margin(Limit.Kind kind, double q0, double q1) {
    double least = Double.POSITIVE_INFINITY;
    for (Limit limit : motion.limits()) {
      if (limit.kind() == kind) {
        least = Math.min(least, limit.leastMargin(q0, q1));
      }
    }
    return least;
  }

  /** Room of the bob to plate and magnets [m]; infinite in a textbook layout. */
  double room(double q0, double q1) {
    return Math.min(
        margin(Limit.Kind.PLATE_CONTACT, q0, q1), margin(Limit.Kind.MAGNET_CONTACT, q0, q1));
  }

  /** What the bob is nearest to: a magnet's index, -1 for the plate. */
  int nearest(double q0, double q1) {
    return margin(Limit.Kind.PLATE_CONTACT, q0, q1) <= margin(Limit.Kind.MAGNET_CONTACT, q0, q1)
        ? -1
        : nearestMagnet(q0, q1);
  }

  /** The magnet that is nearest in plan; -1 where there is none. */
  int nearestMagnet(double q0, double q1) {
    double[] plan = plan(q0, q1);
    int nearest = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < magnets().size(); i++) {
      double distance = Math.hypot(magnets().get(i).x() - plan[0], magnets().get(i).y() - plan[1]);
      if (distance < least) {
        least = distance;
        nearest = i;
      }
    }
    return nearest;
  }

  /** The magnet that a place belongs to; -1 for none. */
  int owner(double q0, double q1) {
    int nearest = nearestMagnet(q0, q1);
    if (nearest < 0) {
      return -1;
    }
    double[] plan = plan(q0, q1);
    ScanRegion.MagnetPlace place = magnets().get(nearest);
    return Math.hypot(place.x() - plan[0], place.y() - plan[1]) <= place.radius() ? nearest : -1;
  }
}
