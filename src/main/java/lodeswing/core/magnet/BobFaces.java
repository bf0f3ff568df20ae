package lodeswing.core.magnet;

import java.util.List;

/**
 * The bob's charged faces with a ladder of quadrature rules, of which the distance picks one.
 *
 * <p>Immutable; the rules are built once.
 */
final class BobFaces {

  /**
   * Natural logarithm of the error aimed at, 1e-11 of the potential: far below 1e-9 of a pair's
   * energy, so that tables made from it see no jump where the rule changes.
   */
  private static final double DIGITS = Math.log(1e11);

  private static final int[] STRENGTHS = {
    4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16, 18, 20, 22, 24, 27, 30, 34, 38, 43, 48, 54, 62, 72, 84,
    100, 120, 150, 200
  };

  private final double half;
  private final double bound;
  private final double planRadius;
  private final FaceRule[] ladder;
  private final List<AxisCharges> far;

  private BobFaces(double half, double planRadius, FaceRule[] ladder, List<AxisCharges> far) {
    this.half = half;
    this.planRadius = planRadius;
    this.bound = Math.hypot(half, planRadius);
    this.ladder = ladder;
    this.far = far;
  }

  static BobFaces ofAnnulus(double inner, double outer, double half) {
    FaceRule[] rules = new FaceRule[STRENGTHS.length];
    double bound = Math.hypot(outer, half);
    for (int i = 0; i < rules.length; i++) {
      rules[i] = FaceRule.annulus(inner, outer, bound, STRENGTHS[i], DIGITS);
    }
    return new BobFaces(half, outer, rules, AxisCharges.ladder(inner, outer, half, DIGITS));
  }

  static BobFaces ofRectangle(double halfLength, double halfWidth, double half) {
    FaceRule[] rules = new FaceRule[STRENGTHS.length];
    double plan = Math.hypot(halfLength, halfWidth);
    double bound = Math.hypot(plan, half);
    for (int i = 0; i < rules.length; i++) {
      rules[i] = FaceRule.rectangle(halfLength, halfWidth, bound, STRENGTHS[i], DIGITS);
    }
    return new BobFaces(half, plan, rules, List.of());
  }

  double half() {
    return half;
  }

  /**
   * The weakest rule that is good enough.
   *
   * @param source the source
   * @param edgeDistance from the bob's centre to its nearest edge [m]
   * @param faceHeight height of the bob's centre over the source's nearer face [m]
   * @param axisTilt cosine of the bob's axis to the source's
   */
  FaceRule rule(Magnet source, double edgeDistance, double faceHeight, double axisTilt) {
    // a block's closed form loses digits far away, which charges of both signs would magnify
    for (int i = 0; i < far.size() && !(source instanceof Block); i++) {
      if (edgeDistance >= far.get(i).from()) {
        return far.get(i).rule();
      }
    }
    double cos = Math.abs(axisTilt);
    double sin = Math.sqrt(Math.max(0, 1 - cos * cos));
    double clear = Math.max(edgeDistance - bound, faceHeight - half * cos - planRadius * sin);
    double needed = clear > 0 ? DIGITS / Math.log1p(clear / bound) : Double.POSITIVE_INFINITY;
    for (int i = 0; i < ladder.length - 1; i++) {
      if (STRENGTHS[i] >= needed) {
        return ladder[i];
      }
    }
    return ladder[ladder.length - 1];
  }
}
