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
}
