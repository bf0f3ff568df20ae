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

  /** Halvings of the interval: the last is below the rounding of a time. */
  private static final int HALVINGS = 50;

  /** Where in the step, 0 to 1, it reaches a level between its ends. */
  double reaches(double level) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (low + high);
      if (HermiteCubic.value(before, slope, after, slopeAfter, middle) > level) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
