package lodeswing.analysis.check;

import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.rig.BenchLayout;

/**
 * What is done to a magnet of the plate and what holds it.
 *
 * @param magnet its index
 * @param aside force along the plate [N]
 * @param down force that presses it on the plate: weight, steel, other magnets [N]
 */
record Hold(int magnet, double aside, double down) {

  /** Of one magnet; empty where its mass is not known. */
  static Optional<Hold> of(Trial trial, BenchLayout bench, int magnet, Vec3 force) {
    OptionalDouble mass = trial.rig().masses().get(magnet);
    return mass.isPresent()
        ? Optional.of(
            new Hold(
                magnet,
                Math.hypot(force.x(), force.y()),
                mass.getAsDouble() * bench.gravity() - force.z()))
        : Optional.empty();
  }

  /** A force as a share of what is left to hold; a thousand where nothing is. */
  static double share(double force, double hold) {
    return hold > 0 ? Math.min(1000, force / hold) : force > 0 ? 1000 : 0;
  }
}
