package lodeswing.figure;

import java.util.Optional;

/**
 * Fill and outline of a closed shape.
 *
 * @param fill what fills it; not filled where empty
 * @param stroke its outline; none where empty
 */
public record Style(Optional<Tint> fill, Optional<Stroke> stroke) {

  /** Filled, without an outline. */
  public static Style filled(Tint tint) {
    return new Style(Optional.of(tint), Optional.empty());
  }

  /** An outline alone. */
  public static Style outlined(Stroke stroke) {
    return new Style(Optional.empty(), Optional.of(stroke));
  }

  /** Filled and outlined. */
  public static Style of(Tint tint, Stroke stroke) {
    return new Style(Optional.of(tint), Optional.of(stroke));
  }
}
