package lodeswing.benchmark;

import lodeswing.core.motion.Limit;
import lodeswing.core.outcome.Ends;

/** The code of an end at each kind of limit, as {@link Ends} documents it. */
final class LimitCodes {

  private LimitCodes() {}

  static int of(Limit limit) {
    return switch (limit.kind()) {
      case MAGNET_CONTACT -> Ends.MAGNET_CONTACT;
      case PLATE_CONTACT -> Ends.PLATE_CONTACT;
      case SUSPENSION_SLACK -> Ends.SUSPENSION_SLACK;
      case ANGLE_LIMIT -> Ends.ANGLE_LIMIT;
    };
  }
}
