package lodeswing.core.integrate;

import lodeswing.core.motion.Motion;

/**
 * A Runge-Kutta pair at work on one motion: the state between two steps, and the step last taken.
 *
 * <p>One owner, one thread. Nothing is allocated after the constructor.
 */
abstract class Stepper implements Step {

  final Motion motion;
  final double[] startState = new double[4];
  final double[] endState = new double[4];
  final double[] startAcceleration = new double[3];
  final double[] endAcceleration = new double[3];
  final double[] out = new double[3];
  private final StepPolynomial[] polynomials = {new StepPolynomial(), new StepPolynomial()};
  private final double[] startJet = new double[3];
  private final double[] endJet = new double[3];
  private final double perRateSquared;
  private double startTime;
  private double scaleSquared;
  private double errorSquared;
  private Detail detail = Detail.NONE;
  double size;
  long evaluations;

  Stepper(Motion motion) {
    this.motion = motion;
    double rate = motion.naturalRate();
    this.perRateSquared = rate > 0 ? 1 / (rate * rate) : 1;
  }

  /** How far the polynomials of the last step have been worked out. */
  private enum Detail {
    NONE,
    QUINTIC,
    DENSE
  }

  /** Begins at a state; evaluates the acceleration there. */
  final void begin(double time, double[] state) {
    startTime = time;
    size = 0;
    System.arraycopy(state, 0, endState, 0, 4);
    beginStages();
  }

  /** Moves on to the end of the last step. */
  final void advance() {
    completeEnd();
    startTime += size;
    System.arraycopy(endState, 0, startState, 0, 4);
    startAcceleration[0] = endAcceleration[0];
    startAcceleration[1] = endAcceleration[1];
    detail = Detail.NONE;
  }

  /** Sets the scale of errors from the state at the start. */
  final void scale(Tolerance tolerance) {
    double s =
        tolerance.absolute()
            + tolerance.relative()
                * Math.sqrt(
                    norm(startState[0], startState[1])
                        + perRateSquared * norm(startState[2], startState[3]));
    scaleSquared = s * s;
  }

  /**
   * Tries a step of the given size from the start.
   *
   * @return square of the scaled error, 1 being the tolerance; NaN or infinite where a stage failed
   */
  final double attempt(double step) {
    size = step;
    errorSquared = tryStages(step);
    return errorSquared / scaleSquared;
  }

  /** Evaluates what a first step needs at the end state and leaves it as endAcceleration. */
  abstract void beginStages();

  /** Computes the end state; returns the square of the error in phase space. */
  abstract double tryStages(double step);

  /** Makes sure that the acceleration at the end is known. */
  abstract void completeEnd();

  /** Control that suits the pair. */
  abstract StepControl control();

  /** Order of the pair, for the first step. */
  abstract double order();

  /** Adds the inner accelerations to the polynomials of the frame. */
  abstract void bend(StepPolynomial first, StepPolynomial second);

  /** Rate k of the frame y = e^(k tau) x in which stages and polynomials live; 0 for none. */
  double frameRate() {
    return 0;
  }

  /** Acceleration by the motion, counted. */
  final void accelerate(double q0, double q1, double v0, double v1) {
    evaluations++;
    motion.acceleration(q0, q1, v0, v1, out);
  }

  /** The error that the tolerance allows now. */
  final double scaleNow() {
    return Math.sqrt(scaleSquared);
  }

  /** Whether the square of an error is over the tolerance. */
  final boolean isOver(double squared) {
    return squared > scaleSquared;
  }

  /** Square of the error in phase space. */
  final double phaseSquared(double q0, double q1, double v0, double v1) {
    return norm(q0, q1) + perRateSquared * norm(v0, v1);
  }

  private static double norm(double a, double b) {
    return a * a + b * b;
  }

  final boolean endIsFinite() {
    return Double.isFinite(
        Math.abs(endState[0])
            + Math.abs(endState[1])
            + Math.abs(endState[2])
            + Math.abs(endState[3]));
  }

  @Override
  public final double startTime() {
    return startTime;
  }

  @Override
  public final double endTime() {
    return startTime + size;
  }

  @Override
  public final double start(int index) {
    return startState[index];
  }

  @Override
  public final double end(int index) {
    return endState[index];
  }

  @Override
  public double localError() {
    return Math.sqrt(errorSquared);
  }

  @Override
  public void at(double time, double[] state) {
    if (detail != Detail.DENSE) {
      makeQuintic();
      bend(polynomials[0], polynomials[1]);
      detail = Detail.DENSE;
    }
    read(time, state);
  }

  @Override
  public void glimpse(double time, double[] state) {
    makeQuintic();
    read(time, state);
  }

  private void makeQuintic() {
    if (detail != Detail.NONE) {
      return;
    }
    completeEnd();
    double k = frameRate();
    double growth = StrictMath.exp(k * size);
    for (int i = 0; i < 2; i++) {
      jet(startJet, i, startState, startAcceleration, 1);
      jet(endJet, i, endState, endAcceleration, growth);
      polynomials[i].quintic(startJet, endJet);
    }
    detail = Detail.QUINTIC;
  }

  /** Place, h speed and h^2 acceleration of one coordinate in the frame y = e^(k tau) x. */
  private void jet(double[] jet, int i, double[] state, double[] acceleration, double growth) {
    double k = frameRate();
    double x = state[i];
    double v = state[2 + i];
    jet[0] = growth * x;
    jet[1] = size * growth * (v + k * x);
    jet[2] = size * size * growth * (acceleration[i] + 2 * k * v + k * k * x);
  }

  private void read(double time, double[] state) {
    double theta = (time - startTime) / size;
    double k = frameRate();
    double decay = StrictMath.exp(-k * size * theta);
    for (int i = 0; i < 2; i++) {
      state[i] = decay * polynomials[i].place(theta);
      state[2 + i] = decay * polynomials[i].speed(theta) / size - k * state[i];
    }
  }
}
