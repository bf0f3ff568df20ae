package lodeswing.analysis.occupancy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import lodeswing.core.statistics.Estimate;
import lodeswing.core.statistics.Jackknife;
import org.apache.commons.math3.stat.correlation.SpearmansCorrelation;

/**
 * What was counted, and the figures that follow.
 *
 * <p>The correlation is Spearman's, by ranks over the cells of the release disc (C. Spearman, Am.
 * J. Psychol. 15 (1904) 72), since strength and time are far from normal. Neighbouring cells depend
 * on each other, so that intervals come from leaving out each lot of releases in turn, not from the
 * number of cells.
 */
public final class OccupancyResult {

  private final CellGrid grid;
  private final double[] strengths;
  private final boolean[] overMagnets;
  private final int[] cells;
  private final int[] byStrength;
  private final List<LotCount> among;
  private final List<LotCount> free;

  OccupancyResult(
      CellGrid grid,
      double[] strengths,
      boolean[] overMagnets,
      List<LotCount> among,
      List<LotCount> free,
      OccupancySpec spec) {
    this.grid = grid;
    this.strengths = strengths;
    this.overMagnets = overMagnets;
    this.among = among;
    this.free = free;
    this.cells = cellsOf(grid, strengths, spec.radius());
    this.byStrength =
        IntStream.range(0, strengths.length)
            .filter(cell -> Double.isFinite(strengths[cell]))
            .boxed()
            .sorted(Comparator.comparingDouble(cell -> strengths[cell]))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  private static int[] cellsOf(CellGrid grid, double[] strengths, double radius) {
    List<Integer> within = new ArrayList<>();
    for (int cell = 0; cell < grid.count(); cell++) {
      boolean inside = Math.hypot(grid.x(cell), grid.y(cell)) <= radius;
      if (inside && Double.isFinite(strengths[cell])) {
        within.add(cell);
      }
    }
    return within.stream().mapToInt(Integer::intValue).toArray();
  }

  /** The cells. */
  public CellGrid grid() {
    return grid;
  }

  /** The field's strength at each cell's middle, a new array; NaN where the bob cannot hang. */
  public double[] strengths() {
    return strengths.clone();
  }

  /** The share of the time that the bobs spend in each cell, a new array. */
  public double[] shares() {
    return new Counted(among, -1).shares();
  }

  /** The same without the magnets. */
  public double[] freeShares() {
    return new Counted(free, -1).shares();
  }

  /** Releases that could not begin, with the magnets. */
  public int notReleased() {
    return among.stream().mapToInt(LotCount::notReleased).sum();
  }

  /** Releases that met a limit of the model before their time, with the magnets. */
  public int endedEarly() {
    return among.stream().mapToInt(LotCount::endedEarly).sum();
  }

  /** Share of the time beside the grid. */
  public double elsewhere() {
    return new Counted(among, -1).elsewhere();
  }

  /** Whether there is a field and time to be held against each other. */
  public boolean comparable() {
    return cells.length > 2
        && new Counted(among, -1).total > 0
        && Arrays.stream(cells).mapToDouble(cell -> strengths[cell]).max().orElse(0) > 0;
  }

  /** Rank correlation of time and strength over the release disc; empty where there is no field. */
  public Optional<Estimate> correlation() {
    return correlated(pair -> ranked(pair.among.shares()));
  }

  /** The same without the magnets: what the mere swing would show. */
  public Optional<Estimate> freeCorrelation() {
    return correlated(pair -> ranked(pair.free.shares()));
  }

  /**
   * What the magnets do to the strength that the bob meets: the chance that at a moment among them
   * it is in a stronger field than at a moment without them, less the chance that it is in a weaker
   * one. The rank-biserial correlation (E. E. Cureton, Psychometrika 21 (1956) 287; from memory):
   * above 0 where they draw it to the strong zones, below 0 where they drive it to the weak ones.
   */
  public Optional<Estimate> change() {
    return correlated(pair -> stronger(pair.among.shares(), pair.free.shares()));
  }

  /** By cells in order of strength; halves of what is alike cancel. */
  private double stronger(double[] with, double[] without) {
    double below = 0;
    double all = 0;
    double time = 0;
    for (int cell : byStrength) {
      all += without[cell];
      time += with[cell];
    }
    double sum = 0;
    for (int cell : byStrength) {
      double above = all - below - without[cell];
      sum += with[cell] * (below - above);
      below += without[cell];
    }
    return all > 0 && time > 0 ? sum / all / time : 0;
  }

  private Optional<Estimate> correlated(ToDoubleFunction<Pair> figure) {
    return comparable() ? Optional.of(estimate(figure).within(-1, 1)) : Optional.empty();
  }

  /** The strength that a bob meets on the average over its time in the grid. */
  public Estimate meanStrength() {
    return estimate(pair -> mean(pair.among));
  }

  /** The same without the magnets' pull, of the field that they would have there. */
  public Estimate freeMeanStrength() {
    return estimate(pair -> mean(pair.free));
  }

  /** The share of its time that a bob is over a magnet. */
  public Estimate overMagnets() {
    return estimate(pair -> over(pair.among)).within(0, 1);
  }

  /** The same without the magnets' pull. */
  public Estimate freeOverMagnets() {
    return estimate(pair -> over(pair.free)).within(0, 1);
  }

  private Estimate estimate(ToDoubleFunction<Pair> figure) {
    double[] without = new double[OccupancySpec.LOTS];
    for (int lot = 0; lot < without.length; lot++) {
      without[lot] = figure.applyAsDouble(new Pair(lot));
    }
    return Jackknife.estimate(figure.applyAsDouble(new Pair(-1)), without);
  }

  private double ranked(double[] values) {
    double[] a = new double[cells.length];
    double[] b = new double[cells.length];
    for (int k = 0; k < cells.length; k++) {
      a[k] = values[cells[k]];
      b[k] = strengths[cells[k]];
    }
    double found = new SpearmansCorrelation().correlation(a, b);
    // Where all is alike there is nothing that goes together.
    return Double.isNaN(found) ? 0 : found;
  }

  private double mean(Counted counted) {
    double sum = 0;
    double time = 0;
    double[] shares = counted.shares();
    for (int cell = 0; cell < shares.length; cell++) {
      if (Double.isFinite(strengths[cell])) {
        sum += shares[cell] * strengths[cell];
        time += shares[cell];
      }
    }
    return time > 0 ? sum / time : 0;
  }

  private double over(Counted counted) {
    double sum = 0;
    double[] shares = counted.shares();
    for (int cell = 0; cell < shares.length; cell++) {
      sum += overMagnets[cell] ? shares[cell] : 0;
    }
    return sum;
  }

  /** Both counts without one lot; -1 for none. */
  private final class Pair {

    private final Counted among;
    private final Counted free;

    Pair(int without) {
      this.among = new Counted(OccupancyResult.this.among, without);
      this.free = new Counted(OccupancyResult.this.free, without);
    }
  }

  /** Sums of all lots but one. */
  private static final class Counted {

    private final long[] sums;
    private final long total;

    Counted(List<LotCount> lots, int without) {
      sums = new long[lots.get(0).cells()];
      long all = 0;
      for (int lot = 0; lot < lots.size(); lot++) {
        if (lot != without) {
          all += lots.get(lot).total();
          for (int cell = 0; cell < sums.length; cell++) {
            sums[cell] += lots.get(lot).at(cell);
          }
        }
      }
      total = all;
    }

    double[] shares() {
      double[] shares = new double[sums.length];
      for (int cell = 0; total > 0 && cell < sums.length; cell++) {
        shares[cell] = (double) sums[cell] / total;
      }
      return shares;
    }

    double elsewhere() {
      long inside = Arrays.stream(sums).sum();
      return total > 0 ? (double) (total - inside) / total : 0;
    }
  }
}
