package lodeswing.core.regression;

/** A curve that depends on parameters. */
public interface CurveModel {

  /**
   * Its values, always as many and always finite.
   *
   * @param parameters in the order of the fit; not to be kept or changed
   */
  double[] values(double[] parameters);

  /**
   * The greatest change of a value over which the curve is taken for straight when its slopes are
   * measured, above 0; a curve that is bent more than its parameters' scales show has a small one.
   */
  default double straightOver() {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * The step, as a part of a parameter or of its scale, over which slopes are measured first: near
   * the cube root of the curve's own rounding.
   */
  default double slopeStep() {
    return 6e-6;
  }
}
