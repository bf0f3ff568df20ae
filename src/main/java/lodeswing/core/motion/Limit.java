package lodeswing.core.motion;

/** A border of the model's validity, as a margin that is positive while the model holds. */
public interface Limit {

  /** What happens at the border. */
  Kind kind();

  /**
   * Margin at a state, continuous along a motion; zero is the border.
   *
   * @param state {q0, q1, v0, v1}
   */
  double margin(double[] state);

  /**
   * Least margin at a place whatever the speed: what may be relied on when only energy is known.
   */
  double leastMargin(double q0, double q1);

  /** Kinds of border. */
  enum Kind {
    /** A cord or leg no longer pulls, or a hook lifts off. */
    SUSPENSION_SLACK,
    /** The bob touches a magnet of the plate. */
    MAGNET_CONTACT,
    /** The bob touches the plate. */
    PLATE_CONTACT,
    /** An angle leaves the range in which the model is used. */
    ANGLE_LIMIT
  }
}
