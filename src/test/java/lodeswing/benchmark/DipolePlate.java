package lodeswing.benchmark;

import lodeswing.core.motion.AngleEnergy;

/**
 * Upright point dipoles under an upright dipole bob on an ideal cord: U = -c (3 z^2/r^2 - 1)/r^3
 * for each, the energy of two parallel dipoles (Griffiths, Introduction to Electrodynamics, 1999,
 * problem 6.21).
 *
 * <p>As strong as the sample rig: moments of 0.84 and 0.75 A m^2 at corners 45 mm from the centre.
 */
final class DipolePlate implements AngleEnergy {

  private static final double STRENGTH = 1e-7 * 0.84 * 0.75;
  private static final double RING = 0.045;

  private final double length;
  private final double axisHeight;

  DipolePlate(double length, double clearance) {
    this.length = length;
    this.axisHeight = length + clearance;
  }

  @Override
  public void gradient(double beta, double alpha, double[] out) {
    double sb = Math.sin(beta);
    double cb = Math.cos(beta);
    double sa = Math.sin(alpha);
    double ca = Math.cos(alpha);
    double x = length * sb;
    double y = length * cb * sa;
    double z = axisHeight - length * cb * ca;
    double u = 0;
    double ux = 0;
    double uy = 0;
    double uz = 0;
    for (int i = 0; i < 3; i++) {
      double dx = x - RING * COSINE[i];
      double dy = y - RING * SINE[i];
      double r2 = dx * dx + dy * dy + z * z;
      double w = STRENGTH / (r2 * r2 * Math.sqrt(r2));
      double radial = 15 * z * z / r2 - 3;
      u -= w * (3 * z * z - r2);
      ux += w * dx * radial;
      uy += w * dy * radial;
      uz += w * z * (radial - 6);
    }
    out[0] = u;
    out[1] = length * (ux * cb - uy * sb * sa + uz * sb * ca);
    out[2] = length * (uy * cb * ca + uz * cb * sa);
  }

  @Override
  public double value(double beta, double alpha) {
    double[] out = new double[3];
    gradient(beta, alpha, out);
    return out[0];
  }

  @Override
  public void curvature(double beta, double alpha, double[] out) {
    throw new UnsupportedOperationException("integrators do not ask for it");
  }

  private static final double[] COSINE = {1, -0.5, -0.5};
  private static final double[] SINE = {0, 0.8660254037844386, -0.8660254037844386};
}
