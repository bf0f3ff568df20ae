package lodeswing.core.motion;

/**
 * Energy of the bob magnet among the plate's magnets as a function of the two angles.
 *
 * <p>Implementations are immutable and allocate nothing in these methods.
 */
public interface AngleEnergy {

  /** Energy U [J]. */
  double energy(double beta, double alpha);

  /**
   * Energy and its first derivatives.
   *
   * @param beta swing in x [rad]
   * @param alpha swing in y [rad]
   * @param out receives U [J], dU/dbeta, dU/dalpha [J/rad]
   */
  void gradient(double beta, double alpha, double[] out);

  /**
   * Energy with first and second derivatives.
   *
   * @param beta swing in x [rad]
   * @param alpha swing in y [rad]
   * @param out receives U, dU/dbeta, dU/dalpha, d2U/dbeta2, d2U/dbeta dalpha, d2U/dalpha2
   */
  void curvature(double beta, double alpha, double[] out);
}
