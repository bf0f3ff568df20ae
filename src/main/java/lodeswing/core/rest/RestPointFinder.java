package lodeswing.core.rest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.Release;

/**
 * Finds all stable rest points of a motion, their wells, barriers and passes.
 *
 * <p>The potential is scanned on a grid that is fine about the magnets; critical points are refined
 * to full precision; passes lead over saddles whose two ways down are followed; a flood of the grid
 * checks them and adds the ways into unsafe zones. If the count of critical points does not agree
 * with the turns of the gradient, the scan is repeated finer, and at last the result says what is
 * in doubt.
 *
 * <p>Not safe for several threads; its results are.
 */
public final class RestPointFinder {

  private static final double[] FINENESS = {12, 20, 36};
  private static final int[] MOST_FINE_CELLS = {300, 520, 800};
  private static final double FINE_PADDING = 3;
  private static final double COARSEST = 1.0 / 30;
  private static final double LONGEST_FINE_STEP = 1.0 / 50;
  private static final double OFF_CENTRE_0 = 0.382;
  private static final double OFF_CENTRE_1 = 0.276;

  private final Motion motion;
  private final ScanRegion region;

  /**
   * A finder.
   *
   * @param motion what moves
   * @param region where the potential has its detail
   */
  public RestPointFinder(Motion motion, ScanRegion region) {
    this.motion = motion;
    this.region = region;
  }

  /** Scans, refines, checks. */
  public RestPoints find() {
    RestPoints result = scan(0);
    for (int attempt = 1; attempt < FINENESS.length && !result.complete(); attempt++) {
      result = scan(attempt);
    }
    return result;
  }

  private RestPoints scan(int attempt) {
    ScanGrid grid = new ScanGrid(motion, axis(attempt, 0), axis(attempt, 1));
    UnsafeZones zones = new UnsafeZones(motion, grid);
    List<CriticalPoint> minima = new ArrayList<>();
    List<CriticalPoint> saddles = new ArrayList<>();
    List<CriticalPoint> inside = new ArrayList<>();
    for (CriticalPoint p : new CriticalPointSearch(motion, grid).find()) {
      boolean safe = grid.cellSafe(grid.cellCorner(p.q0(), p.q1()));
      if (safe) {
        inside.add(p);
      }
      if (p.kind() == CriticalPoint.Kind.MINIMUM && allowed(p)) {
        minima.add(p);
      } else if (p.kind() == CriticalPoint.Kind.SADDLE && safe) {
        saddles.add(p);
      }
    }
    return new WellSurvey(motion, region, grid, zones).survey(minima, saddles, inside);
  }

  private ScanAxis axis(int attempt, int coordinate) {
    double scale = region.lengthScale() / planPerAngle(coordinate);
    double low = 0;
    double high = 0;
    for (ScanRegion.MagnetPlace m : region.magnets()) {
      Optional<double[]> state = motion.toState(new Release(m.x(), m.y(), 0, 0));
      if (state.isPresent()) {
        low = Math.min(low, state.get()[coordinate]);
        high = Math.max(high, state.get()[coordinate]);
      }
    }
    low -= FINE_PADDING * scale;
    high += FINE_PADDING * scale;
    double step = Math.max(scale / FINENESS[attempt], (high - low) / MOST_FINE_CELLS[attempt]);
    step = Math.min(step, LONGEST_FINE_STEP * motion.reach());
    // no node on a line of symmetry, where a layout's critical points like to lie
    double shift = (coordinate == 0 ? OFF_CENTRE_0 : OFF_CENTRE_1) * step;
    return ScanAxis.of(motion.reach(), low - shift, high, step, COARSEST * motion.reach());
  }

  /** Plan distance per unit of a coordinate, at the bottom. */
  private double planPerAngle(int coordinate) {
    double tiny = 1e-6;
    double[] state = new double[4];
    state[coordinate] = tiny;
    double[] plan = new double[4];
    motion.toPlan(state, plan);
    return Math.hypot(plan[0], plan[1]) / tiny;
  }

  private boolean allowed(CriticalPoint p) {
    boolean allowed = true;
    for (Limit limit : motion.limits()) {
      allowed &= limit.leastMargin(p.q0(), p.q1()) > 0;
    }
    return allowed;
  }
}
