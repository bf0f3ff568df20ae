package lodeswing.analysis.check;

/**
 * The sentence that a line has, with the figures that it tells beside figure and limit, all in SI.
 * A magnet is told by its index; -1 stands for the plate.
 */
public enum Cause {
  /** What is nearest. */
  ROOM_AT_REST,
  /** What is nearest; x, y of the place. */
  ROOM_ON_THE_WAY,
  /** No place can be released from. */
  NOWHERE_TO_RELEASE,
  /** There is no magnet on the plate, or none on the bob. */
  NOTHING_PULLS,
  /** The magnet that pulls most; its pull [N], the weight's there [N]. */
  PULL_AND_WEIGHT,
  /** Slowing force [N], pull [N], speed [m/s]. */
  PULL_AND_SLOWING,
  /** The magnet next to where they pull most; their sideways pull [N], all the weight [N]. */
  PULL_AND_ALL_WEIGHT,
  /** No magnet attracts the bob. */
  NOTHING_STICKS,
  /** A point dipole has no face to stick to. */
  POINTS_DO_NOT_TOUCH,
  /** The magnet; distance of the faces that touch [m]. Out of the bob's way. */
  FREED_BY_FINGERS,
  /** The magnet; force that frees the bob [N]. Within the bob's way. */
  FREED_BY_SWING,
  /** The magnet. Within the bob's way, friction not known. */
  STICKS_WITHOUT_FRICTION,
  /** x, y of the place; least pull [N]; 1 for a hook, 0 for a cord. */
  LEAST_PULL,
  /** Weight [N], x, y of the place. */
  LOAD_AND_RATING,
  /** The same, rating not known. */
  LOAD_WITHOUT_RATING,
  /** Widest angle of swing [rad], opening [m]. */
  DEPTH_OF_HOOK,
  /** Depth, opening or both not known. */
  HOOK_NOT_TOLD,
  /** Median time until rest [s], period [s]. */
  SWINGS,
  /** Time that a release was followed [s], period [s]. */
  NEVER_RESTS,
  /** Labels, and the first magnet without a well (-1 for none). */
  WELLS_OF_LABELS,
  /** Labels, and the first magnet without a well, which repels the bob. */
  LABEL_REPELS,
  /** No magnet has a label. */
  NO_LABELS,
  /** Wells; x, y of the deepest without a label; the magnet that it lies over (-1 for none). */
  WELLS_AND_LABELS,
  /** All wells have a label: how many. */
  ALL_WELLS_LABELLED,
  /** Ends met, spread of the hand [plan unit], releases. */
  TRIES,
  /** The magnet; force on it [N], what holds it [N], the neighbour that pushes or pulls most. */
  HELD_BY_FRICTION,
  /** The magnet; force on it [N]. */
  HELD_FAST,
  /** The magnet; force on it [N]; neither friction nor fixing told. */
  HOLD_NOT_TOLD,
  /** The magnet whose mass is not known. */
  MASS_NOT_TOLD,
  /** The magnet; lift [N], what holds it down [N]. */
  LIFTED_BY_BOB,
  /** The bob pushes every magnet down. */
  NOTHING_LIFTS,
  /** Fewer than two magnets. */
  NO_NEIGHBOURS,
  /** Height of the pivot [m], widest angle of swing [rad], tilt [rad]. */
  LINE_OF_PULL,
  /** Something of the stand is not known. */
  STAND_NOT_TOLD,
  /** Tilt [rad], height of the pivot [m]. */
  MIDDLE_MOVES
}
