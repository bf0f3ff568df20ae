package lodeswing.core.integrate;

import lodeswing.core.motion.Motion;

/**
 * How errors grow along a path, from the variational equation beside the motion.
 *
 * <p>1. Each step's transition matrix Phi solves delta' = J(t) delta by one classical Runge-Kutta
 * step with J at both ends and in the middle. Speeds are weighted by the small-swing rate, so that
 * all four components are lengths in q.
 *
 * <p>2. Errors are born all along: the covariance P of the error is carried with P_next = Phi P
 * Phi' + s^2 I, where s is the step's own error (the integrator's local estimate, and the table's
 * error of acceleration over the step). Carrying the matrix and not the product of the steps' norms
 * keeps the stretching's direction: a turning that stretches nothing adds nothing.
 *
 * <p>3. Beside it the whole matrix from the start is kept, for an error that the hand makes once.
 *
 * <p>Source of the covariance's law: R. E. Kalman, A new approach to linear filtering and
 * prediction problems, J. Basic Eng. 82 (1960) 35, equation (24), its number from memory. Not safe
 * for several threads.
 */
public final class ErrorGrowth {

  private static final int N = 4;

  private final Motion motion;
  private final double rate;
  private final double accelerationError;
  private final double[] covariance = new double[N * N];
  private final double[] sinceStart = new double[N * N];
  private final double[] first = new double[8];
  private final double[] middle = new double[8];
  private final double[] last = new double[8];
  private final double[] transition = new double[N * N];
  private final double[] scratch = new double[N * N];
  private final double[] stage = new double[N * N];
  private double logScale;

  /**
   * Begins at the release with no error.
   *
   * @param motion what moves
   * @param accelerationError greatest error of an acceleration by tables [q per time squared]
   */
  public ErrorGrowth(Motion motion, double accelerationError) {
    this.motion = motion;
    this.rate = motion.naturalRate();
    this.accelerationError = accelerationError;
    identity(sinceStart);
  }

  /**
   * Goes on by one step.
   *
   * @param begin state at its begin
   * @param half state in its middle
   * @param end state at its end
   * @param length its length in time
   * @param localError the integrator's estimate of the error made in it, in q
   */
  public void advance(
      double[] begin, double[] half, double[] end, double length, double localError) {
    motion.jacobian(begin[0], begin[1], begin[2], begin[3], first);
    motion.jacobian(half[0], half[1], half[2], half[3], middle);
    motion.jacobian(end[0], end[1], end[2], end[3], last);
    step(length);
    multiply(transition, covariance, scratch);
    multiplyTransposed(scratch, transition, covariance);
    double born = localError + accelerationError * length / rate;
    for (int i = 0; i < N; i++) {
      covariance[i * N + i] += born * born;
    }
    multiply(transition, sinceStart, scratch);
    System.arraycopy(scratch, 0, sinceStart, 0, N * N);
    rescale();
  }

  /** Size of the error of position that has grown so far, in q: the longest axis of its ellipse. */
  public double positionError() {
    return Math.sqrt(greatestEigenvalue(covariance[0], covariance[1], covariance[N + 1]));
  }

  /** Natural logarithm of the greatest stretching of a shift of the release by position alone. */
  public double logStretching() {
    double a = sinceStart[0];
    double b = sinceStart[1];
    double c = sinceStart[N];
    double d = sinceStart[N + 1];
    double greatest = greatestEigenvalue(a * a + c * c, a * b + c * d, b * b + d * d);
    return logScale + 0.5 * Math.log(greatest);
  }

