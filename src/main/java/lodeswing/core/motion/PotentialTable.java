package lodeswing.core.motion;

/**
 * The energy of the bob magnet over the two angles as a table, made once per layout, so that a step
 * costs the same for 3 magnets and for 200.
 *
 * <p>Errors of energy and of its slopes are measured when the table is made and stay below the
 * tolerances asked for; where no cell holds, and outside, the exact source answers. Immutable.
 */
public final class PotentialTable implements AngleEnergy {

  /** Slopes that the exact second derivatives take. */
  private static final int CURVATURE = 9;

  private final AngleEnergy source;
  private final Fitted fitted;
  private final CellTable energy;

  private PotentialTable(Fitted fitted, CellTable energy) {
    this.source = fitted.source;
    this.fitted = fitted;
    this.energy = energy;
  }

  /**
   * The costly energy fitted once, for tables of any accuracy down to its own.
   *
   * @param source the exact energy, safe for several threads
   * @param reach greatest angle that is used [rad]
   * @param energyTolerance greatest error of the energy [J]
   * @param slopeTolerance greatest error of the energy's slopes [J/rad]
   * @param budget what the work is counted in, that of tables and of places without a cell too
   * @throws WorkExceededException where the budget runs out
   */
  public static Fitted fit(
      AngleEnergy source,
      double reach,
      double energyTolerance,
      double slopeTolerance,
      WorkBudget budget) {
    CellTable.Source asked =
        new CellTable.Source() {
          @Override
          public double value(double u, double v) {
            return source.value(u, v);
          }

          @Override
          public void slopes(double u, double v, double[] out) {
            source.gradient(u, v, out);
          }
        };
    return new Fitted(
        source,
        PatchedFunction.of(asked, reach, energyTolerance, slopeTolerance, budget),
        reach,
        energyTolerance,
        slopeTolerance,
        budget);
  }

  /** An energy fitted once by large patches. */
  public static final class Fitted {
    private final AngleEnergy source;
    private final PatchedFunction patches;
    private final double reach;
    private final double energyError;
    private final double slopeError;
    private final WorkBudget budget;

    private Fitted(
        AngleEnergy source,
        PatchedFunction patches,
        double reach,
        double energyError,
        double slopeError,
        WorkBudget budget) {
      this.source = source;
      this.patches = patches;
      this.reach = reach;
      this.energyError = energyError;
      this.slopeError = slopeError;
      this.budget = budget;
    }

    /**
     * Makes a table on all cores.
     *
     * @param energyTolerance greatest error of the energy that the cells add [J]
     * @param slopeTolerance greatest error of the energy's slopes that the cells add [J/rad]
     */
    public PotentialTable table(double energyTolerance, double slopeTolerance) {
      return new PotentialTable(
          this, CellTable.build(patches, reach, energyTolerance, slopeTolerance, budget));
    }
  }

  /** Greatest error of the energy: the patches' and what the cells add, doubled [J]. */
  public double energyError() {
    return fitted.energyError + energy.valueError();
  }

  /** Greatest error of a slope: the patches' and what the cells add, doubled [J/rad]. */
  public double slopeError() {
    return fitted.slopeError + energy.slopeError();
  }

  /** About how much memory it holds. */
  public long bytes() {
    return fitted.patches.bytes() + energy.bytes();
  }

  /** The cell of a place, or -1 where only the exact source answers. */
  public int cell(double beta, double alpha) {
    return energy.find(beta, alpha);
  }

  /**
   * Coefficients of all cells, 64 a cell, power of beta major; the table's own array, not to be
   * changed.
   */
  public double[] coefficients() {
    return energy.coefficients();
  }

  /**
   * Middle of each cell and one over half its width: three numbers a cell; the table's own array,
   * not to be changed.
   */
  public double[] frames() {
    return energy.frames();
  }

  /** What answers where no cell does. */
  public AngleEnergy source() {
    return source;
  }

  /** How many cells the table has. */
  public int cells() {
    return energy.cells();
  }

  /** Energy [J]. */
  @Override
  public double value(double beta, double alpha) {
    int cell = energy.find(beta, alpha);
    if (cell < 0) {
      fitted.budget.spendAt(beta, alpha, 1);
      return source.value(beta, alpha);
    }
    return energy.value(cell, beta, alpha);
  }

  @Override
  public void gradient(double beta, double alpha, double[] out) {
    int cell = energy.find(beta, alpha);
    if (cell < 0) {
      fitted.budget.spendAt(beta, alpha, WorkBudget.SLOPES);
      source.gradient(beta, alpha, out);
    } else {
      energy.gradient(cell, beta, alpha, out);
    }
  }

  @Override
  public void curvature(double beta, double alpha, double[] out) {
    int cell = energy.find(beta, alpha);
    if (cell < 0) {
      fitted.budget.spendAt(beta, alpha, CURVATURE * WorkBudget.SLOPES);
      source.curvature(beta, alpha, out);
    } else {
      energy.curvature(cell, beta, alpha, out);
    }
  }
}
