package lodeswing.core.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** The largest Lyapunov exponent against systems whose exponent is published or exact. */
class TangentGrowthTest {

  private static final double SIGMA = 10;
  private static final double RHO = 28;
  private static final double BETA = 8.0 / 3;

  /**
   * Lorenz 1963 with sigma 10, rho 28, beta 8/3: largest exponent 0.9056 (J. C. Sprott, Chaos and
   * Time-Series Analysis, 2003, appendix A; D. Viswanath, thesis, Cornell 1998, has 0.90566).
   * Tolerance: over 20,000 units of time finite-time exponents of ten such runs spread by 0.0016
   * (standard deviation), so that 0.005 is three of them.
   */
  @Test
  void lorenzsFlow() {
    double h = 0.005;
    double[] state = {1, 1, 20};
    for (int i = 0; i < 20_000; i++) {
      lorenzStep(state, h);
    }
    TangentGrowth growth = new TangentGrowth(new double[] {1, 0, 0});
    double[] first = new double[9];
    double[] middle = new double[9];
    double[] last = new double[9];
    for (int i = 0; i < 4_000_000; i++) {
      lorenzJacobian(state, first);
      lorenzStep(state, h / 2);
      lorenzJacobian(state, middle);
      lorenzStep(state, h / 2);
      lorenzJacobian(state, last);
      growth.flow(first, middle, last, h);
    }
    assertEquals(20_000, growth.time(), 1e-3);
    assertEquals(0.9056, growth.exponent(), 0.005);
  }

  private static void lorenz(double[] s, double[] out) {
    out[0] = SIGMA * (s[1] - s[0]);
    out[1] = s[0] * (RHO - s[2]) - s[1];
    out[2] = s[0] * s[1] - BETA * s[2];
  }

  private static void lorenzJacobian(double[] s, double[] out) {
    out[0] = -SIGMA;
    out[1] = SIGMA;
    out[2] = 0;
    out[3] = RHO - s[2];
    out[4] = -1;
    out[5] = -s[0];
    out[6] = s[1];
    out[7] = s[0];
    out[8] = -BETA;
  }

  private static void lorenzStep(double[] s, double h) {
    double[] k = new double[3];
    double[] at = s.clone();
    double[] sum = s.clone();
    double[] reach = {h / 2, h / 2, h, 0};
    double[] weight = {h / 6, h / 3, h / 3, h / 6};
    for (int stage = 0; stage < 4; stage++) {
      lorenz(at, k);
      for (int i = 0; i < 3; i++) {
        sum[i] += weight[stage] * k[i];
        at[i] = s[i] + reach[stage] * k[i];
      }
    }
    System.arraycopy(sum, 0, s, 0, 3);
  }

  /**
   * Henon's map with a 1.4 and b 0.3: largest exponent 0.419 (J. C. Sprott, Chaos and Time-Series
   * Analysis, 2003, appendix A: 0.41922). Tolerance: half the last digit.
   */
  @Test
  void henonsMap() {
    double x = 0.1;
    double y = 0.1;
    TangentGrowth growth = new TangentGrowth(new double[] {1, 1});
    for (int i = 0; i < 2_000_000; i++) {
      growth.map(new double[] {-2.8 * x, 1, 0.3, 0});
      double next = 1 - 1.4 * x * x + y;
      y = 0.3 * x;
      x = next;
    }
    assertEquals(2_000_000, growth.time(), 0);
    assertEquals(0.419, growth.exponent(), 5e-4);
  }

  /** u' = diag(0.3, -2) u: the exponent is 0.3 whatever the direction but the second axis. */
  @Test
  void constantMatrixHasItsGreatestEigenvalue() {
    double[] j = {0.3, 0, 0, -2};
    TangentGrowth growth = new TangentGrowth(new double[] {3, 0});
    TangentGrowth across = new TangentGrowth(new double[] {1e-30, 1});
    for (int i = 0; i < 100_000; i++) {
      growth.flow(j, j, j, 0.01);
      across.flow(j, j, j, 0.01);
    }
    assertEquals(0.3, growth.exponent(), 1e-11);
    // the logarithm of 1e-30 over a time of 1,000
    assertEquals(0.3 + Math.log(1e-30) / 1_000, across.exponent(), 1e-6);
    double[] direction = new double[2];
    across.direction(direction);
    assertEquals(1, Math.abs(direction[0]), 1e-12);
  }

  @Test
  void noDirectionIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new TangentGrowth(new double[3]));
    assertThrows(
        IllegalArgumentException.class, () -> new TangentGrowth(new double[] {Double.NaN, 1}));
  }
}
