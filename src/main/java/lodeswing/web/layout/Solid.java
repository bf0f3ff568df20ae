package lodeswing.web.layout;

/** The room that an upright magnet takes, in the layout's frame [m]. */
sealed interface Solid permits Tube, Box, Ball {

  /** Height of its lowest point [m]. */
  double bottom();

  /** Farthest distance of its plan from the layout's origin [m]. */
  double farthest();

  /** Largest |x| or |y| of its plan [m]. */
  double widest();

  /**
   * How far two solids reach into each other.
   *
   * @return the least shift that parts them [m]; where they are apart, minus (at most) the distance
   *     between them
   */
  double overlap(Solid other);

  /** The same with a tube. */
  double overlapTube(Tube tube);

  /** The same with a box. */
  double overlapBox(Box box);

  /** The same with a ball. */
  double overlapBall(Ball ball);

  /** Overlap of two upright prisms from their overlaps along the axis and in plan. */
  static double ofPrisms(double axial, double plan) {
    return axial < 0 && plan < 0 ? -Math.hypot(axial, plan) : Math.min(axial, plan);
  }
}
