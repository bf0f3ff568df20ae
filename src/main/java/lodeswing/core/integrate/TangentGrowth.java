package lodeswing.core.integrate;

/**
 * Growth of one infinitesimal shift beside a path: the largest Lyapunov exponent, over a finite
 * time or in the limit of a long one.
 *
 * <p>1. The shift u is carried by the variational equation u' = J(t) u of a flow, or by u -> J u of
 * a map, with the Jacobian J along the path.
 *
 * <p>2. After every step u is brought back to length 1 and the logarithm of the factor is summed,
 * so that no length runs out of the range of numbers; the exponent is the sum over the time.
 *
 * <p>Source: G. Benettin, L. Galgani, A. Giorgilli, J.-M. Strelcyn, Lyapunov characteristic
 * exponents for smooth dynamical systems and for Hamiltonian systems, Meccanica 15 (1980) 9 and 21,
 * for one vector. Knows nothing of pendulums. Not safe for several threads.
 */
public final class TangentGrowth {

  private final int n;
  private final double[] direction;
  private final double[] stage;
  private final double[] slope;
  private final double[] sum;
  private double logGrowth;
  private double time;

  /**
   * Begins with a shift, of which only the direction counts.
   *
   * @param shift any number of components, not all 0
   */
  public TangentGrowth(double[] shift) {
    n = shift.length;
    direction = shift.clone();
    stage = new double[n];
    slope = new double[n];
    sum = new double[n];
    normalise();
    logGrowth = 0;
  }

  /**
   * Goes on by one step of a flow, by the classical Runge-Kutta scheme of order four.
   *
   * @param first Jacobian at the step's begin, row by row, n times n
   * @param middle Jacobian in its middle
   * @param last Jacobian at its end
   * @param length its length in time
   */
  public void flow(double[] first, double[] middle, double[] last, double length) {
    System.arraycopy(direction, 0, stage, 0, n);
    System.arraycopy(direction, 0, sum, 0, n);
    stage(first, length / 6, length / 2);
    stage(middle, length / 3, length / 2);
    stage(middle, length / 3, length);
    stage(last, length / 6, 0);
    System.arraycopy(sum, 0, direction, 0, n);
    time += length;
    normalise();
  }

  /**
   * Goes on by one step of a map, which takes a time of 1.
   *
   * @param jacobian of the map, row by row, n times n
   */
  public void map(double[] jacobian) {
    times(jacobian, direction);
    System.arraycopy(slope, 0, direction, 0, n);
    time += 1;
    normalise();
  }

  /** One slope, its part of the step, and the place of the next one. */
  private void stage(double[] jacobian, double weight, double reach) {
    times(jacobian, stage);
    for (int i = 0; i < n; i++) {
      sum[i] += weight * slope[i];
      stage[i] = direction[i] + reach * slope[i];
    }
  }

  private void times(double[] matrix, double[] vector) {
    for (int i = 0; i < n; i++) {
      double product = 0;
      for (int j = 0; j < n; j++) {
        product += matrix[i * n + j] * vector[j];
      }
      slope[i] = product;
    }
  }

  private void normalise() {
    double squares = 0;
    for (double component : direction) {
      squares += component * component;
    }
    double length = Math.sqrt(squares);
    if (!(length > 0)) {
      throw new IllegalArgumentException("a shift has a direction");
    }
    for (int i = 0; i < n; i++) {
      direction[i] /= length;
    }
    logGrowth += Math.log(length);
  }

  /** Natural logarithm of the factor by which the shift has grown since the begin. */
  public double logGrowth() {
    return logGrowth;
  }

  /** Time since the begin. */
  public double time() {
    return time;
  }

  /** Growth a unit of time so far, the finite-time Lyapunov exponent; NaN at the begin. */
  public double exponent() {
    return logGrowth / time;
  }

  /** Writes the shift's direction now, of length 1. */
  public void direction(double[] out) {
    System.arraycopy(direction, 0, out, 0, n);
  }
}
