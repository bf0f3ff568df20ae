package lodeswing.analysis.check;

/** What a builder can turn to mend a rig. */
public enum Knob {
  /** The gap between plate and bob. */
  GAP,
  /** Mass of the bob, or the size or mass of a bar's weightiest part. */
  MASS,
  /** Thickness of the bob's magnet. */
  BOB_HEIGHT,
  /** Span of a Y cord. */
  SPAN,
  /** The loss, by whichever member states its greatest part. */
  LOSS,
  /** Depth of the hook. */
  HOOK_DEPTH,
  /** Load that the hook is made for. */
  HOOK_RATED,
  /** Coefficient of friction between magnets and plate. */
  FRICTION,
  /** Width of the stand's base. */
  BASE,
  /** Tilt of the stand. */
  TILT,
  /** A magnet's x. */
  MAGNET_X,
  /** A magnet's y. */
  MAGNET_Y,
  /** A magnet's label: a word. */
  LABEL,
  /** The pole that a magnet turns up: a word. */
  POLE,
  /** How the plate's magnets are held: a word. */
  FIXING,
  /** Height of the bob's plane, in a textbook layout. */
  PLANE_HEIGHT
}
