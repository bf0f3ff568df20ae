package lodeswing.analysis.field;

/** Three equations, and the solid angle of three directions. */
final class Linear {

  private Linear() {}

  static double determinant(double[][] m) {
    return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
        - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
        + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
  }

  /** The solution by Cramer's rule; not finite where the matrix is singular. */
  static double[] solved(double[][] m, double[] right) {
    double det = determinant(m);
    double[] solution = new double[3];
    for (int j = 0; j < 3; j++) {
      double[][] replaced = {m[0].clone(), m[1].clone(), m[2].clone()};
      for (int i = 0; i < 3; i++) {
        replaced[i][j] = right[i];
      }
      solution[j] = determinant(replaced) / det;
    }
    return solution;
  }

  /** Solid angle of the triangle of three directions, signed. */
  static double solidAngle(double[] a, double[] b, double[] c) {
    double la = length(a);
    double lb = length(b);
    double lc = length(c);
    double triple = determinant(new double[][] {a, b, c});
    double divisor = la * lb * lc + dot(a, b) * lc + dot(a, c) * lb + dot(b, c) * la;
    return 2 * Math.atan2(triple, divisor);
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double length(double[] a) {
    return Math.sqrt(dot(a, a));
  }
}
