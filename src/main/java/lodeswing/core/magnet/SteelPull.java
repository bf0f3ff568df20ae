package lodeswing.core.magnet;

import java.util.List;
import java.util.Optional;

/**
 * Pull of a magnet on a thick flat piece of steel before one of its faces: the force to its mirror
 * image, a magnet of the same size and strength as far behind the steel's surface.
 *
 * <p>Source: J. D. Jackson, Classical Electrodynamics, 3rd ed. (1999), section 5.12 (permeability
 * to infinity). Long magnets at contact approach Br^2 A/(2 mu0), Maxwell's pull of a field Br over
 * the face. Thin, painted or saturated steel pulls less.
 */
public final class SteelPull {

  private final BobEnergy energy;
  private final double half;

  /** The pull of a magnet whose face is parallel to the steel. */
  public SteelPull(Magnet magnet) {
    MagnetArray steel = new MagnetArray(List.of(), Optional.of(new SteelBacking(0)));
    this.energy = BobEnergy.exact(magnet, Pole.SOUTH, steel);
    this.half = magnet.halfHeight();
  }

  /**
   * Force that draws it to the steel [N].
   *
   * @param gap between face and steel [m], above 0; from a dipole's centre
   */
  public double at(double gap) {
    if (!(gap > 0 && gap < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("gap must be positive and finite, was " + gap);
    }
    double[] pose = {0, 0, half + gap, 1, 0, 0, 0, -1, 0, 0, 0, -1};
    double[] work = new double[BobEnergy.WORK_LENGTH];
    energy.energyAndLoad(pose, work);
    return -work[2];
  }
}
