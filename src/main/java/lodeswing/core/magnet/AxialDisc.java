package lodeswing.core.magnet;

/**
 * Closed forms of a cylinder that is uniformly magnetised along its axis, per unit remanence; discs
 * and rings are built from it.
 *
 * <p>Near, its flux density is that of a solenoid's current sheet and its potential that of two
 * uniformly charged discs, both by {@link EllipticIntegral}. Beyond {@value #FAR} circumscribed
 * radii, where those lose figures to cancellation, both come from the multipole series, whose first
 * left-out term is below 1e-17 there.
 *
 * <p>Sources: N. Derby and S. Olbert, Am. J. Phys. 78 (2010) 229, eqs 1 to 5 (flux density); E.
 * Durand, Electrostatique I (1964), and H. Lass and L. Blitzer, Celestial Mechanics 30 (1983) 225
 * (charged disc, derived here anew from the boundary integral and brought to cel); the series from
 * the potential on the axis by the generating function of Gegenbauer polynomials, DLMF 18.12.4, and
 * Legendre's for the direction.
 */
final class AxialDisc {

  private static final double FAR = 2.5;
  private static final int SERIES_END = 43;

  private AxialDisc() {}

  /**
   * Scalar potential times mu0 [T m] of a disc with remanence 1 T.
   *
   * @param radius its radius [m]
   * @param half half its height [m]
   */
  static double potential(double radius, double half, double x, double y, double z) {
    double rho2 = x * x + y * y;
    double r2 = rho2 + z * z;
    double a2 = radius * radius + half * half;
    if (r2 > FAR * FAR * a2) {
      return farPotential(Math.sqrt(a2), half, Math.sqrt(r2), z);
    }
    double rho = Math.sqrt(rho2);
    return (chargedDisc(radius, rho, Math.abs(z - half))
            - chargedDisc(radius, rho, Math.abs(z + half)))
        / (4 * Math.PI);
  }

  /**
   * Adds a multiple of the flux density of a disc with remanence 1 T.
   *
   * @param factor remanence [T], negative to take away
   * @param b receives the sum, components along x, y, z [T]
   */
  static void addField(
      double radius, double half, double x, double y, double z, double factor, double[] b) {
    double rho2 = x * x + y * y;
    double r2 = rho2 + z * z;
    double a2 = radius * radius + half * half;
    if (r2 > FAR * FAR * a2) {
      addFarField(Math.sqrt(a2), half, x, y, z, factor, b);
      return;
    }
    double rho = Math.sqrt(rho2);
    double upper = z + half;
    double lower = z - half;
    double reach = radius + rho;
    double gamma = (radius - rho) / reach;
    double pu = Math.hypot(upper, reach);
    double pl = Math.hypot(lower, reach);
    double ku = Math.hypot(upper, radius - rho) / pu;
    double kl = Math.hypot(lower, radius - rho) / pl;
    double axial =
        radius / reach * (upper / pu * axialShape(ku, gamma) - lower / pl * axialShape(kl, gamma));
    b[2] += factor / Math.PI * axial;
    if (rho > 0) {
      double radial =
          radius
              * (EllipticIntegral.cel(ku, 1, 1, -1) / pu - EllipticIntegral.cel(kl, 1, 1, -1) / pl);
      double perLength = factor / Math.PI * radial / rho;
      b[0] += perLength * x;
      b[1] += perLength * y;
    }
  }

  /** cel(k, gamma^2, 1, gamma), with the mean of both sides on the wall, where it jumps. */
  private static double axialShape(double k, double gamma) {
    if (gamma == 0) {
      return EllipticIntegral.cel(k, 1, 1, 1);
    }
    return EllipticIntegral.cel(k, gamma * gamma, 1, gamma);
  }

  /**
   * Integral of 1/distance over a disc [m].
   *
   * <p>The disc's integral becomes one along its edge, 2R int (R - rho cos t) (W - zeta) / s^2 dt
   * with W^2 = s^2 + zeta^2, s the distance in the plane; its part with W is two cel, its part with
   * zeta a constant inside the edge and none outside.
   */
  private static double chargedDisc(double radius, double rho, double zeta) {
    double reach = radius + rho;
    double gamma = (radius - rho) / reach;
    double p = Math.hypot(reach, zeta);
    double k = Math.hypot(radius - rho, zeta) / p;
    double sum = 4 * radius / p * reach * EllipticIntegral.cel(k, 1, 1, gamma);
    if (zeta == 0) {
      return sum;
    }
    double inside = gamma > 0 ? 2 * Math.PI : gamma == 0 ? Math.PI : 0;
    return sum + zeta * (4 * radius * zeta / (p * reach) * axialShape(k, gamma) - inside);
  }

  private static double farPotential(double a, double half, double r, double z) {
    double c = half / a;
    double u = z / r;
    double shrink = a / r;
    double power = shrink * shrink;
    double step = power;
    double sum = 0;
    // P_l of both cosines, l = 1 first; q runs two ahead of p by one recurrence of its own.
    double c0 = 1;
    double c1 = c;
    double u0 = 1;
    double u1 = u;
    for (int l = 1; l <= SERIES_END; l += 2) {
      double c2 = ((2 * l + 1) * c * c1 - l * c0) / (l + 1);
      double c3 = ((2 * l + 3) * c * c2 - (l + 1) * c1) / (l + 2);
      sum += (c1 - c3) / (2 * l + 3) * power * u1;
      double u2 = ((2 * l + 1) * u * u1 - l * u0) / (l + 1);
      double u3 = ((2 * l + 3) * u * u2 - (l + 1) * u1) / (l + 2);
      c0 = c2;
      c1 = c3;
      u0 = u2;
      u1 = u3;
      power *= step;
    }
    return a * sum;
  }

  private static void addFarField(
      double a, double half, double x, double y, double z, double factor, double[] b) {
    double r = Math.sqrt(x * x + y * y + z * z);
    double c = half / a;
    double u = z / r;
    double shrink = a / r;
    double step = shrink * shrink;
    double power = step * shrink;
    double axial = 0;
    double radial = 0;
    double c0 = 1;
    double c1 = c;
    double u0 = 1;
    double u1 = u;
    // Slopes of the Legendre polynomials by P'_(l+1) = P'_(l-1) + (2l+1) P_l.
    double slope0 = 0;
    for (int l = 1; l <= SERIES_END; l += 2) {
      double c2 = ((2 * l + 1) * c * c1 - l * c0) / (l + 1);
      double c3 = ((2 * l + 3) * c * c2 - (l + 1) * c1) / (l + 2);
      double u2 = ((2 * l + 1) * u * u1 - l * u0) / (l + 1);
      double u3 = ((2 * l + 3) * u * u2 - (l + 1) * u1) / (l + 2);
      double slope2 = slope0 + (2 * l + 1) * u1;
      double term = (c1 - c3) / (2 * l + 3) * power;
      axial += term * (l + 1) * u2;
      radial += term * slope2;
      slope0 = slope2;
      c0 = c2;
      c1 = c3;
      u0 = u2;
      u1 = u3;
      power *= step;
    }
    b[0] += factor * radial * x / r;
    b[1] += factor * radial * y / r;
    b[2] += factor * axial;
  }
}
