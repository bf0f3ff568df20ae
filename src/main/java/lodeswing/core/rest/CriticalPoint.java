package lodeswing.core.rest;

/**
 * A place where the potential is level.
 *
 * @param q0 place
 * @param q1 place
 * @param potential potential energy there
 * @param kind its kind by the signs of the Hessian's eigenvalues
 * @param curvature00 d2V/dq0^2
 * @param curvature01 d2V/dq0 dq1
 * @param curvature11 d2V/dq1^2
 * @param continuum whether it stands for a whole line of such places (a round valley or ridge)
 */
record CriticalPoint(
    double q0,
    double q1,
    double potential,
    Kind kind,
    double curvature00,
    double curvature01,
    double curvature11,
    boolean continuum) {

  /** Smallest curvature, as a share of the largest, that is told from none. */
  private static final double LEVEL = 1e-7;

  /** Kinds of critical points. */
  enum Kind {
    MINIMUM(1),
    SADDLE(-1),
    MAXIMUM(1);

    /** Turns of the gradient around it. */
    final int index;

    Kind(int index) {
      this.index = index;
    }
  }

  /** A critical point from V, V0, V1, V00, V01, V11 there. */
  static CriticalPoint at(double q0, double q1, double[] d) {
    SymmetricPair pair = SymmetricPair.of(d[3], d[4], d[5]);
    Kind kind;
    if (isLevel(pair)) {
      // the one curvature that is there tells a valley from a ridge
      kind = pair.low() + pair.high() > 0 ? Kind.MINIMUM : Kind.SADDLE;
    } else if (pair.low() > 0) {
      kind = Kind.MINIMUM;
    } else {
      kind = pair.high() < 0 ? Kind.MAXIMUM : Kind.SADDLE;
    }
    return new CriticalPoint(q0, q1, d[0], kind, d[3], d[4], d[5], false);
  }

  private static boolean isLevel(SymmetricPair pair) {
    double a = Math.abs(pair.low());
    double b = Math.abs(pair.high());
    return Math.min(a, b) <= LEVEL * Math.max(a, b);
  }

  SymmetricPair eigen() {
    return SymmetricPair.of(curvature00, curvature01, curvature11);
  }

  /** Whether the potential is level here along a direction, to second order. */
  boolean level() {
    return isLevel(eigen());
  }

  CriticalPoint asContinuum() {
    return new CriticalPoint(q0, q1, potential, kind, curvature00, curvature01, curvature11, true);
  }

  /** Its part in the count of turns; a closed line of places has none. */
  int index() {
    return continuum ? 0 : kind.index;
  }

  double distance(double p0, double p1) {
    return Math.hypot(q0 - p0, q1 - p1);
  }
}
