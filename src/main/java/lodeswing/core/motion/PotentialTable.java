package lodeswing.core.motion;

/**
 * The potential energy of a rig over its two angles, weight and magnets, as a table, made once per
 * layout, so that a step costs the same for 3 magnets and for 200.
 *
 * <p>Errors of energy and of its slopes are measured when the table is made and stay below the
 * tolerances asked for; where no cell holds, and outside, the exact source answers, and the weight
 * alone where nothing matters. Immutable.
 */
public final class PotentialTable implements AngleEnergy {

  /** Where the first cell's coefficients begin. */
  public static final int FIRST_COEFFICIENT = CellTable.FIRST;

  /** Errors of the patches that cells are made from, as a share of the cells'. */
  private static final double FIT_SHARE = 0.1;

  private final RigPotential source;
  private final CellTable energy;
  private final double fitError;
  private final double fitSlopeError;

  private PotentialTable(Fitted fitted, CellTable energy) {
    this.source = fitted.source;
    this.energy = energy;
    this.fitError = fitted.patches.valueError();
    this.fitSlopeError = fitted.patches.slopeError();
  }

  /**
   * The magnets' costly energy fitted by large patches, as closely as the tables made of it ask.
   *
   * @param exact the exact potential, safe for several threads
   * @param reach greatest angle that is used [rad]
   * @param region where tables must hold
   * @param budget what the work is counted in, that of tables and of places without a cell too
   */
  public static Fitted fit(RigPotential exact, double reach, Region region, WorkBudget budget) {
    AngleEnergy magnets = exact.magnets();
    CellTable.Source asked =
        new CellTable.Source() {
          @Override
          public double value(double u, double v) {
            return magnets.value(u, v);
          }

          @Override
          public void slopes(double u, double v, double[] out) {
            magnets.gradient(u, v, out);
          }
        };
    return new Fitted(
        new RigPotential(
            exact.body(), exact.gravity(), new UntabulatedEnergy(magnets, region, budget)),
        new PatchedFunction(asked, reach, region, budget),
        reach,
        budget);
  }

  /** An energy fitted by large patches; not safe for several threads, its tables are. */
  public static final class Fitted {
    private final RigPotential source;
    private final PatchedFunction patches;
    private final double reach;
    private final WorkBudget budget;

    private Fitted(RigPotential source, PatchedFunction patches, double reach, WorkBudget budget) {
      this.source = source;
      this.patches = patches;
      this.reach = reach;
      this.budget = budget;
    }

    /**
     * Makes a table on all cores.
     *
     * @param energyTolerance greatest error of the energy that the cells add [J]; the patches add
     *     up to a tenth more
     * @param slopeTolerance greatest error of the energy's slopes that the cells add [J/rad],
     *     likewise
     * @throws WorkExceededException where the budget runs out
     */
    public PotentialTable table(double energyTolerance, double slopeTolerance) {
      patches.refine(FIT_SHARE * energyTolerance, FIT_SHARE * slopeTolerance);
      return new PotentialTable(
          this,
          CellTable.build(
              new Weighed(patches, source), reach, energyTolerance, slopeTolerance, budget));
    }
  }

  /** The fitted magnets' energy and the weight's. */
  private record Weighed(PatchedFunction patches, RigPotential rig) implements CellTable.Source {

    @Override
    public double value(double u, double v) {
      double[] out = new double[3];
      grid(new double[] {u}, new double[] {v}, false, out);
      return out[0];
    }

    @Override
    public void grid(double[] us, double[] vs, boolean slopes, double[] out) {
      patches.grid(us, vs, slopes, out);
      for (int i = 0; i < us.length; i++) {
        for (int j = 0; j < vs.length; j++) {
          rig.addWeight(us[i], vs[j], out, 3 * (i * vs.length + j));
        }
      }
    }

    @Override
    public boolean matters(double u, double v, double half) {
      return patches.matters(u, v, half);
    }
  }

  /** Greatest error of the energy: the patches' and what the cells add, doubled [J]. */
  public double energyError() {
    return fitError + energy.valueError();
  }

  /** Greatest error of a slope: the patches' and what the cells add, doubled [J/rad]. */
  public double slopeError() {
    return fitSlopeError + energy.slopeError();
  }

  /** About how much memory it holds. */
  public long bytes() {
    return energy.bytes();
  }

  /**
   * Share of a square about the middle where the exact source answers.
   *
   * @param half half the square's side [rad]
   */
  public double uncovered(double half) {
    return energy.directory().uncovered(half);
  }

  /** Leads to the cells. */
  public CellDirectory directory() {
    return energy.directory();
  }

  /**
   * Coefficients of all cells from {@link #FIRST_COEFFICIENT} on, 64 a cell, power of beta major;
   * the table's own array, not to be changed.
   */
  public double[] coefficients() {
    return energy.coefficients();
  }

  /** How many cells the table has. */
  public int cells() {
    return energy.cells();
  }

  /** Energy [J]. */
  @Override
  public double value(double beta, double alpha) {
    int entry = energy.find(beta, alpha);
    return entry < 0 ? source.value(beta, alpha) : energy.value(entry, beta, alpha);
  }

  @Override
  public void slopes(double beta, double alpha, double[] out) {
    int entry = energy.find(beta, alpha);
    if (entry < 0) {
      source.slopes(beta, alpha, out);
    } else {
      energy.slopes(entry, beta, alpha, out);
    }
  }

  @Override
  public void gradient(double beta, double alpha, double[] out) {
    int entry = energy.find(beta, alpha);
    if (entry < 0) {
      source.gradient(beta, alpha, out);
    } else {
      energy.gradient(entry, beta, alpha, out);
    }
  }

  @Override
  public void curvature(double beta, double alpha, double[] out) {
    int entry = energy.find(beta, alpha);
    if (entry < 0) {
      source.curvature(beta, alpha, out);
    } else {
      energy.curvature(entry, beta, alpha, out);
    }
  }
}
