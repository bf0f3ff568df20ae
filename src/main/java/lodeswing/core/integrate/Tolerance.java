package lodeswing.core.integrate;

/**
 * Bound on the error that one step may add, in phase space.
 *
 * <p>A step's error e is the root of |dq|^2 + |dv|^2/w^2, with w the motion's {@code naturalRate}.
 * It is held below absolute + relative R, with R^2 = |q|^2 + |v|^2/w^2 at the step's start: one
 * scale for both coordinates, so that the choice of axes does not matter. On the bench q is in
 * radians (1e-9 rad is half a nanometre at half a metre).
 *
 * @param absolute least error worth correcting, in q's unit, 1e-15 to 1
 * @param relative error as a part of the swing, 0 to 0.1
 */
public record Tolerance(double absolute, double relative) {

  /** What traces use: 1e-11 of the swing. */
  public static final Tolerance TRACE = new Tolerance(1e-12, 1e-11);

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException where a part lies outside its range
   */
  public Tolerance {
    if (!(absolute >= 1e-15 && absolute <= 1)) {
      throw new IllegalArgumentException("absolute tolerance outside 1e-15..1: " + absolute);
    }
    if (!(relative >= 0 && relative <= 0.1)) {
      throw new IllegalArgumentException("relative tolerance outside 0..0.1: " + relative);
    }
  }

  /** The same number as absolute and relative part. */
  public static Tolerance of(double both) {
    return new Tolerance(both, both);
  }
}
