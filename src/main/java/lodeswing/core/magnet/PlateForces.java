package lodeswing.core.magnet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.core.geometry.Vec3;

/**
 * Forces on the magnets of a plate, by the same charged faces that the bob's energy is made of: by
 * the other magnets, by steel below, and by the bob's magnet above.
 *
 * <p>Source: as {@link BobEnergy}. Immutable.
 */
public final class PlateForces {

  /** Paint, plating and unevenness keep a magnet this far from steel it lies on [m]. */
  public static final double LIFTED = 1e-4;

  private final List<PlacedMagnet> magnets;
  private final Optional<SteelBacking> steel;

  /** The forces on a plate. */
  public PlateForces(List<PlacedMagnet> magnets, Optional<SteelBacking> backing) {
    this.magnets = List.copyOf(magnets);
    double lowest =
        magnets.stream().mapToDouble(m -> m.centre().z() - m.magnet().halfHeight()).min().orElse(0);
    this.steel = backing.map(own -> new SteelBacking(Math.min(own.top(), lowest - LIFTED)));
  }

  /**
   * Force on a magnet by all others, by steel and by its image in the steel [N].
   *
   * @param index of the magnet
   */
  public Vec3 on(int index) {
    List<PlacedMagnet> others = new ArrayList<>(magnets);
    PlacedMagnet own = others.remove(index);
    return force(own, new MagnetArray(others, steel));
  }

  /** Force on one magnet by another one [N]. */
  public static Vec3 between(PlacedMagnet on, PlacedMagnet by) {
    return force(on, new MagnetArray(List.of(by), Optional.empty()));
  }

  private static Vec3 force(PlacedMagnet on, MagnetArray by) {
    BobEnergy energy = BobEnergy.exact(on.magnet(), on.poleUp().opposite(), by);
    double cos = Math.cos(on.turn());
    double sin = Math.sin(on.turn());
    Vec3 c = on.centre();
    double[] pose = {c.x(), c.y(), c.z(), cos, sin, 0, -sin, cos, 0, 0, 0, -1};
    double[] work = new double[BobEnergy.WORK_LENGTH];
    energy.energyAndLoad(pose, work);
    return new Vec3(work[0], work[1], work[2]);
  }
}
