package lodeswing.core.regression;

/** A curve that depends on parameters. */
@FunctionalInterface
public interface CurveModel {

  /**
   * Its values, always as many and always finite.
   *
   * @param parameters in the order of the fit; not to be kept or changed
   */
  double[] values(double[] parameters);
}
