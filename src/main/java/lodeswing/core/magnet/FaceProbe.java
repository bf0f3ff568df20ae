package lodeswing.core.magnet;

import static lodeswing.core.magnet.Work.POSE;
import static lodeswing.core.magnet.Work.SUM;

/**
 * A bob as two charged faces: U = Br (integral of phi over its north face less that over its south
 * face), the force the same integrals of H, all by one rule, so that force and torque are the exact
 * derivatives of the energy computed.
 *
 * <p>Source: J. D. Jackson, Classical Electrodynamics, 3rd ed. (1999), eqs 5.95 to 5.100 (surface
 * charge of hard magnets); U = - integral of M . B dV = mu0 integral of M . grad phi dV by Gauss's
 * theorem.
 */
record FaceProbe(double strength, BobFaces faces) implements BobProbe {

  @Override
  public double energy(SourceKernel source, double[] work) {
    return strength * source.faceIntegral(rule(source, work), faces.half(), work);
  }

  @Override
  public double energyAndLoad(SourceKernel source, double[] work) {
    double integral = source.faceIntegralAndLoad(rule(source, work), faces.half(), work);
    double perFlux = strength / MagneticConstant.MU_0;
    for (int i = 0; i < 6; i++) {
      work[SUM + i] *= perFlux;
    }
    return strength * integral;
  }

  private FaceRule rule(SourceKernel source, double[] work) {
    double x = work[POSE];
    double y = work[POSE + 1];
    double z = work[POSE + 2];
    return faces.rule(
        source.magnet(),
        source.edgeDistance(x, y, z),
        Math.abs(z) - source.magnet().halfHeight(),
        work[POSE + 11]);
  }
}
