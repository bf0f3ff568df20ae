package lodeswing.core.motion;

/**
 * Force of the plate's magnets on the bob magnet along the line in which its support pulls, which
 * the energy over the two angles cannot tell.
 *
 * <p>For {@code PullLine.ALONG_BAR} it is the derivative -dU/ds of the energy as the bob magnet is
 * shifted down along the bar, tilt unchanged; for {@code PullLine.BETWEEN_AXES} it is -dU/dd as the
 * whole body is shifted along the direction (0, sin(alpha), -cos(alpha)) from the upper to the
 * second axis. Implementations are immutable and allocate nothing.
 */
@FunctionalInterface
public interface AxialForce {

  /**
   * The force [N], positive away from the support.
   *
   * @param beta swing in x [rad]
   * @param alpha swing in y [rad]
   */
  double along(double beta, double alpha);
}
