package lodeswing.core.magnet;

import static lodeswing.core.magnet.Work.FIELD;
import static lodeswing.core.magnet.Work.POSE;

/** A disc or ring by its {@link AxialTable}; one for all sources of its kind. */
final class TabulatedKernel implements SourceKernel {

  private static final double END = AxialTable.REACH * AxialTable.FINENESS;

  private final Magnet magnet;
  private final double square;
  private final int[] offset;
  private final double[] table;

  TabulatedKernel(Magnet magnet) {
    AxialTable made = new AxialTable(magnet);
    this.magnet = magnet;
    this.square = made.square();
    this.offset = made.offset();
    this.table = made.coefficients();
  }

  @Override
  public Magnet magnet() {
    return magnet;
  }

  @Override
  public double edgeDistance(double x, double y, double z) {
    return SourceEdge.distance(magnet, x, y, z);
  }

  @Override
  public void field(double x, double y, double z, double[] work) {
    magnet.field(x, y, z, work);
  }

  /** Place of the cell's coefficients, or -1. */
  private int cell(double s, double w) {
    if (!(s < END)) {
      return -1;
    }
    int column = Math.min((int) w, AxialTable.FINENESS - 1);
    return offset[((int) s) * AxialTable.FINENESS + column];
  }

  private double potential(double x, double y, double z) {
    double inverse = 1 / (x * x + y * y + z * z);
    double s = square * inverse * AxialTable.FINENESS;
    double w = z * z * inverse * AxialTable.FINENESS;
    int at = cell(s, w);
    if (at < 0) {
      return magnet.potential(x, y, z);
    }
    double p = 2 * (s - (int) s) - 1;
    double q = 2 * (w - Math.min((int) w, AxialTable.FINENESS - 1)) - 1;
    double g = row(at + 30, q);
    g = g * p + row(at + 24, q);
    g = g * p + row(at + 18, q);
    g = g * p + row(at + 12, q);
    g = g * p + row(at + 6, q);
    g = g * p + row(at, q);
    return z * inverse * Math.sqrt(inverse) * g;
  }

  private double row(int at, double q) {
    double[] c = table;
    double q2 = q * q;
    double high = c[at + 4] + q * c[at + 5];
    double middle = c[at + 2] + q * c[at + 3];
    return c[at] + q * c[at + 1] + q2 * (middle + q2 * high);
  }

  private double slope(int at, double q) {
    double[] c = table;
    double q2 = q * q;
    double high = 5 * c[at + 5] * q2 + 3 * c[at + 3];
    return c[at + 1] + q2 * high + q * (2 * c[at + 2] + 4 * c[at + 4] * q2);
  }

  /** Potential, and flux density to the first three places of the array. */
  private double potentialAndField(double x, double y, double z, double[] work) {
    double inverse = 1 / (x * x + y * y + z * z);
    double s = square * inverse * AxialTable.FINENESS;
    double w = z * z * inverse * AxialTable.FINENESS;
    int at = cell(s, w);
    if (at < 0) {
      magnet.field(x, y, z, work);
      return magnet.potential(x, y, z);
    }
    double p = 2 * (s - (int) s) - 1;
    double q = 2 * (w - Math.min((int) w, AxialTable.FINENESS - 1)) - 1;
    double g = 0;
    double gs = 0;
    double gw = 0;
    for (int row = at + 30; row >= at; row -= 6) {
      gs = gs * p + g;
      g = g * p + row(row, q);
      gw = gw * p + slope(row, q);
    }
    // Across the cell p and q run through 2, so that d/ds = 2 FINENESS d/dp; s and w here carry
    // one FINENESS already.
    double cube = inverse * Math.sqrt(inverse);
    double across = -3 * g - 4 * (s * gs + w * gw);
    double perLength = -MagneticConstant.MU_0 * cube;
    double sideways = perLength * z * inverse * across;
    work[FIELD] = sideways * x;
    work[FIELD + 1] = sideways * y;
    work[FIELD + 2] = perLength * (g + z * z * inverse * across + 4 * w * gw);
    return z * cube * g;
  }

  @Override
  public double faceIntegral(FaceRule rule, double half, double[] work) {
    double[] us = rule.u();
    double[] vs = rule.v();
    double[] lifts = rule.lift();
    double[] weights = rule.weight();
    double total = 0;
    for (int side = -1; side <= 1; side += 2) {
      double high = side * half;
      double x0 = work[POSE];
      double y0 = work[POSE + 1];
      double z0 = work[POSE + 2];
      double tx = high * work[POSE + 9];
      double ty = high * work[POSE + 10];
      double tz = high * work[POSE + 11];
      double ux = work[POSE + 3];
      double uy = work[POSE + 4];
      double uz = work[POSE + 5];
      double vx = work[POSE + 6];
      double vy = work[POSE + 7];
      double vz = work[POSE + 8];
      double sum = 0;
      for (int i = 0; i < weights.length; i++) {
        double u = us[i];
        double v = vs[i];
        double s = lifts[i];
        sum +=
            weights[i]
                * potential(
                    x0 + u * ux + v * vx + s * tx,
                    y0 + u * uy + v * vy + s * ty,
                    z0 + u * uz + v * vz + s * tz);
      }
      total += side * sum;
    }
    return total;
  }

  @Override
  public double faceIntegralAndLoad(FaceRule rule, double half, double[] work) {
    FaceLoad.clear(work);
    double[] us = rule.u();
    double[] vs = rule.v();
    double[] lifts = rule.lift();
    double[] weights = rule.weight();
    double total = 0;
    for (int side = -1; side <= 1; side += 2) {
      for (int i = 0; i < weights.length; i++) {
        double u = us[i];
        double v = vs[i];
        double s = side * half * lifts[i];
        double dx = u * work[POSE + 3] + v * work[POSE + 6] + s * work[POSE + 9];
        double dy = u * work[POSE + 4] + v * work[POSE + 7] + s * work[POSE + 10];
        double dz = u * work[POSE + 5] + v * work[POSE + 8] + s * work[POSE + 11];
        double weight = side * weights[i];
        total +=
            weight
                * potentialAndField(
                    work[POSE] + dx, work[POSE + 1] + dy, work[POSE + 2] + dz, work);
        FaceLoad.add(dx, dy, dz, weight, work);
      }
    }
    return total;
  }
}
