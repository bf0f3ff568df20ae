package lodeswing.core.magnet;

/** Interpolation at six Chebyshev points of (-1, 1), in powers of the variable. */
final class ChebyshevPoints {

  private static final int N = AxialTable.POINTS;
  private static final double[] POINTS = points();
  private static final double[][] MONOMIAL = monomials();

  private ChebyshevPoints() {}

  static double at(int i) {
    return POINTS[i];
  }

  /** What the value at point i adds to the coefficient of the given power. */
  static double monomial(int power, int i) {
    return MONOMIAL[power][i];
  }

  private static double[] points() {
    double[] points = new double[N];
    for (int i = 0; i < N; i++) {
      points[i] = StrictMath.cos(Math.PI * (2 * i + 1) / (2 * N));
    }
    return points;
  }

  /** Each point's Lagrange polynomial, multiplied out. */
  private static double[][] monomials() {
    double[][] result = new double[N][N];
    for (int i = 0; i < N; i++) {
      double[] polynomial = new double[N];
      polynomial[0] = 1;
      for (int j = 0; j < N; j++) {
        if (j == i) {
          continue;
        }
        double scale = 1 / (POINTS[i] - POINTS[j]);
        for (int k = N - 1; k >= 0; k--) {
          double lower = k > 0 ? polynomial[k - 1] : 0;
          polynomial[k] = scale * (lower - POINTS[j] * polynomial[k]);
        }
      }
      for (int k = 0; k < N; k++) {
        result[k][i] = polynomial[k];
      }
    }
    return result;
  }
}
