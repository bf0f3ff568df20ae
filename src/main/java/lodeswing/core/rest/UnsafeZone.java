package lodeswing.core.rest;

/**
 * A region of places in which the model does not hold, so that nothing is known of what follows.
 *
 * @param index its number in the result, from 0
 * @param border what happens at its lowest place
 * @param q0 lowest place of its rim
 * @param q1 lowest place of its rim
 * @param x plan position of that place
 * @param y plan position of that place
 * @param potential potential energy there
 * @param catches whether the forces pull the bob into the zone there, so that it ends touching,
 *     sticking or hanging slack
 */
public record UnsafeZone(
    int index,
    Border border,
    double q0,
    double q1,
    double x,
    double y,
    double potential,
    boolean catches) {

  /** Kinds of border. */
  public enum Border {
    /** A cord or leg no longer pulls, or a hook lifts off. */
    SUSPENSION_SLACK,
    /** The bob touches a magnet of the plate. */
    MAGNET_CONTACT,
    /** The bob touches the plate. */
    PLATE_CONTACT,
    /** An angle leaves the range in which the model is used. */
    ANGLE_LIMIT,
    /** The edge of the scanned square. */
    SCAN_EDGE,
    /** The potential is not a finite number. */
    UNDEFINED
  }
}
