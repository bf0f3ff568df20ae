package lodeswing.core.motion;

/**
 * A motion with {@link #uniformLoss} whose remaining acceleration hangs on the place alone, a =
 * F(q) - 2k v: Nystrom pairs integrate it with far fewer evaluations of F.
 */
public interface PositionForce extends Motion {

  /**
   * Writes the part of the acceleration that hangs on the place alone.
   *
   * @param out receives F0, F1
   */
  void force(double q0, double q1, double[] out);
}
