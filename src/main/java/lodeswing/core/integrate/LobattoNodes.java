package lodeswing.core.integrate;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Lobatto's eight points on 0..1 and the integrals of their Lagrange polynomials.
 *
 * <p>The inner points are the zeros of P_7'(2c - 1). Abramowitz and Stegun, Handbook of
 * Mathematical Functions (1964), 25.4.32.
 */
final class LobattoNodes {

  /** Number of points, both ends included. */
  static final int COUNT = 8;

  /** The points c_i. */
  static final double[] C = nodes();

  /** 1 / prod (c_j - c_k), which are the weights of the highest coefficient too. */
  static final double[] WEIGHT = weights();

  /** Speed: integral of l_j from 0 to c_i. */
  static final double[][] SPEED = new double[COUNT][COUNT];

  /** Place: integral of (c_i - t) l_j(t) from 0 to c_i. */
  static final double[][] PLACE = new double[COUNT][COUNT];

  /** Coefficients of l_j in powers of u = 2c - 1. */
  static final double[][] POWERS = new double[COUNT][];

  /** Legendre coefficients by the quadrature: w_j P_k(u_j) over the squared norm. */
  static final double[][] LEGENDRE = new double[COUNT][COUNT];

  static {
    // Eight Gauss points integrate the products, of degree 8, exactly.
    GaussIntegratorFactory factory = new GaussIntegratorFactory();
    for (int i = 1; i < COUNT; i++) {
      double c = C[i];
      GaussIntegrator gauss = factory.legendre(8, 0, c);
      for (int j = 0; j < COUNT; j++) {
        int column = j;
        SPEED[i][j] = gauss.integrate(t -> lagrange(column, t));
        PLACE[i][j] = gauss.integrate(t -> (c - t) * lagrange(column, t));
      }
    }
    for (int j = 0; j < COUNT; j++) {
      POWERS[j] = powers(j);
      legendre(j);
    }
  }

  private LobattoNodes() {}

  /** Lagrange polynomial of point j. */
  static double lagrange(int j, double t) {
    double product = WEIGHT[j];
    for (int k = 0; k < COUNT; k++) {
      product *= k == j ? 1 : t - C[k];
    }
    return product;
  }

  private static void legendre(int j) {
    double u = 2 * C[j] - 1;
    double weight = 2 * SPEED[COUNT - 1][j];
    double before = 0;
    double p = 1;
    for (int k = 0; k < COUNT; k++) {
      // P_(n-1)^2 sums to 2/(n-1) by these points, not to 2/(2n-1).
      double norm = k == COUNT - 1 ? 0.5 * k : 0.5 * (2 * k + 1);
      LEGENDRE[k][j] = norm * weight * p;
      double next = ((2 * k + 1) * u * p - k * before) / (k + 1);
      before = p;
      p = next;
    }
  }

  private static double[] powers(int j) {
    double[] p = new double[COUNT];
    p[0] = 1;
    int degree = 0;
    for (int k = 0; k < COUNT; k++) {
      if (k == j) {
        continue;
      }
      double scale = 1 / (2 * (C[j] - C[k]));
      double zero = 2 * C[k] - 1;
      degree++;
      for (int m = degree; m >= 0; m--) {
        double lower = m > 0 ? p[m - 1] : 0;
        p[m] = scale * (lower - zero * p[m]);
      }
    }
    return p;
  }

  private static double[] weights() {
    double[] weights = new double[COUNT];
    for (int j = 0; j < COUNT; j++) {
      double product = 1;
      for (int k = 0; k < COUNT; k++) {
        product *= k == j ? 1 : C[j] - C[k];
      }
      weights[j] = 1 / product;
    }
    return weights;
  }

  private static double[] nodes() {
    double[] c = new double[COUNT];
    c[COUNT - 1] = 1;
    for (int i = 1; i < COUNT - 1; i++) {
      double x = -StrictMath.cos(Math.PI * i / (COUNT - 1));
      for (int n = 0; n < 50; n++) {
        x -= step(x);
      }
      c[i] = 0.5 * (x + 1);
    }
    return c;
  }

  /** Newton's step P'/P'' for the degree COUNT - 1, by the recurrences of P and P'. */
  private static double step(double x) {
    int n = COUNT - 1;
    double before = 1;
    double p = x;
    for (int k = 2; k <= n; k++) {
      double next = ((2 * k - 1) * x * p - (k - 1) * before) / k;
      before = p;
      p = next;
    }
    // (1 - x^2) P' = n (P_(n-1) - x P_n);  (1 - x^2) P'' = 2x P' - n (n+1) P_n.
    double slope = n * (before - x * p) / (1 - x * x);
    double bend = (2 * x * slope - n * (n + 1) * p) / (1 - x * x);
    return slope / bend;
  }
}
