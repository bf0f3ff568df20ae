package lodeswing.core.motion;

import java.util.stream.IntStream;

/**
 * The points cos(pi k/N) of one degree, ends included, and what turns values at a product of two
 * such sets into Chebyshev coefficients.
 *
 * <p>The points of a degree hold those of each of its divisors, so that a fit of a higher degree
 * asks its function only at the new ones.
 *
 * <p>Source: L. N. Trefethen, Approximation Theory and Approximation Practice (2013), chapters 2
 * and 3, from memory (Chebyshev points of the second kind and their discrete cosine sums).
 */
final class ChebyshevGrid {

  private static final int STEP = 8;
  private static final ChebyshevGrid[] GRIDS =
      IntStream.rangeClosed(1, 6)
          .mapToObj(k -> new ChebyshevGrid(k * STEP))
          .toArray(ChebyshevGrid[]::new);

  private final int degree;
  private final double[] nodes;
  private final double[] sums;

  private ChebyshevGrid(int degree) {
    this.degree = degree;
    int n = degree + 1;
    nodes = new double[n];
    sums = new double[n * n];
    for (int k = 0; k < n; k++) {
      nodes[k] = StrictMath.cos(Math.PI * k / degree);
      for (int p = 0; p < n; p++) {
        double ends = (k % degree == 0 ? 0.5 : 1) * (p % degree == 0 ? 0.5 : 1);
        sums[p * n + k] =
            2 * ends / degree * StrictMath.cos(Math.PI * ((p * k) % (2 * degree)) / degree);
      }
    }
  }

  /** The grid of a degree: a multiple of 8 up to 48. */
  static ChebyshevGrid of(int degree) {
    return GRIDS[degree / STEP - 1];
  }

  /** The k-th point, from 1 down to -1. */
  double node(int k) {
    return nodes[k];
  }

  /**
   * Coefficients of T_p(a) T_q(b), p major, of the polynomial through values at the product of the
   * points.
   */
  double[] coefficients(double[] values) {
    int n = degree + 1;
    double[] half = new double[n * n];
    for (int p = 0; p < n; p++) {
      for (int k = 0; k < n; k++) {
        double factor = sums[p * n + k];
        for (int l = 0; l < n; l++) {
          half[p * n + l] += factor * values[k * n + l];
        }
      }
    }
    double[] out = new double[n * n];
    for (int p = 0; p < n; p++) {
      for (int q = 0; q < n; q++) {
        double sum = 0;
        for (int l = 0; l < n; l++) {
          sum += sums[q * n + l] * half[p * n + l];
        }
        out[p * n + q] = sum;
      }
    }
    return out;
  }
}
