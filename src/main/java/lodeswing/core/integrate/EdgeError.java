package lodeswing.core.integrate;

import lodeswing.core.motion.Motion;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * What Lobatto's eight points miss of air drag and friction where the bob nearly stops.
 *
 * <p>Both hang on |v|, which has an edge at v = 0. By the Alekseev-Groebner formula (Hairer,
 * Norsett and Wanner, Solving Ordinary Differential Equations I, 1993, theorem I.14.5) the error at
 * a step's end is the integral of what the motion's acceleration differs by from the collocation's,
 * to first order in the step. Of the part with the edge this is the quadrature's error, found as
 * the difference between the eight points over the step and over each of its halves, along the
 * collocation's speeds. The place is held at the step's start: the edge is in the speed alone.
 *
 * <p>It costs no evaluation of the force. One owner, one thread.
 */
final class EdgeError {

  private static final int N = LobattoNodes.COUNT;

  /** Points of two halves that share their middle. */
  private static final int FINE = 2 * N - 1;

  /**
   * Where the bob is faster at both ends than this many times what its velocity changes by over the
   * step, the edge's singularities lie so far off the step that order 14 takes it for smooth.
   */
  private static final double NEAR = 2;

  /** Integral of l_j from 0 to each point of the halves. */
  private static final double[][] SPEED = new double[FINE][N];

  private static final double[] WEIGHT = new double[FINE];

  static {
    GaussIntegratorFactory factory = new GaussIntegratorFactory();
    for (int i = 0; i < FINE; i++) {
      int half = i / N;
      int point = i < N ? i : i - N + 1;
      double c = 0.5 * (half + LobattoNodes.C[point]);
      for (int j = 0; j < N; j++) {
        int column = j;
        SPEED[i][j] =
            i == 0 ? 0 : factory.legendre(8, 0, c).integrate(t -> LobattoNodes.lagrange(column, t));
      }
      WEIGHT[i] = 0.5 * LobattoNodes.SPEED[N - 1][point];
    }
    WEIGHT[N - 1] *= 2;
  }

  private final Motion motion;
  private final boolean any;
  private final double[] out = new double[2];

  EdgeError(Motion motion) {
    this.motion = motion;
    this.any = motion.edgeAtRest();
  }

  /**
   * Size of the error of the speed at a step's end.
   *
   * @param start state at its start
   * @param end state at its end
   * @param a0 accelerations at the eight points
   * @param a1 accelerations at the eight points
   * @param h size of the step
   */
  double ofSpeed(double[] start, double[] end, double[] a0, double[] a1, double h) {
    if (!any || !isNear(start, end)) {
      return 0;
    }
    double missed0 = 0;
    double missed1 = 0;
    for (int i = 0; i < FINE; i++) {
      edged(start, SPEED[i], a0, a1, h);
      missed0 = Math.fma(WEIGHT[i], out[0], missed0);
      missed1 = Math.fma(WEIGHT[i], out[1], missed1);
    }
    for (int i = 0; i < N; i++) {
      edged(start, LobattoNodes.SPEED[i], a0, a1, h);
      double weight = LobattoNodes.SPEED[N - 1][i];
      missed0 = Math.fma(-weight, out[0], missed0);
      missed1 = Math.fma(-weight, out[1], missed1);
    }
    return h * Math.sqrt(missed0 * missed0 + missed1 * missed1);
  }

  private static boolean isNear(double[] start, double[] end) {
    double slower =
        Math.min(start[2] * start[2] + start[3] * start[3], end[2] * end[2] + end[3] * end[3]);
    double change0 = end[2] - start[2];
    double change1 = end[3] - start[3];
    return slower < NEAR * NEAR * (change0 * change0 + change1 * change1);
  }

  private void edged(double[] start, double[] row, double[] a0, double[] a1, double h) {
    double sum0 = 0;
    double sum1 = 0;
    for (int j = 0; j < N; j++) {
      sum0 = Math.fma(row[j], a0[j], sum0);
      sum1 = Math.fma(row[j], a1[j], sum1);
    }
    motion.edgedAcceleration(
        start[0], start[1], Math.fma(h, sum0, start[2]), Math.fma(h, sum1, start[3]), out);
  }
}
