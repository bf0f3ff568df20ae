package lodeswing.core.field;

/** Over which the field is shown: one height to each place of the plan. */
@FunctionalInterface
public interface Surface {

  /** Height over a place of the plan [m]; NaN where the surface has none. */
  double height(double x, double y);

  /** A level plane at a height [m]. */
  static Surface level(double height) {
    return (x, y) -> height;
  }
}
