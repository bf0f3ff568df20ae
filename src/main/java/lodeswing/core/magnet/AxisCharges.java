package lodeswing.core.magnet;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;

/**
 * A few charges on the axis of a disc or ring that stand for its charged faces in the field of
 * sources that are far enough.
 *
 * <p>The integral of a harmonic function over the faces depends on the function's values on the
 * axis alone, through the axial multipole moments M_l = integral of r^l P_l(cos) over the faces,
 * odd l; k charges and their opposites on the other side have the first k of them. A source whose
 * edges are lambda bounding radii off contributes to order l no more than (l+1)/2 lambda^(1-l) of
 * what it does to the first, as a dipole does, which bounds the error (J. D. Jackson, Classical
 * Electrodynamics, 3rd ed. (1999), section 4.1; rule and bound derived here).
 *
 * @param from least distance of the source's edges from the magnet's centre [m]
 * @param rule the charges
 */
record AxisCharges(double from, FaceRule rule) {

  private static final int[] COUNTS = {3, 4, 5, 6, 7, 8, 10};
  private static final double[] SPREADS = {0.5, 0.6, 0.75, 1, 1.25, 1.5, 2};

  /** Most that rounding may grow by, the charges' sizes against their field. */
  private static final double MOST_ROUNDING = 3e3;

  /** Order at which the bound's sum ends. */
  private static final int LAST = 61;

  /** Ratio of the distances that are tried. */
  private static final double RATIO = 1.05;

  private static final double FARTHEST = 100;

  /** The rules of a magnet, the one with the fewest charges first. */
  static List<AxisCharges> ladder(double inner, double outer, double half, double digits) {
    double bound = Math.hypot(outer, half);
    double[] moments = moments(inner / bound, outer / bound, half / bound);
    List<AxisCharges> all = new ArrayList<>();
    double nearest = FARTHEST;
    for (int count : COUNTS) {
      double least = nearest;
      double[] best = {};
      double[] bestPlaces = {};
      for (double spread : SPREADS) {
        double[] places = places(count, spread);
        double[] charges = charges(places, moments);
        double from = from(places, charges, moments, Math.exp(-digits));
        if (from < least) {
          least = from;
          best = charges;
          bestPlaces = places;
        }
      }
      if (least < nearest) {
        nearest = least;
        all.add(new AxisCharges(least * bound, rule(best, bestPlaces, bound, half)));
      }
    }
    return List.copyOf(all);
  }

  private static FaceRule rule(double[] charges, double[] places, double bound, double half) {
    double[] lift = new double[places.length];
    double[] weight = new double[places.length];
    for (int i = 0; i < places.length; i++) {
      lift[i] = places[i] * bound / half;
      weight[i] = charges[i] * bound * bound;
    }
    return FaceRule.onAxis(lift, weight);
  }

  /** The positive half of Chebyshev points, so that sums of high powers stay small. */
  private static double[] places(int count, double spread) {
    double[] places = new double[count];
    for (int i = 0; i < count; i++) {
      places[i] = spread * Math.cos(Math.PI * (2 * i + 1) / (4 * count));
    }
    return places;
  }

  /** Moments of the upper face, in bounding radii. */
  private static double[] moments(double inner, double outer, double half) {
    double[] moments = new double[LAST + 1];
    GaussIntegrator gauss =
        new GaussIntegratorFactory().legendre(LAST / 4 + 2, inner * inner, outer * outer);
    for (int i = 0; i < gauss.getNumberOfPoints(); i++) {
      double square = gauss.getPoint(i) + half * half;
      double before = 1;
      double now = half;
      for (int l = 1; l <= LAST; l++) {
        moments[l] += Math.PI * gauss.getWeight(i) * now;
        double next = ((2 * l + 1) * half * now - l * square * before) / (l + 1);
        before = now;
        now = next;
      }
    }
    return moments;
  }

  private static double[] charges(double[] places, double[] moments) {
    int count = places.length;
    double[][] powers = new double[count][count];
    double[] wanted = new double[count];
    for (int j = 0; j < count; j++) {
      wanted[j] = moments[2 * j + 1];
      for (int i = 0; i < count; i++) {
        powers[j][i] = Math.pow(places[i], 2 * j + 1);
      }
    }
    return new LUDecomposition(new Array2DRowRealMatrix(powers))
        .getSolver()
        .solve(new ArrayRealVector(wanted))
        .toArray();
  }

  /** Least distance, in bounding radii, at which the bound holds and rounding stays small. */
  private static double from(double[] places, double[] charges, double[] moments, double error) {
    double size = 0;
    for (double charge : charges) {
      size += Math.abs(charge);
    }
    double distance = places[0] * RATIO;
    while (distance < FARTHEST && bound(places, charges, moments, distance) > error) {
      distance *= RATIO;
    }
    return size / moments[1] * distance > MOST_ROUNDING ? FARTHEST : distance;
  }

  private static double bound(
      double[] places, double[] charges, double[] moments, double distance) {
    double sum = 0;
    for (int l = 2 * places.length + 1; l <= LAST; l += 2) {
      double own = 0;
      for (int i = 0; i < places.length; i++) {
        own += charges[i] * Math.pow(places[i], l);
      }
      double order = 0.5 * (l + 1);
      sum += order * Math.abs(moments[l] - own) * Math.pow(distance, 1 - l);
    }
    return sum / moments[1];
  }
}
