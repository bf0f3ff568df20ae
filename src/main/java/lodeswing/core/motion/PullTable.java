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

  private PullTable(AxialForce source, CellTable force) {
    this.source = source;
    this.force = force;
  }

  /**
   * Makes the table on all cores.
   *
   * @param source the exact force, safe for several threads
   * @param reach greatest angle that is used [rad]
   * @param tolerance greatest error [N]
   */
  public static PullTable build(AxialForce source, double reach, double tolerance) {
    PatchedFunction patches =
        PatchedFunction.of(source::along, reach, PATCH_SHARE * tolerance, Double.POSITIVE_INFINITY);
    return new PullTable(
        source, CellTable.build(patches, reach, tolerance, Double.POSITIVE_INFINITY));
  }

  @Override
  public double along(double beta, double alpha) {
    int cell = force.find(beta, alpha);
    return cell < 0 ? source.along(beta, alpha) : force.value(cell, beta, alpha);
  }
}
