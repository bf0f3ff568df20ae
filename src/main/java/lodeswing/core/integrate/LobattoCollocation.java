package lodeswing.core.integrate;

import lodeswing.core.motion.Motion;

/**
 * Collocation at Lobatto's eight points, order 14, for motions whose acceleration hangs on the
 * speed in any way.
 *
 * <p>Over a step the accelerations are a polynomial through the eight points; places and speeds are
 * its integrals (Lobatto IIIA: Hairer and Wanner, Solving Ordinary Differential Equations II, 1996,
 * section IV.5; the same idea with Radau's points: Everhart, Celest. Mech. 10 (1974) 35). The
 * accelerations are found by sweeps over the points, each point using the newest of the others,
 * begun with the last step's polynomial carried on. Two sweeps mostly do, and the last point's
 * acceleration is the next step's first: some 15 evaluations for a step several times as long as an
 * explicit pair of order 8 can take. The polynomial is the dense output, at no cost.
 *
 * <p>Error of a step: the larger of what the sweeps left, (last change)^2/(change before) or a
 * twentieth of the last change, and a figure for the truncation. With eps the step's highest
 * coefficient against the swing, the latter is eps^(5/3) of the swing, since the quadrature's error
 * goes with h^15 and eps with h^9. Neither sees that air drag and friction have an edge where the
 * bob stops; there {@link EdgeError} looks, on the path as it is carried on, before any evaluation.
 */
final class LobattoCollocation extends Stepper {

  private static final int N = LobattoNodes.COUNT;
  private static final int END = N - 1;
  private static final double ORDER = 14;
  private static final int MOST_SWEEPS = 4;
  private static final int MOST_FIRST_SWEEPS = 8;
  private static final double FARTHEST_CARRY = 4;

  /** Least part of its change that a sweep is taken to leave. */
  private static final double FASTEST = 0.05;

  private static final double TRUNCATION = 0.003;
  private static final double POWER = 5.0 / 3.0;

  /** Part of a missed coefficient that the integral over a step is wrong by. */
  private static final double EDGE = 0.5;

  private double[] a0 = new double[N];
  private double[] a1 = new double[N];
  private double[] last0 = new double[N];
  private double[] last1 = new double[N];
  private final double[] before = new double[4];
  private final EdgeError edge;
  private double lastSize;
  private boolean taken;
  private boolean powersKnown;
  private final double[] powers0 = new double[N];
  private final double[] powers1 = new double[N];

  LobattoCollocation(Motion motion) {
    super(motion);
    this.edge = new EdgeError(motion);
  }

  @Override
  StepControl control() {
    return new StepControl(0.3, ORDER);
  }

  @Override
  double order() {
    return ORDER;
  }

  @Override
  void beginStages() {
    accelerate(endState[0], endState[1], endState[2], endState[3]);
    endAcceleration[0] = out[0];
    endAcceleration[1] = out[1];
    lastSize = 0;
    taken = false;
  }

  /** Keeps the accelerations of the step for the next one's beginning. */
  @Override
  void completeEnd() {
    if (taken) {
      double[] free0 = last0;
      double[] free1 = last1;
      last0 = a0;
      last1 = a1;
      a0 = free0;
      a1 = free1;
      endAcceleration[0] = last0[END];
      endAcceleration[1] = last1[END];
      lastSize = size;
      taken = false;
    }
  }

  @Override
  double tryStages(double h) {
    taken = false;
    powersKnown = false;
    boolean carried = predict(h);
    finish(h);
    double edged = edged(h);
    if (isOver(edged * edged)) {
      return edged * edged;
    }
    int most = carried ? MOST_SWEEPS : MOST_FIRST_SWEEPS;
    double change = Double.POSITIVE_INFINITY;
    double left = Double.POSITIVE_INFINITY;
    double truncation = 0;
    for (int n = 1; n <= most && isOver(left * left); n++) {
      sweep(h);
      double earlier = change;
      change = changeOfEnd(h);
      if (!(change < Double.POSITIVE_INFINITY)) {
        return Double.POSITIVE_INFINITY;
      }
      truncation = truncation(h);
      if (isOver(truncation * truncation)) {
        return truncation * truncation;
      }
      if (n > 1) {
        left = earlier > 0 ? change * Math.min(1, Math.max(change / earlier, FASTEST)) : 0;
      }
    }
    taken = true;
    if (!carried) {
      edged = edged(h);
    }
    double error = Math.max(edged, Math.max(left, truncation));
    return error * error;
  }

  private double edged(double h) {
    double speed = edge.ofSpeed(startState, endState, a0, a1, h);
    return speed > 0 ? Math.sqrt(phaseSquared(0, 0, speed, 0)) : 0;
  }

  /** First guess of the accelerations; whether it could be carried on from the last step. */
  private boolean predict(double h) {
    a0[0] = startAcceleration[0];
    a1[0] = startAcceleration[1];
    boolean carried = lastSize > 0 && h < FARTHEST_CARRY * lastSize;
    for (int i = 1; i < N; i++) {
      if (carried) {
        carry(i, 1 + LobattoNodes.C[i] * h / lastSize);
      } else {
        a0[i] = a0[0];
        a1[i] = a1[0];
      }
    }
    return carried;
  }

