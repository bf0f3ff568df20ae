package lodeswing.core.field;

/**
 * Follows a line of a plane field by its length: du/ds = F/|F|.
 *
 * <p>The classical Runge-Kutta scheme of order 4 (W. Kutta, Z. Math. Phys. 46 (1901) 435), its step
 * halved until the line turns by less than a seventh of a radian over it. A dipole's line, followed
 * from its farthest place to a tenth of that distance by steps of a 75th, keeps to its formula
 * within 1e-5 of its size. Belongs to one thread.
 */
public final class LineStepper {

  private static final double COSINE_OF_TURN = StrictMath.cos(0.14);
  private static final double LEAST_SHARE = 1.0 / 64;

  private final PlaneField field;
  private final double longest;
  private final double sign;
  private final double weakest;
  private final double[] f = new double[2];
  private final double[] place = new double[2];
  private final double[] way = new double[2];
  private final double[] k = new double[8];
  private double strength;

  /**
   * A line from a place.
   *
   * @param field what is followed
   * @param u where it begins [m]
   * @param v where it begins
   * @param longest step [m]
   * @param forwards along the field, or against it
   * @param weakest field that still has a direction [T]
   */
  public LineStepper(
      PlaneField field, double u, double v, double longest, boolean forwards, double weakest) {
    this.field = field;
    this.longest = longest;
    this.sign = forwards ? 1 : -1;
    this.weakest = weakest;
    place[0] = u;
    place[1] = v;
    if (!direction(u, v, way, 0)) {
      strength = 0;
    }
  }

  /** First coordinate of the last place reached [m]. */
  public double u() {
    return place[0];
  }

  /** Second coordinate of it [m]. */
  public double v() {
    return place[1];
  }

  /** First component of the direction of travel there. */
  public double du() {
    return way[0];
  }

  /** Second component of it. */
  public double dv() {
    return way[1];
  }

  /** Strength of the field there [T]; 0 where it has no direction. */
  public double strength() {
    return strength;
  }

  /** One step on; false where the field has no direction any more, and nothing was moved. */
  public boolean step() {
    double before = strength;
    if (before == 0) {
      return false;
    }
    for (double h = longest; h > longest * LEAST_SHARE; h /= 2) {
      if (tried(h, COSINE_OF_TURN)) {
        return true;
      }
    }
    // At a magnet's wall the field has a kink, which no step is short enough for.
    return tried(longest * LEAST_SHARE, -1);
  }

  private boolean tried(double h, double leastCosine) {
    k[0] = way[0];
    k[1] = way[1];
    if (!direction(place[0] + h / 2 * k[0], place[1] + h / 2 * k[1], k, 2)
        || !direction(place[0] + h / 2 * k[2], place[1] + h / 2 * k[3], k, 4)
        || !direction(place[0] + h * k[4], place[1] + h * k[5], k, 6)) {
      return false;
    }
    double u = place[0] + h / 6 * (k[0] + 2 * k[2] + 2 * k[4] + k[6]);
    double v = place[1] + h / 6 * (k[1] + 2 * k[3] + 2 * k[5] + k[7]);
    double wayU = way[0];
    double wayV = way[1];
    if (!direction(u, v, way, 0) || way[0] * wayU + way[1] * wayV < leastCosine) {
      way[0] = wayU;
      way[1] = wayV;
      return false;
    }
    place[0] = u;
    place[1] = v;
    return true;
  }

  private boolean direction(double u, double v, double[] into, int at) {
    field.at(u, v, f);
    double size = Math.hypot(f[0], f[1]);
    if (!(size > weakest)) {
      return false;
    }
    into[at] = sign * f[0] / size;
    into[at + 1] = sign * f[1] / size;
    strength = size;
    return true;
  }
}
