package lodeswing.core.rest;

import java.util.List;
import lodeswing.core.motion.Motion;

/**
 * Follows the potential downhill from a saddle to the sink that it leads to.
 *
 * <p>Steps of steepest descent by the midpoint rule, shortened until the potential falls.
 */
final class Descent {

  static final int UNKNOWN = -1;

  private static final int MOST_STEPS = 20_000;
  private static final double FIRST_STEP = 1e-3;
  private static final double LONGEST_STEP = 1.0;
  private static final double STALLED = 1e-5;

  private final Motion motion;
  private final ScanGrid grid;
  private final UnsafeZones zones;
  private final List<CriticalPoint> minima;
  private final double[] here = new double[6];
  private final double[] there = new double[6];

  Descent(Motion motion, ScanGrid grid, UnsafeZones zones, List<CriticalPoint> minima) {
    this.motion = motion;
    this.grid = grid;
    this.zones = zones;
    this.minima = minima;
  }

  /**
   * The sink below a saddle: a minimum's index, or a zone's index after the minima, or {@link
   * #UNKNOWN}.
   *
   * @param saddle where to start
   * @param sense +1 or -1: which of the two ways down
   */
  int sinkBelow(CriticalPoint saddle, int sense) {
    double cell = grid.cellSize(grid.cellCorner(saddle.q0(), saddle.q1()));
    SymmetricPair pair = saddle.eigen();
    double step = FIRST_STEP * cell;
    double q0 = saddle.q0() + sense * step * pair.low0();
    double q1 = saddle.q1() + sense * step * pair.low1();
    motion.potentialDerivatives(q0, q1, here);
    for (int n = 0; n < MOST_STEPS; n++) {
      int lower = grid.cellCorner(q0, q1);
      if (lower < 0) {
        return UNKNOWN;
      }
      if (!grid.cellSafe(lower)) {
        return minima.size() + zones.zoneOfCell(lower);
      }
      cell = grid.cellSize(lower);
      int minimum = minimumNear(q0, q1, cell, saddle);
      if (minimum >= 0) {
        return minimum;
      }
      double slope = Math.hypot(here[1], here[2]);
      if (step < STALLED * cell || slope == 0) {
        return valleyAt(here[0], saddle.potential());
      }
      double half = 0.5 * step / slope;
      motion.potentialDerivatives(q0 - half * here[1], q1 - half * here[2], there);
      double slopeThere = Math.hypot(there[1], there[2]);
      double p0 = q0 - step * there[1] / slopeThere;
      double p1 = q1 - step * there[2] / slopeThere;
      motion.potentialDerivatives(p0, p1, there);
      if (there[0] < here[0]) {
        q0 = p0;
        q1 = p1;
        System.arraycopy(there, 0, here, 0, 6);
        step = Math.min(1.5 * step, LONGEST_STEP * cell);
      } else {
        step *= 0.5;
      }
    }
    return UNKNOWN;
  }

  private int minimumNear(double q0, double q1, double cell, CriticalPoint saddle) {
    int nearest = UNKNOWN;
    double least = cell;
    for (int m = 0; m < minima.size(); m++) {
      CriticalPoint p = minima.get(m);
      double distance = p.distance(q0, q1);
      boolean left = distance < 0.5 * p.distance(saddle.q0(), saddle.q1());
      if (left && distance < least && here[0] >= p.potential()) {
        least = distance;
        nearest = m;
      }
    }
    return nearest;
  }

  /** The round valley at whose bottom the descent has come to a halt. */
  private int valleyAt(double potential, double from) {
    for (int m = 0; m < minima.size(); m++) {
      CriticalPoint p = minima.get(m);
      if (p.continuum()
          && Math.abs(potential - p.potential()) < 1e-6 * Math.abs(from - p.potential())) {
        return m;
      }
    }
    return UNKNOWN;
  }
}
