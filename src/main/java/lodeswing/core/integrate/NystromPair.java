package lodeswing.core.integrate;

import java.util.OptionalDouble;
import lodeswing.core.motion.Motion;
import lodeswing.core.motion.PositionForce;

/**
 * Runge-Kutta-Nystrom pair of orders 8(6), nine stages, the last shared with the next step: eight
 * evaluations a step.
 *
 * <p>Dormand, El-Mikkawy and Prince, High-order embedded Runge-Kutta-Nystrom formulae, IMA J.
 * Numer. Anal. 7 (1987) 423. For x'' = F(x) - 2k x' the loss is taken out within each step: with
 * y(tau) = e^(k tau) x the equation is y'' = e^(k tau) F(e^(-k tau) y) + k^2 y, exact, without
 * speeds. Stage times are multiples of 1/20, so that every exponential is a power of e^(k h/20).
 */
final class NystromPair extends Stepper {

  private static final double NODE = 0.75;

  private final double k;
  private final double kk;
  private final double[] g0 = new double[9];
  private final double[] g1 = new double[9];
  private final double[] nextForce = new double[3];
  private final boolean forceAlone;
  private double y0;
  private double y1;
  private double w0;
  private double w1;
  private double inner0;
  private double inner1;
  private final double[] growth = new double[8];
  private final double[] decay = new double[8];

  NystromPair(Motion motion) {
    super(motion);
    OptionalDouble loss = motion.uniformLoss();
    this.k = 0.5 * loss.orElseThrow();
    this.kk = k * k;
    this.forceAlone = motion instanceof PositionForce;
  }

  @Override
  double frameRate() {
    return k;
  }

  @Override
  StepControl control() {
    return StepControl.of(NystromCoefficients.CONTROL_ORDER);
  }

  @Override
  double order() {
    return 8;
  }

  private void force(double q0, double q1) {
    evaluations++;
    if (forceAlone) {
      ((PositionForce) motion).force(q0, q1, out);
    } else {
      motion.acceleration(q0, q1, 0, 0, out);
    }
  }

  @Override
  void beginStages() {
    force(endState[0], endState[1]);
    nextForce[0] = out[0];
    nextForce[1] = out[1];
  }

  @Override
  void completeEnd() {
    endAcceleration[0] = nextForce[0] - 2 * k * endState[2];
    endAcceleration[1] = nextForce[1] - 2 * k * endState[3];
  }

  /** Evaluates stage i at y = y(0) + c h y'(0) + h^2 sum a g, the last two given as place. */
  private void stage(int i, double a0, double a1) {
    force(decay[i] * a0, decay[i] * a1);
    g0[i] = Math.fma(growth[i], out[0], kk * a0);
    g1[i] = Math.fma(growth[i], out[1], kk * a1);
  }

  @Override
  double tryStages(double h) {
    if (k * h > ExponentialSeries.MOST_LOSS_A_STEP) {
      return Double.POSITIVE_INFINITY;
    }
    y0 = startState[0];
    y1 = startState[1];
    w0 = h * Math.fma(k, y0, startState[2]);
    w1 = h * Math.fma(k, y1, startState[3]);
    double hh = h * h;
    g0[0] = startAcceleration[0] + 2 * k * startState[2] + kk * y0;
    g1[0] = startAcceleration[1] + 2 * k * startState[3] + kk * y1;
    exponentials(k * h / 20);
    earlyStages(hh);
    return finish(h, hh);
  }

  /** Fills growth and decay with e^(+-k h c) at the stages, x = k h/20 being at most 0.1. */
  private void exponentials(double x) {
    double s = x * x;
    double even = ExponentialSeries.even(s);
    double odd = x * ExponentialSeries.oddPart(s);
    powers(even + odd, growth);
    powers(even - odd, decay);
  }

  /** Powers 1, 2, 6, 10, 14, 18, 20 of e. */
  private static void powers(double e, double[] p) {
    double e2 = e * e;
    double e4 = e2 * e2;
    p[1] = e;
    p[2] = e2;
    p[3] = e4 * e2;
    p[4] = p[3] * e4;
    p[5] = p[4] * e4;
    p[6] = p[5] * e4;
    p[7] = p[6] * e2;
  }

