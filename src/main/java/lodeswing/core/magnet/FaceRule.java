package lodeswing.core.magnet;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.util.Pair;

/**
 * Points and weights that integrate a harmonic function over a magnet's two faces, of which the
 * lower one counts as negative: each point has a twin on the other side.
 *
 * <p>Discs and rings: Gauss-Legendre in r^2, evenly spaced angles, fewer of them on inner circles.
 * Blocks: Gauss-Legendre in both directions. Of strength L it is exact for harmonic polynomials of
 * about that degree, so that the error falls like lambda^-L, where lambda is the distance of the
 * nearest edge of the source over the bob's own radius. Stroud, Approximate Calculation of Multiple
 * Integrals (1971), section 2.7 (product rules on the disc).
 *
 * <p>Far from every source, a round magnet is as good as a few charges on its axis ({@link
 * AxisCharges}).
 *
 * <p>Owns its arrays; nobody else writes to them.
 */
final class FaceRule {

  private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

  static FaceRule annulus(double inner, double outer, double bound, int strength, double digits) {
    int circles = (strength + 4) / 4;
    GaussIntegrator gauss = GAUSS.legendre(circles, inner * inner, outer * outer);
    double lnLambda = digits / strength;
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < circles; i++) {
      double r = Math.sqrt(gauss.getPoint(i));
      int spokes = (int) Math.ceil(digits / (lnLambda + Math.log(bound / r)));
      spokes = Math.max(spokes, 3);
      double weight = Math.PI * gauss.getWeight(i) / spokes;
      for (int j = 0; j < spokes; j++) {
        double angle = 2 * Math.PI * (j + 0.5) / spokes;
        points.add(new double[] {r * Math.cos(angle), r * Math.sin(angle), 1, weight});
      }
    }
    return of(points);
  }

  static FaceRule rectangle(
      double halfLength, double halfWidth, double bound, int strength, double digits) {
    List<double[]> points = new ArrayList<>();
    double lnLambda = digits / strength;
    for (Pair<Double, Double> a : line(halfLength, bound, lnLambda, digits)) {
      for (Pair<Double, Double> b : line(halfWidth, bound, lnLambda, digits)) {
        points.add(new double[] {a.getFirst(), b.getFirst(), 1, a.getSecond() * b.getSecond()});
      }
    }
    return of(points);
  }

  private static List<Pair<Double, Double>> line(
      double half, double bound, double lnLambda, double digits) {
    int n = (int) Math.ceil((digits / (lnLambda + Math.log(bound / half)) + 1) / 2);
    GaussIntegrator gauss = GAUSS.legendre(n, -half, half);
    List<Pair<Double, Double>> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      points.add(new Pair<>(gauss.getPoint(i), gauss.getWeight(i)));
    }
    return points;
  }

  private final double[] u;
  private final double[] v;
  private final double[] lift;
  private final double[] weight;

  private FaceRule(double[] u, double[] v, double[] lift, double[] weight) {
    this.u = u;
    this.v = v;
    this.lift = lift;
    this.weight = weight;
  }

  private static FaceRule of(List<double[]> points) {
    return new FaceRule(
        points.stream().mapToDouble(p -> p[0]).toArray(),
        points.stream().mapToDouble(p -> p[1]).toArray(),
        points.stream().mapToDouble(p -> p[2]).toArray(),
        points.stream().mapToDouble(p -> p[3]).toArray());
  }

  /**
   * Charges on the axis.
   *
   * @param lift heights in half heights of the magnet
   * @param weight areas that they stand for [m^2]
   */
  static FaceRule onAxis(double[] lift, double[] weight) {
    return new FaceRule(new double[lift.length], new double[lift.length], lift, weight);
  }

  int size() {
    return weight.length;
  }

  /** Coordinates along the face's first axis [m], not to be changed. */
  double[] u() {
    return u;
  }

  /** Coordinates along the face's second axis [m], not to be changed. */
  double[] v() {
    return v;
  }

  /** Height in half heights of the magnet, 1 on the face itself, not to be changed. */
  double[] lift() {
    return lift;
  }

  /** Areas that the points stand for [m^2], not to be changed. */
  double[] weight() {
    return weight;
  }
}
