package lodeswing.figure;

/**
 * How a line is drawn.
 *
 * @param tint its colour's meaning
 * @param width [px at the drawing's nominal width]
 * @param dash its pattern
 * @param opacity 0 (not seen) to 1
 */
public record Stroke(Tint tint, double width, Dash dash, double opacity) {

  /** A solid, opaque line. */
  public static Stroke solid(Tint tint, double width) {
    return new Stroke(tint, width, Dash.SOLID, 1);
  }

  /** The same line with another pattern. */
  public Stroke with(Dash other) {
    return new Stroke(tint, width, other, opacity);
  }
}
