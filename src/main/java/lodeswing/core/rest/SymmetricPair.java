package lodeswing.core.rest;

/**
 * Eigenvalues and unit eigenvectors of a symmetric matrix of two rows; the vector of the higher
 * value is (-low1, low0).
 *
 * @param low lower eigenvalue
 * @param high higher eigenvalue
 * @param low0 eigenvector of the lower value
 * @param low1 eigenvector of the lower value
 */
record SymmetricPair(double low, double high, double low0, double low1) {

  /** Solves {{a, b}, {b, c}} by one Jacobi rotation (Jacobi 1846), exact for two rows. */
  static SymmetricPair of(double a, double b, double c) {
    double mean = 0.5 * (a + c);
    double half = 0.5 * (a - c);
    double radius = Math.hypot(half, b);
    // direction of the higher value is at half the angle of (half, b)
    double angle = 0.5 * Math.atan2(b, half);
    return new SymmetricPair(mean - radius, mean + radius, -Math.sin(angle), Math.cos(angle));
  }
}
