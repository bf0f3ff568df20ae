package lodeswing.core.motion;

/**
 * The exact energy of the bob magnet over the two angles, costly to ask: what tables are made from
 * and compared with.
 */
public interface AngleSource extends AngleEnergy {

  /**
   * The magnets' force on the bob along the bar, positive away from the pivot [N].
   *
   * @param beta swing in x [rad]
   * @param alpha swing in y [rad]
   */
  double axialForce(double beta, double alpha);
}
