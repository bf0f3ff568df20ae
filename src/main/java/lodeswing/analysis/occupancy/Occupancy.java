package lodeswing.analysis.occupancy;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.DoubleAdder;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.FreeMotion;
import lodeswing.core.motion.Motion;

/**
 * Follows the same releases with the magnets and without them, and counts where they are.
 *
 * <p>Any single path of a chaotic rig is soon beyond foretelling; the share of time that a great
 * many of them spend in a cell is not, as little as the odds of a die are. All lots are followed on
 * all cores, and every number is the same whatever their order.
 */
public final class Occupancy {

  /** Error of a step over the release disc's radius. */
  private static final double RELATIVE = 1e-6;

  /** Cells along a side: small against magnets, and each met often. */
  private static final int SIDE = 64;

  /** The grid reaches so far beyond the releases, for bobs that are driven out. */
  private static final double ROOM = 1.1;

  private final Landscape landscape;
  private final OccupancySpec spec;

  /** What is asked of a layout made ready. */
  public Occupancy(Landscape landscape, OccupancySpec spec) {
    this.landscape = landscape;
    this.spec = spec;
  }

  /** The cells. */
  private CellGrid cells() {
    return new CellGrid(ROOM * spec.radius(), SIDE);
  }

  /**
   * Follows them.
   *
   * @param progress told the fraction done by several threads; may throw to end the work
   */
  public OccupancyResult run(DoubleConsumer progress) {
    Tolerance tolerance = landscape.planScale().tolerance(RELATIVE, spec.radius());
    Landscape fine = landscape.asFineAs(tolerance);
    CellGrid grid = cells();
    List<LotCount> among =
        lots(fine.motion(), tolerance, grid, done -> progress.accept(0.8 * done));
    List<LotCount> free =
        lots(
            FreeMotion.of(landscape.layout()),
            tolerance,
            grid,
            done -> progress.accept(0.8 + 0.2 * done));
    return new OccupancyResult(grid, strengths(grid), overMagnets(grid), among, free, spec);
  }

  private List<LotCount> lots(
      Motion motion, Tolerance tolerance, CellGrid grid, DoubleConsumer progress) {
    double[] done = new double[OccupancySpec.LOTS];
    DoubleAdder all = new DoubleAdder();
    return IntStream.range(0, OccupancySpec.LOTS)
        .parallel()
        .mapToObj(
            lot ->
                new TimeCount(motion, tolerance, spec, grid)
                    .run(
                        lot,
                        part -> {
                          all.add(part - done[lot]);
                          done[lot] = part;
                          progress.accept(Math.min(1, all.sum() / OccupancySpec.LOTS));
                        }))
        .toList();
  }

  private double[] strengths(CellGrid grid) {
    FieldStrength field = new FieldStrength(landscape.layout(), landscape.motion());
    double[] strengths = new double[grid.count()];
    Arrays.setAll(strengths, cell -> field.at(grid.x(cell), grid.y(cell)));
    return strengths;
  }

  private boolean[] overMagnets(CellGrid grid) {
    Footing footing = Footing.of(landscape.layout());
    boolean[] over = new boolean[grid.count()];
    for (int cell = 0; cell < over.length; cell++) {
      over[cell] = footing.holds(grid.x(cell), grid.y(cell));
    }
    return over;
  }
}
