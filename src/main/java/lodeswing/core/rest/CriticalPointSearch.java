package lodeswing.core.rest;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.motion.Motion;

/**
 * Finds the critical points of the potential: cells where both slopes may vanish, or around which
 * the gradient turns, each refined by Newton's method with the exact gradient and Hessian.
 *
 * <p>A step is halved until the gradient shrinks and is never longer than two cells. Where the
 * Hessian is singular (a round valley) only the curved direction is stepped along, so that the
 * nearest place of the valley is found. Source: Nocedal and Wright, Numerical Optimization (2006),
 * chapter 11.
 */
final class CriticalPointSearch {

  private static final int MOST_STEPS = 60;
  private static final double SINGULAR = 1e-9;
  private static final double SAME_PLACE = 1e-3;
  private static final double CONTINUUM_GAP = 3;
  private static final int CONTINUUM_COUNT = 8;

  /** Share of a slope's range in a cell by which the range is widened before it is tested. */
  private static final double WIDENING = 0.5;

  private final Motion motion;
  private final ScanGrid grid;
  private final double[] here = new double[6];
  private final double[] there = new double[6];
  private final double[] step = new double[2];

  CriticalPointSearch(Motion motion, ScanGrid grid) {
    this.motion = motion;
    this.grid = grid;
  }

  /** All critical points found in the scanned square, each once, in no particular order. */
  List<CriticalPoint> find() {
    List<CriticalPoint> found = new ArrayList<>();
    for (int i = 0; i < grid.axis0.size() - 1; i++) {
      for (int j = 0; j < grid.axis1.size() - 1; j++) {
        int lower = i * grid.size1() + j;
        if ((mayHold(grid.slope0, lower) && mayHold(grid.slope1, lower))
            || grid.turns(lower) != 0) {
          refine(lower, found);
        }
      }
    }
    return joinContinua(found);
  }

  private boolean mayHold(double[] slope, int lower) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < 4; k++) {
      double s = slope[grid.corner(lower, k)];
      low = Math.min(low, s);
      high = Math.max(high, s);
    }
    double widened = WIDENING * (high - low);
    return low - widened <= 0 && high + widened >= 0;
  }

  private void refine(int lower, List<CriticalPoint> found) {
    double size = grid.cellSize(lower);
    double start0 = 0.5 * (grid.q0(lower) + grid.q0(lower + grid.size1() + 1));
    double start1 = 0.5 * (grid.q1(lower) + grid.q1(lower + grid.size1() + 1));
    double q0 = start0;
    double q1 = start1;
    motion.potentialDerivatives(q0, q1, here);
    double length = Double.POSITIVE_INFINITY;
    for (int n = 0; n < MOST_STEPS && length > 1e-14 * size; n++) {
      newtonStep(2 * size);
      double slope = Math.hypot(here[1], here[2]);
      double share = 1;
      boolean shrinks = false;
      while (!shrinks && share > 1e-3) {
        motion.potentialDerivatives(q0 + share * step[0], q1 + share * step[1], there);
        shrinks = Math.hypot(there[1], there[2]) < slope;
        share *= shrinks ? 1 : 0.5;
      }
      length = Math.hypot(step[0], step[1]);
      if (!shrinks) {
        break;
      }
      q0 += share * step[0];
      q1 += share * step[1];
      System.arraycopy(there, 0, here, 0, 6);
    }
    boolean converged = length < 1e-6 * size;
    boolean near = Math.hypot(q0 - start0, q1 - start1) < 4 * size;
    if (converged && near && grid.cellCorner(q0, q1) >= 0) {
      addOnce(CriticalPoint.at(q0, q1, here), SAME_PLACE * size, found);
    }
  }

  private void newtonStep(double longest) {
    SymmetricPair pair = SymmetricPair.of(here[3], here[4], here[5]);
    double least = SINGULAR * Math.max(Math.abs(pair.low()), Math.abs(pair.high()));
    double alongLow = pair.low0() * here[1] + pair.low1() * here[2];
    double alongHigh = -pair.low1() * here[1] + pair.low0() * here[2];
    double a = Math.abs(pair.low()) > least ? -alongLow / pair.low() : 0;
    double b = Math.abs(pair.high()) > least ? -alongHigh / pair.high() : 0;
    double length = Math.hypot(a, b);
    double factor = length > longest ? longest / length : 1;
    step[0] = factor * (a * pair.low0() - b * pair.low1());
    step[1] = factor * (a * pair.low1() + b * pair.low0());
  }

  private static void addOnce(CriticalPoint p, double tolerance, List<CriticalPoint> found) {
    for (CriticalPoint other : found) {
      if (other.distance(p.q0(), p.q1()) < tolerance) {
        return;
      }
    }
    found.add(p);
  }

  /** Replaces each chain of level critical points by one that stands for all. */
  private List<CriticalPoint> joinContinua(List<CriticalPoint> found) {
    List<CriticalPoint> result = new ArrayList<>();
    List<CriticalPoint> level = new ArrayList<>();
    for (CriticalPoint p : found) {
      (p.level() ? level : result).add(p);
    }
    while (!level.isEmpty()) {
      List<CriticalPoint> chain = new ArrayList<>();
      chain.add(level.remove(level.size() - 1));
      for (int n = 0; n < chain.size(); n++) {
        CriticalPoint from = chain.get(n);
        double gap = CONTINUUM_GAP * grid.cellSize(grid.cellCorner(from.q0(), from.q1()));
        for (int k = level.size() - 1; k >= 0; k--) {
          if (level.get(k).distance(from.q0(), from.q1()) < gap) {
            chain.add(level.remove(k));
          }
        }
      }
      if (chain.size() >= CONTINUUM_COUNT) {
        result.add(rightmost(chain).asContinuum());
      } else {
        result.addAll(chain);
      }
    }
    return result;
  }

  private static CriticalPoint rightmost(List<CriticalPoint> chain) {
    CriticalPoint best = chain.get(0);
    for (CriticalPoint p : chain) {
      if (p.q0() > best.q0()) {
        best = p;
      }
    }
    return best;
  }
}
