package lodeswing.core.outcome;

import lodeswing.core.geometry.HermiteCubic;

/**
 * How energy falls over a step: the cubic through both ends with their slopes.
 *
 * @param before energy at the start
 * @param after energy at the end
 * @param slope slope at the start, over the whole step
 * @param slopeAfter slope at the end
 */
record EnergyFall(double before, double after, double slope, double slopeAfter) {

  /** Newton's steps at most, or halves: those alone reach the rounding of a time. */
  private static final int STEPS = 60;

  /**
   * Where in the step, 0 to 1, it reaches a level between its ends: by Newton's steps, or halves
   * where these would leave the interval that holds the crossing.
   */
  double reaches(double level) {
    double low = 0;
    double high = 1;
    double t = (before - level) / (before - after);
    for (int i = 0; i < STEPS; i++) {
      double above = HermiteCubic.value(before, slope, after, slopeAfter, t) - level;
      if (above > 0) {
        low = t;
      } else {
        high = t;
      }
      double move = above / HermiteCubic.slope(before, slope, after, slopeAfter, t);
      if (Math.abs(move) <= Math.ulp(1.0)) {
        return t;
      }
      double next = t - move;
      t = next > low && next < high ? next : 0.5 * (low + high);
    }
    return t;
  }
}
