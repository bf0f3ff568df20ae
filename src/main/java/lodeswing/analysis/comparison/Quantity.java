package lodeswing.analysis.comparison;

/** What a recorded path may hang on beside the rig. */
enum Quantity {
  /** Plan place of the release [m]. */
  X(0),
  /** Plan place of the release [m]. */
  Y(1),
  /** Plan velocity of the release [m/s]. */
  VX(2),
  /** Plan velocity of the release [m/s]. */
  VY(3),
  /** When that was, after the first recorded place [s]. */
  TIME(4),
  /** Recorded time over predicted time from there on: above 1 for a slower rig. */
  CLOCK(5),
  /** The recording's turn, as a frame has it [rad]. */
  TURN(6),
  /** The recording's scale, as a frame has it. */
  SCALE(7),
  /** Plan place of the recording's origin [m]. */
  ORIGIN_X(8),
  /** Plan place of the recording's origin [m]. */
  ORIGIN_Y(9);

  private final int place;

  Quantity(int place) {
    this.place = place;
  }

  /** Its place among all. */
  int place() {
    return place;
  }
}
