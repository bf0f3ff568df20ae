package lodeswing.core.magnet;

import java.util.List;
import java.util.Optional;
import lodeswing.core.geometry.Vec3;

/**
 * Pull between two magnets on one axis, unlike poles facing, from the energy that the pendulum
 * uses.
 */
public final class AxialPull {

  private final BobEnergy energy;
  private final double facesTouch;

  /** The pair, the second magnet over the first. */
  public AxialPull(Magnet lower, Magnet upper) {
    Vec3 origin = new Vec3(0, 0, 0);
    PlacedMagnet placed = new PlacedMagnet(lower, origin, 0, Pole.NORTH);
    MagnetArray array = new MagnetArray(List.of(placed), Optional.empty());
    this.energy = BobEnergy.exact(upper, Pole.SOUTH, array);
    this.facesTouch = lower.halfHeight() + upper.halfHeight();
  }

  /**
   * Force that draws them together [N].
   *
   * @param gap between the facing faces [m], above 0; between the points themselves for dipoles
   */
  public double at(double gap) {
    if (!(gap > 0 && gap < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("gap must be positive and finite, was " + gap);
    }
    double[] pose = {0, 0, facesTouch + gap, 1, 0, 0, 0, -1, 0, 0, 0, -1};
    double[] work = new double[BobEnergy.WORK_LENGTH];
    energy.energyAndLoad(pose, work);
    return -work[2];
  }
}
