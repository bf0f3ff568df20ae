package lodeswing.core.rest;

import java.util.List;

/**
 * Says from when an outcome is certain: as soon as one well alone can still be reached.
 *
 * <p>Certain holds only in cells of the scan all of whose corners lie in one well below its pass,
 * and only below the pass by a margin: the error of the pass itself, and what the caller states for
 * the error of a table and the drift of an integrator. A well whose barrier is not above the margin
 * is never sealed. Immutable, safe for several threads; the methods allocate nothing.
 */
public final class SealRule {

  /** No well is certain yet. */
  public static final int NONE = -1;

  /** Share of a well's barrier below which a bob counts as settled. */
  private static final double SETTLED_SHARE = 0.01;

  private final SealMap map;
  private final double[] passEnergy;
  private final double[] sealEnergy;
  private final double[] settledEnergy;
  private final double highest;
  private final int onlyWell;

  SealRule(SealMap map, List<RestPoint> wells, double energyMargin) {
    this.map = map;
    int count = wells.size();
    passEnergy = new double[count];
    sealEnergy = new double[count];
    settledEnergy = new double[count];
    double most = Double.NEGATIVE_INFINITY;
    for (RestPoint w : wells) {
      RestPoint.Barrier barrier = w.barrier();
      passEnergy[w.index()] = barrier.passEnergy();
      double share = map.patched(w.index()) ? WellPatch.SHARE : 1;
      sealEnergy[w.index()] =
          w.potential() + share * barrier.height() - barrier.error() - energyMargin;
      settledEnergy[w.index()] = w.potential() + SETTLED_SHARE * barrier.height();
      most = Math.max(most, sealEnergy[w.index()]);
    }
    boolean alone = count == 1 && wells.get(0).barrier().beyond() instanceof Side.Nothing;
    onlyWell = alone ? 0 : NONE;
    highest = alone ? Double.POSITIVE_INFINITY : most;
  }

  /**
   * The one well that can still be reached, or {@link #NONE}.
   *
   * @param q0 place
   * @param q1 place
   * @param energy mechanical energy, kinetic and potential
   */
  public int sealedWell(double q0, double q1, double energy) {
    if (!(energy < highest)) {
      return NONE;
    }
    if (onlyWell >= 0) {
      return onlyWell;
    }
    int well = map.wellAt(q0, q1);
    return well >= 0 && energy < sealEnergy[well] ? well : NONE;
  }

  /** The highest energy at which any outcome can be certain; above it no look-up is needed. */
  public double highestSealEnergy() {
    return highest;
  }

  /** The energy of a well's lowest pass, without the margin. */
  public double passEnergy(int well) {
    return passEnergy[well];
  }

  /** The energy below which a bob in a well can no longer leave it, the margin taken off. */
  public double sealEnergy(int well) {
    return onlyWell >= 0 ? Double.POSITIVE_INFINITY : sealEnergy[well];
  }

  /** Whether a bob whose outcome is certain has settled: below a hundredth of the barrier. */
  public boolean settled(int well, double energy) {
    return energy < settledEnergy[well];
  }

  /** The energy below which a bob in a well counts as settled. */
  public double settledEnergy(int well) {
    return settledEnergy[well];
  }
}
