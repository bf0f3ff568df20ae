package lodeswing.core.magnet;

/**
 * Field and potential of one kind of source in its own frame, as the bob's energy asks for them.
 *
 * <p>The loops over the bob's faces belong to the kernel so that its formula is inlined in them.
 */
interface SourceKernel {

  /** The magnet it stands for. */
  Magnet magnet();

  /** Distance of a point from the source's nearest edge, where its potential is singular [m]. */
  double edgeDistance(double x, double y, double z);

  /** Flux density at a point [T], written to the first three places of the array. */
  void field(double x, double y, double z, double[] work);

  /**
   * Integral of the potential over the face at t = +half less that over the face at -half [A m^2].
   *
   * @param work holds the bob's pose at {@link Work#POSE}
   */
  double faceIntegral(FaceRule rule, double half, double[] work);

  /**
   * As {@link #faceIntegral}, and writes the same integral of the flux density [T m^2] and of its
   * moment about the bob's centre [T m^3] to {@link Work#SUM}.
   */
  double faceIntegralAndLoad(FaceRule rule, double half, double[] work);
}
