package lodeswing.benchmark;

import java.util.List;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Motion;
import lodeswing.core.rest.RestPoint;

/**
 * The well that a bob is in, found without the seal rule: by a way to a rest point that stays below
 * that well's pass. A bob below a pass and the rest point at the end of such a way are in the same
 * component of the region below the pass. Only rest points, passes and the potential are asked.
 */
final class WellOfPlace {

  /** No such way was found. */
  static final int NONE = -1;

  private static final int PIECES = 48;
  private static final int DESCENT_STEPS = 4_000;

  /** First step of a descent as a part of the distance between the farthest rest points. */
  private static final double FIRST_STEP = 1e-3;

  private final Motion motion;
  private final List<RestPoint> points;
  private final double firstStep;

  WellOfPlace(Landscape landscape) {
    motion = landscape.motion();
    points = landscape.restPoints().list();
    double widest = 1e-2 * motion.reach();
    for (RestPoint a : points) {
      for (RestPoint b : points) {
        widest = Math.max(widest, Math.hypot(a.q0() - b.q0(), a.q1() - b.q1()));
      }
    }
    firstStep = FIRST_STEP * Math.min(widest, 10);
  }

  /** The rest points. */
  List<RestPoint> points() {
    return points;
  }

  /** The energy at which a part of a well's barrier is left over its rest point. */
  double level(int well, double share) {
    RestPoint point = points.get(well);
    return point.potential() + share * point.barrier().height();
  }

  /** The rest point over which the bob has less than a part of the barrier, or {@link #NONE}. */
  int settledAt(double q0, double q1, double energy, double share) {
    for (RestPoint point : points) {
      int w = point.index();
      if (energy < level(w, share) && belowPass(w, energy) && straightWay(w, q0, q1)) {
        return w;
      }
    }
    return NONE;
  }

  /** The well that holds a bob of this energy, or {@link #NONE}. */
  int holding(double q0, double q1, double energy) {
    int well = below(q0, q1);
    return well != NONE && belowPass(well, energy) ? well : NONE;
  }

  /** The rest point that lies downhill: the way there is nowhere higher than the place. */
  private int below(double q0, double q1) {
    double[] slopes = new double[6];
    double at0 = q0;
    double at1 = q1;
    double step = firstStep;
    for (int i = 0; i < DESCENT_STEPS; i++) {
      for (RestPoint point : points) {
        if (straightWay(point.index(), at0, at1)) {
          return point.index();
        }
      }
      motion.potentialDerivatives(at0, at1, slopes);
      double steepness = Math.hypot(slopes[1], slopes[2]);
      double next0 = at0 - step * slopes[1] / steepness;
      double next1 = at1 - step * slopes[2] / steepness;
      if (motion.potential(next0, next1) < slopes[0]) {
        at0 = next0;
        at1 = next1;
        step = Math.min(firstStep, 2 * step);
      } else {
        step /= 2;
      }
    }
    return NONE;
  }

  private boolean belowPass(int well, double energy) {
    RestPoint.Barrier barrier = points.get(well).barrier();
    return energy < barrier.passEnergy() - barrier.error();
  }

  /**
   * Whether the straight line to a rest point keeps below half of its barrier, so that no ridge can
   * be stepped over between two places looked at.
   */
  private boolean straightWay(int well, double q0, double q1) {
    RestPoint point = points.get(well);
    double half = level(well, 0.5);
    boolean below = true;
    for (int k = 0; k < PIECES && below; k++) {
      double part = (double) k / PIECES;
      double there0 = q0 + part * (point.q0() - q0);
      double there1 = q1 + part * (point.q1() - q1);
      below = motion.potential(there0, there1) < half;
    }
    return below;
  }
}
