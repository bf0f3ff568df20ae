package lodeswing.core.magnet;

/**
 * Flux density and potential of a point dipole along z, the far field of every magnet.
 *
 * <p>B = mu0/(4 pi) (3 (m.rhat) rhat - m)/r^3, phi = m.rhat/(4 pi r^2). Source: J. D. Jackson,
 * Classical Electrodynamics, 3rd ed. (1999), eq. 5.56, and 5.106 for the sphere that it stands for.
 */
final class PointDipole {

  private PointDipole() {}

  static double potential(double moment, double x, double y, double z) {
    double r2 = x * x + y * y + z * z;
    return moment / (4 * Math.PI) * z / (r2 * Math.sqrt(r2));
  }

  static void field(double moment, double x, double y, double z, double[] b) {
    double r2 = x * x + y * y + z * z;
    double strength = MagneticConstant.MU_0 * moment / (4 * Math.PI) / (r2 * Math.sqrt(r2));
    double along = 3 * z / r2 * strength;
    b[0] = along * x;
    b[1] = along * y;
    b[2] = along * z - strength;
  }
}
