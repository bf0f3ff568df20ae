package lodeswing.core.magnet;

import java.util.Arrays;

/**
 * Potential of a disc or ring around it as piecewise polynomials.
 *
 * <p>1. With r the distance from the centre, a the radius of the circumscribed sphere, s = a^2/r^2
 * and w = z^2/r^2, the potential is z/r^3 G(s, w), where G is even in everything and analytic
 * outside the material as far as infinity, s = 0, where it is the dipole's m/(4 pi). So one grid of
 * square cells holds all space up to r = a/2, without a root for the distance from the axis.
 *
 * <p>2. Each cell interpolates G at 6 x 6 Chebyshev points and is checked against the closed form
 * on a grid of other points, near its corners too. A cell that is off by more than 5e-12 of the
 * dipole's strength, since the material or its edge is too near, is left out; there the caller asks
 * the closed form.
 *
 * <p>Method: tensor Chebyshev interpolation, L. N. Trefethen, Approximation Theory and
 * Approximation Practice (2013), chapters 2 to 8.
 */
final class AxialTable {

  static final int POINTS = 6;
  static final int CELL = POINTS * POINTS;

  /** Cells a unit of s, and of w. */
  static final int FINENESS = 24;

  /** Where s ends: half the radius of the circumscribed sphere. */
  static final int REACH = 4;

  private static final double TOLERANCE = 5e-12;
  private static final double[] CHECKS = {-0.999, -0.55, 0.07, 0.66, 0.999};

  private final Magnet magnet;
  private final double square;
  private final int[] offset = new int[REACH * FINENESS * FINENESS];
  private final double[] coefficients;

  AxialTable(Magnet magnet) {
    this.magnet = magnet;
    double half = magnet.halfHeight();
    this.square = magnet.planRadius() * magnet.planRadius() + half * half;
    double[] all = new double[offset.length * CELL];
    double[] cell = new double[CELL];
    double scale = magnet.moment() / (4 * Math.PI);
    int used = 0;
    for (int i = 0; i < offset.length; i++) {
      fit(i / FINENESS, i % FINENESS, cell);
      if (holds(i / FINENESS, i % FINENESS, cell, TOLERANCE * scale)) {
        offset[i] = used;
        System.arraycopy(cell, 0, all, used, CELL);
        used += CELL;
      } else {
        offset[i] = -1;
      }
    }
    this.coefficients = Arrays.copyOf(all, used);
  }

  /** a^2 [m^2]. */
  double square() {
    return square;
  }

  /** Where each cell's coefficients begin, row by row of w within s; -1 where it has none. */
  int[] offset() {
    return offset;
  }

  /** Powers of w fastest, then of s, both from -1 to 1 across the cell. */
  double[] coefficients() {
    return coefficients;
  }

  private double reduced(double s, double w) {
    double r = Math.sqrt(square / s);
    double cosine = Math.sqrt(w);
    double rho = r * Math.sqrt(1 - cosine * cosine);
    double z = r * cosine;
    return magnet.potential(rho, 0, z) * r * r / cosine;
  }

  private void fit(int row, int column, double[] cell) {
    double[] values = new double[CELL];
    for (int i = 0; i < POINTS; i++) {
      for (int j = 0; j < POINTS; j++) {
        values[i * POINTS + j] =
            reduced(
                (row + 0.5 + 0.5 * ChebyshevPoints.at(i)) / FINENESS,
                (column + 0.5 + 0.5 * ChebyshevPoints.at(j)) / FINENESS);
      }
    }
    double[] half = new double[CELL];
    for (int i = 0; i < POINTS; i++) {
      for (int k = 0; k < POINTS; k++) {
        double sum = 0;
        for (int j = 0; j < POINTS; j++) {
          sum += ChebyshevPoints.monomial(k, j) * values[i * POINTS + j];
        }
        half[i * POINTS + k] = sum;
      }
    }
    for (int k = 0; k < POINTS; k++) {
      for (int l = 0; l < POINTS; l++) {
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
          sum += ChebyshevPoints.monomial(l, i) * half[i * POINTS + k];
        }
        cell[l * POINTS + k] = sum;
      }
    }
  }

  private boolean holds(int row, int column, double[] cell, double tolerance) {
    for (double p : CHECKS) {
      for (double q : CHECKS) {
        double exact =
            reduced((row + 0.5 + 0.5 * p) / FINENESS, (column + 0.5 + 0.5 * q) / FINENESS);
        if (!(Math.abs(value(cell, p, q) - exact) <= tolerance)) {
          return false;
        }
      }
    }
    return true;
  }

  private static double value(double[] cell, double p, double q) {
    double sum = 0;
    for (int i = POINTS - 1; i >= 0; i--) {
      double row = 0;
      for (int j = POINTS - 1; j >= 0; j--) {
        row = row * q + cell[i * POINTS + j];
      }
      sum = sum * p + row;
    }
    return sum;
  }
}