  /**
   * Writes the covariance of the position [q^2] that an error of the release has become.
   *
   * @param release covariance of that error in {q0, q1, v0, v1}, speeds over the small-swing rate:
   *     16 numbers, row by row
   * @param out receives the variance of q0, the covariance, the variance of q1
   */
  public void positionCovariance(double[] release, double[] out) {
    double a = 0;
    double b = 0;
    double d = 0;
    for (int k = 0; k < N; k++) {
      for (int l = 0; l < N; l++) {
        double both = release[k * N + l];
        a += sinceStart[k] * both * sinceStart[l];
        b += sinceStart[k] * both * sinceStart[N + l];
        d += sinceStart[N + k] * both * sinceStart[N + l];
      }
    }
    double scale = Math.exp(2 * logScale);
    out[0] = scale * a;
    out[1] = scale * b;
    out[2] = scale * d;
  }

  /** The larger eigenvalue of the symmetric matrix {{a, b}, {b, d}}. */
  private static double greatestEigenvalue(double a, double b, double d) {
    double half = 0.5 * (a - d);
    return 0.5 * (a + d) + Math.sqrt(half * half + b * b);
  }

  private void step(double h) {
    identity(transition);
    double[] sum = new double[N * N];
    derivative(first, transition, scratch);
    accumulate(sum, scratch, h / 6);
    offset(scratch, h / 2);
    derivative(middle, stage, scratch);
    accumulate(sum, scratch, h / 3);
    offset(scratch, h / 2);
    derivative(middle, stage, scratch);
    accumulate(sum, scratch, h / 3);
    offset(scratch, h);
    derivative(last, stage, scratch);
    accumulate(sum, scratch, h / 6);
    accumulate(transition, sum, 1);
  }

  /** Writes transition + h * slope into the stage. */
  private void offset(double[] slope, double h) {
    for (int i = 0; i < N * N; i++) {
      stage[i] = transition[i] + h * slope[i];
    }
  }

  private static void accumulate(double[] into, double[] from, double factor) {
    for (int i = 0; i < N * N; i++) {
      into[i] += factor * from[i];
    }
  }

  /** Slope of the weighted matrix: rows of q take rate times those of v / rate. */
  private void derivative(double[] jacobian, double[] matrix, double[] slope) {
    for (int column = 0; column < N; column++) {
      double q0 = matrix[column];
      double q1 = matrix[N + column];
      double v0 = matrix[2 * N + column];
      double v1 = matrix[3 * N + column];
      slope[column] = rate * v0;
      slope[N + column] = rate * v1;
      slope[2 * N + column] =
          (jacobian[0] * q0 + jacobian[1] * q1) / rate + jacobian[2] * v0 + jacobian[3] * v1;
      slope[3 * N + column] =
          (jacobian[4] * q0 + jacobian[5] * q1) / rate + jacobian[6] * v0 + jacobian[7] * v1;
    }
  }

  private void rescale() {
    double greatest = 0;
    for (double element : sinceStart) {
      greatest = Math.max(greatest, Math.abs(element));
    }
    if (greatest > 1e100 || (greatest < 1e-100 && greatest > 0)) {
      for (int i = 0; i < N * N; i++) {
        sinceStart[i] /= greatest;
      }
      logScale += Math.log(greatest);
    }
    for (int i = 0; i < N * N; i++) {
      // Beyond any use as an error; kept finite so that later figures stay numbers.
      covariance[i] = Math.max(-1e200, Math.min(1e200, covariance[i]));
    }
  }

  private static void identity(double[] matrix) {
    for (int i = 0; i < N * N; i++) {
      matrix[i] = i % (N + 1) == 0 ? 1 : 0;
    }
  }

  private static void multiply(double[] a, double[] b, double[] out) {
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < N; j++) {
        double sum = 0;
        for (int k = 0; k < N; k++) {
          sum += a[i * N + k] * b[k * N + j];
        }
        out[i * N + j] = sum;
      }
    }
  }

  private static void multiplyTransposed(double[] a, double[] b, double[] out) {
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < N; j++) {
        double sum = 0;
        for (int k = 0; k < N; k++) {
          sum += a[i * N + k] * b[j * N + k];
        }
        out[i * N + j] = sum;
      }
    }
  }
}
