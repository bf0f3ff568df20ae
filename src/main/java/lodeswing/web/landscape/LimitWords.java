package lodeswing.web.landscape;

import lodeswing.core.motion.Limit;

/** What ends a path before the bob is at rest, in words. */
public final class LimitWords {

  /** Friction holds the bob. */
  public static final String HELD = "held by the friction of the pivot";

  private LimitWords() {}

  /** A border of the model. */
  public static String of(Limit.Kind kind) {
    return switch (kind) {
      case SUSPENSION_SLACK -> "the suspension goes slack";
      case MAGNET_CONTACT -> "the bob touches a magnet";
      case PLATE_CONTACT -> "the bob touches the plate";
      case ANGLE_LIMIT -> "the swing leaves the range of angles";
    };
  }
}
