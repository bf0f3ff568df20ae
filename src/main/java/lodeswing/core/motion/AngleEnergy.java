package lodeswing.core.motion;

/**
 * Energy of the bob magnet among the plate's magnets as a function of the two angles.
 *
 * <p>Implementations are immutable and allocate nothing in these methods.
 */
public interface AngleEnergy {

  /**
   * Energy and its first derivatives.
   *
   * @param beta swing in x [rad]
   * @param alpha swing in y [rad]
   * @param out receives U [J], dU/dbeta, dU/dalpha [J/rad]; length at least 3
   */
  void gradient(double beta, double alpha, double[] out);

  /**
   * First derivatives alone, the force; other places of the array may be overwritten.
   *
   * @param beta swing in x [rad]
   * @param alpha swing in y [rad]
   * @param out receives dU/dbeta in out[1] and dU/dalpha in out[2] [J/rad]; length at least 3
   */
  default void slopes(double beta, double alpha, double[] out) {
    gradient(beta, alpha, out);
  }

  /**
   * Energy with first and second derivatives.
   *
   * @param beta swing in x [rad]
   * @param alpha swing in y [rad]
   * @param out receives U, dU/dbeta, dU/dalpha, d2U/dbeta2, d2U/dbeta dalpha, d2U/dalpha2; length
   *     at least 6
   */
  void curvature(double beta, double alpha, double[] out);

  /**
   * Energy alone [J]; allocates a small array unless an implementation does better.
   *
   * @param beta swing in x [rad]
   * @param alpha swing in y [rad]
   */
  default double value(double beta, double alpha) {
    double[] out = new double[3];
    gradient(beta, alpha, out);
    return out[0];
  }
}
