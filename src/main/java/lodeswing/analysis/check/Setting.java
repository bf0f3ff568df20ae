package lodeswing.analysis.check;

import java.util.OptionalDouble;

/**
 * A figure of a rig as a builder sets it, in the unit of the layout's member.
 *
 * @param pointer of the member in the canonical layout
 * @param from as it is; empty where the layout does not say
 * @param step what a hand can set
 * @param least the least that a layout may have
 * @param most the most
 * @param sense 1 where a greater value is more of what its knob names, -1 where it is less
 */
public record Setting(
    String pointer, OptionalDouble from, double step, double least, double most, int sense) {

  /** Digits that a step can have, so that 0.1 three times is 0.3. */
  private static final double DIGITS = 1e9;

  /** The step's multiple next to a value on one side. */
  double rounded(double value, int direction) {
    double steps = value / step;
    // A root that is a multiple up to the search's error is that multiple.
    double whole = direction > 0 ? Math.ceil(steps - 1e-7) : Math.floor(steps + 1e-7);
    return tidy(whole * step);
  }

  /** A value without the noise of its last digits. */
  static double tidy(double value) {
    return Math.rint(value * DIGITS) / DIGITS + 0.0;
  }
}
