package lodeswing.core.magnet;

/** Places in the caller-owned array that the bob's energy works in. */
final class Work {

  /** Three components of a field; in the end force and torque take this place and the next. */
  static final int FIELD = 0;

  /** The bob's pose as seen from the source: centre, ex, ey, t. */
  static final int POSE = 6;

  /** Force and torque in the source's frame. */
  static final int SUM = 18;

  /** Force and torque in the layout's frame. */
  static final int LOAD = 24;

  /** The image's frame: origin, then its axes x, y, z. */
  static final int FRAME = 30;

  static final int LENGTH = 42;

  private Work() {}
}