  /** Value of the last step's polynomial at c > 1, by Lagrange's formula. */
  private void carry(int i, double c) {
    double product = 1;
    for (int j = 0; j < N; j++) {
      product *= c - LobattoNodes.C[j];
    }
    double sum0 = 0;
    double sum1 = 0;
    for (int j = 0; j < N; j++) {
      double l = product * LobattoNodes.WEIGHT[j] / (c - LobattoNodes.C[j]);
      sum0 = Math.fma(l, last0[j], sum0);
      sum1 = Math.fma(l, last1[j], sum1);
    }
    a0[i] = sum0;
    a1[i] = sum1;
  }

  private void sweep(double h) {
    for (int i = 1; i < N; i++) {
      double t = h * LobattoNodes.C[i];
      double[] place = LobattoNodes.PLACE[i];
      double[] speed = LobattoNodes.SPEED[i];
      accelerate(
          Math.fma(h * h, sum(place, a0), Math.fma(t, startState[2], startState[0])),
          Math.fma(h * h, sum(place, a1), Math.fma(t, startState[3], startState[1])),
          Math.fma(h, sum(speed, a0), startState[2]),
          Math.fma(h, sum(speed, a1), startState[3]));
      a0[i] = out[0];
      a1[i] = out[1];
    }
  }

  private void finish(double h) {
    double[] place = LobattoNodes.PLACE[END];
    double[] speed = LobattoNodes.SPEED[END];
    endState[0] = Math.fma(h * h, sum(place, a0), Math.fma(h, startState[2], startState[0]));
    endState[1] = Math.fma(h * h, sum(place, a1), Math.fma(h, startState[3], startState[1]));
    endState[2] = Math.fma(h, sum(speed, a0), startState[2]);
    endState[3] = Math.fma(h, sum(speed, a1), startState[3]);
  }

  /** Computes the end anew; how far it moved in phase space. */
  private double changeOfEnd(double h) {
    System.arraycopy(endState, 0, before, 0, 4);
    finish(h);
    return Math.sqrt(
        phaseSquared(
            endState[0] - before[0],
            endState[1] - before[1],
            endState[2] - before[2],
            endState[3] - before[3]));
  }

  private double truncation(double h) {
    double[] s = startState;
    double top = h * h * length(sum(LobattoNodes.WEIGHT, a0), sum(LobattoNodes.WEIGHT, a1));
    double swing =
        Math.sqrt(phaseSquared(s[0], s[1], s[2], s[3])) + h * h * length(a0[END], a1[END]);
    double part = TRUNCATION * top / swing;
    return part > 1e-200 ? swing * StepControl.exp2(POWER * StepControl.log2(part)) : 0;
  }

  /**
   * The larger of the control's figure and one from how fast the accelerations' Legendre
   * coefficients fall.
   *
   * <p>The quadrature first misses degree 14, seven above the highest that the points hold; carried
   * on at the fall measured over the upper half, the highest coefficient gives that one's size.
   * Where the acceleration is smooth this lies below the control's figure; where it has an edge, at
   * a table's seam or where friction turns about, the coefficients hardly fall and the control,
   * which takes smoothness for granted, misses it.
   */
  @Override
  public double localError() {
    double highest = 0;
    double upper = 0;
    for (int k = N / 2; k < N; k++) {
      double[] row = LobattoNodes.LEGENDRE[k];
      double coefficient = length(sum(row, a0), sum(row, a1));
      if (k < N - 2) {
        upper = Math.max(upper, coefficient);
      } else {
        highest = Math.max(highest, coefficient);
      }
    }
    double fall = upper > 0 ? Math.min(1, Math.sqrt(highest / upper)) : 1;
    double missed = highest * StrictMath.pow(fall, N - 1);
    return Math.max(super.localError(), EDGE * Math.sqrt(phaseSquared(0, 0, size * missed, 0)));
  }

  private static double length(double x, double y) {
    return Math.sqrt(x * x + y * y);
  }

  private static double sum(double[] row, double[] values) {
    double sum = row[0] * values[0];
    for (int j = 1; j < N; j++) {
      sum = Math.fma(row[j], values[j], sum);
    }
    return sum;
  }

  @Override
  void bend(StepPolynomial first, StepPolynomial second) {}

  @Override
  public void glimpse(double time, double[] state) {
    at(time, state);
  }

  @Override
  public void at(double time, double[] state) {
    if (!powersKnown) {
      toPowers(a0, powers0);
      toPowers(a1, powers1);
      powersKnown = true;
    }
    double u = 2 * (time - startTime()) / size - 1;
    read(powers0, u, 0, state);
    read(powers1, u, 1, state);
  }

  private static void toPowers(double[] a, double[] powers) {
    for (int k = 0; k < N; k++) {
      double sum = 0;
      for (int j = 0; j < N; j++) {
        sum = Math.fma(LobattoNodes.POWERS[j][k], a[j], sum);
      }
      powers[k] = sum;
    }
  }

  /** Integrals of sum p_k u^k from u = -1, once and twice. */
  private void read(double[] p, double u, int i, double[] state) {
    double half = 0.5 * size;
    double speed = 0;
    double place = 0;
    double power = u;
    double sign = -1;
    for (int k = 0; k < N; k++) {
      speed = Math.fma(p[k] / (k + 1), power - sign, speed);
      power *= u;
      place = Math.fma(p[k] / (k + 1), (power + sign) / (k + 2) - sign * (u + 1), place);
      sign = -sign;
    }
    state[i] = startState[i] + half * (u + 1) * startState[2 + i] + half * half * place;
    state[2 + i] = startState[2 + i] + half * speed;
  }
}
