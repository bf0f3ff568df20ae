package lodeswing.analysis.swingcount;

/** What is told of counted swings. */
public enum Figure {
  /** Mean time of a counted swing [s]. */
  PERIOD(0),
  /** Time of a small swing without loss that those tell of [s]. */
  SMALL_PERIOD(1),
  /** The same by the rig's own length [s]. */
  EXPECTED_PERIOD(2),
  /** The former over the latter. */
  PERIOD_RATIO(3),
  /** How much longer the suspension would be with that small swing [m]. */
  LENGTHENING(4),
  /** From the swing's axis to the bob magnet's centre, of that suspension [m]. */
  ARM(5),
  /** Full swings to half the amplitude. */
  SWINGS_TO_HALF(6),
  /** Quality factor, pi over the logarithmic decrement. */
  QUALITY_FACTOR(7),
  /** Rate at which the amplitude falls [1/s]. */
  DAMPING_RATE(8),
  /** Force over speed at the bob that does this [N s/m]. */
  LINEAR_LOSS(9);

  private final int place;

  Figure(int place) {
    this.place = place;
  }

  /** Its place among all. */
  int place() {
    return place;
  }
}
