package lodeswing.core.motion;

/**
 * The magnets' force along the support's pull as a table over the two angles.
 *
 * <p>It needs no more than a share of the weight as its accuracy: it decides when a support goes
 * slack, not how the bob moves. Immutable; allocates nothing.
 */
public final class PullTable implements AxialForce {

  /** Error of the patches that the cells are made from, as a share of the cells'. */
  private static final double PATCH_SHARE = 0.1;

  private final AxialForce source;
  private final CellTable force;
  private final Region region;
  private final WorkBudget budget;

  private PullTable(AxialForce source, CellTable force, Region region, WorkBudget budget) {
    this.source = source;
    this.region = region;
    this.force = force;
    this.budget = budget;
  }

  /**
   * Makes the table on all cores.
   *
   * @param source the exact force, safe for several threads
   * @param reach greatest angle that is used [rad]
   * @param tolerance greatest error [N]
   * @param region where it must hold
   * @param budget what the work is counted in
   * @throws WorkExceededException where the budget runs out
   */
  public static PullTable build(
      AxialForce source, double reach, double tolerance, Region region, WorkBudget budget) {
    WorkBudget counted = budget.ofSlopes();
    PatchedFunction patches = new PatchedFunction(source::along, reach, region, counted);
    patches.refine(PATCH_SHARE * tolerance, Double.POSITIVE_INFINITY);
    CellTable table = CellTable.build(patches, reach, tolerance, Double.POSITIVE_INFINITY, counted);
    return new PullTable(source, table, region, counted);
  }

  /** About how much memory it holds. */
  public long bytes() {
    return force.bytes();
  }

  @Override
  public double along(double beta, double alpha) {
    int entry = force.find(beta, alpha);
    if (entry < 0 && !region.matters(beta, alpha, 0)) {
      return 0;
    }
    if (entry < 0) {
      budget.spendAt(beta, alpha, 1);
      return source.along(beta, alpha);
    }
    return force.value(entry, beta, alpha);
  }
}
