package lodeswing.analysis.check;

/**
 * Every limit of the check, each with its source. Where none is named it is common practice: what
 * builders of such rigs keep to, not a standard.
 */
final class CheckLimits {

  /** Room that a bob should have to anything beside the gap's own error [m]. Common practice. */
  static final double CLEARANCE = 2e-3;

  /** Room below which it touches sooner or later: cords stretch so much. Common practice. */
  static final double LEAST_CLEARANCE = 0.5e-3;

  /** Error of a gap that is set by hand, where the layout states none [m]. Common practice. */
  static final double GAP_ERROR = 0.5e-3;

  /**
   * Sideways pull of the strongest magnet over what the weight draws back with there. At 1 both are
   * equal, which is statics; the room above it is common practice.
   */
  static final Band PULL = Band.atLeast(1.2, 1);

  /** What slows the bob at its fastest, as a share of the magnets' pull. Common practice. */
  static final Band SLOWING = Band.atMost(0.1, 0.5);

  /**
   * Strongest sideways pull of the magnets over the whole weight. At 1 they could hold the bob at
   * half a right angle (statics) and take a light bar with them; the room is common practice.
   */
  static final Band PULL_ON_WEIGHT = Band.atMost(0.7, 1);

  /** Paint, tape or plating between two magnets that touch [m]. Common practice. */
  static final double PAINT = 1e-4;

  /**
   * Pull of two fingers that frees a bob [N], grown-up and below {@link #CHILD}. Common practice.
   */
  static final double FINGERS = 30;

  /** The same of a child. Common practice. */
  static final double CHILDS_FINGERS = 15;

  /** Age below which a child's fingers count. Common practice. */
  static final double CHILD = 12;

  /** Contact forces that need a tool count as failed from so many times the fingers' pull. */
  static final double TOOL = 2;

  /** Least pull left on cord or hook, as a share of the weight; at 0 it is slack. */
  static final Band SLACK = Band.atLeast(0.2, 0);

  /** Load as a share of what the hook's maker allows. Room of a fifth: common practice. */
  static final double RATED_SHARE = 0.8;

  /** Angle by which an eye must be held beyond the widest swing [rad]. Common practice. */
  static final double HOOK_ALLOWANCE = Math.toRadians(15);

  /** Shallowest hook [m]: about the thickness of its wire. Common practice. */
  static final double HOOK_DEPTH = 2e-3;

  /** Swings that a class wants to see before the bob rests. Common practice. */
  static final double FEWEST_SWINGS = 4;

  /** Below this there is nothing to see. Common practice. */
  static final double TOO_FEW_SWINGS = 2;

  /** How long a class waits for the end [s]. Common practice. */
  static final double PATIENCE = 180;

  /** The same in swings of a textbook layout, whose seconds are its own. Common practice. */
  static final double MOST_SWINGS = 150;

  /** Share of the other wells' barrier from which an unlabelled well catches the bob for good. */
  static final double SHALLOW_WELL = 0.05;

  /** Chance that two tries end apart. Common practice. */
  static final Band LIVELY = Band.atLeast(0.15, 0.02);

  /** Sideways force on a magnet, as a share of what holds it; at 1 it slides. Twofold safety. */
  static final Band SLIDING = Band.atMost(0.5, 1);

  /** Lift of the passing bob, as a share of what holds a magnet down. Twofold safety. */
  static final Band LIFTING = Band.atMost(0.5, 1);

  /**
   * Highest coefficient that a rough, dry base gives a metal disc: upper end of steel on wood at
   * rest, 0.45 to 0.75 (Engineering Guide CDA3000, formula bank, table of coefficients of friction;
   * steel on plastic 0.20 to 0.45, on steel 0.12 to 0.60).
   */
  static final double ROUGHEST = 0.75;

  /** Share of half a stand's base within which the pull should meet the bench; at 1 it tips. */
  static final double BASE_SHARE = 0.8;

  /** Shift of the middle by a leaning stand [m]. Common practice. */
  static final Band LEANING = Band.atMost(2e-3, 10e-3);

  private CheckLimits() {}
}