  private void earlyStages(double hh) {
    stage(
        1,
        place(y0, w0, 0.05, hh * NystromCoefficients.A21 * g0[0]),
        place(y1, w1, 0.05, hh * NystromCoefficients.A21 * g1[0]));
    stage(
        2,
        place(y0, w0, 0.1, hh * NystromCoefficients.row3(g0)),
        place(y1, w1, 0.1, hh * NystromCoefficients.row3(g1)));
    stage(
        3,
        place(y0, w0, 0.3, hh * NystromCoefficients.row4(g0)),
        place(y1, w1, 0.3, hh * NystromCoefficients.row4(g1)));
    stage(
        4,
        place(y0, w0, 0.5, hh * NystromCoefficients.row5(g0)),
        place(y1, w1, 0.5, hh * NystromCoefficients.row5(g1)));
    stage(
        5,
        place(y0, w0, 0.7, hh * NystromCoefficients.row6(g0)),
        place(y1, w1, 0.7, hh * NystromCoefficients.row6(g1)));
  }

  private static double place(double y, double w, double c, double sum) {
    return Math.fma(c, w, y + sum);
  }

  /** Last stages, end state and error; a place error over the tolerance alone ends it early. */
  private double finish(double h, double hh) {
    stage(
        6,
        place(y0, w0, 0.9, hh * NystromCoefficients.row7(g0)),
        place(y1, w1, 0.9, hh * NystromCoefficients.row7(g1)));
    double shrink = decay[7];
    double e0 = shrink * hh * NystromCoefficients.placeError(g0);
    double e1 = shrink * hh * NystromCoefficients.placeError(g1);
    double placeOnly = phaseSquared(e0, e1, 0, 0);
    if (isOver(placeOnly)) {
      return placeOnly;
    }
    stage(
        7,
        place(y0, w0, 1, hh * NystromCoefficients.row8(g0)),
        place(y1, w1, 1, hh * NystromCoefficients.row8(g1)));
    endState[0] = shrink * place(y0, w0, 1, hh * NystromCoefficients.row9(g0));
    endState[1] = shrink * place(y1, w1, 1, hh * NystromCoefficients.row9(g1));
    endState[2] = shrink * (w0 / h + h * NystromCoefficients.speedRow(g0)) - k * endState[0];
    endState[3] = shrink * (w1 / h + h * NystromCoefficients.speedRow(g1)) - k * endState[1];
    force(endState[0], endState[1]);
    nextForce[0] = out[0];
    nextForce[1] = out[1];
    g0[8] = Math.fma(growth[7], out[0], kk * growth[7] * endState[0]);
    g1[8] = Math.fma(growth[7], out[1], kk * growth[7] * endState[1]);
    double d0 = shrink * h * NystromCoefficients.speedError(g0) - k * e0;
    double d1 = shrink * h * NystromCoefficients.speedError(g1) - k * e1;
    return phaseSquared(e0, e1, d0, d1);
  }

  @Override
  void bend(StepPolynomial first, StepPolynomial second) {
    double before = 0.5 - 0.5 * NODE;
    double after = 0.5 + 0.5 * NODE;
    inner(first, second, before);
    double low0 = inner0;
    double low1 = inner1;
    inner(first, second, after);
    first.bendPair(NODE, low0, inner0);
    second.bendPair(NODE, low1, inner1);
  }

  /** h^2 y'' at theta, from the polynomials as they are. */
  private void inner(StepPolynomial first, StepPolynomial second, double theta) {
    double a0 = first.place(theta);
    double a1 = second.place(theta);
    double grow = StrictMath.exp(k * size * theta);
    force(a0 / grow, a1 / grow);
    inner0 = size * size * Math.fma(grow, out[0], kk * a0);
    inner1 = size * size * Math.fma(grow, out[1], kk * a1);
  }
}
