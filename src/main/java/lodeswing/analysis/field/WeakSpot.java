package lodeswing.analysis.field;

import java.util.Optional;

/**
 * A place where the field, or its part in the plane, is weaker than all round.
 *
 * @param kind what it is
 * @param x place [m]
 * @param y place [m]
 * @param z height of the surface there [m]
 * @param strength of what is looked at, 0 at a zero [T]
 * @param vertical the field's upright component there [T]
 * @param zone how far the weakness reaches; nothing where a zone cannot be told, as on a line
 */
public record WeakSpot(
    SpotKind kind,
    double x,
    double y,
    double z,
    double strength,
    double vertical,
    Optional<Zone> zone) {

  /**
   * How far a weakness reaches, and the lowest way out of it.
   *
   * @param level half way from the spot's strength to that of the pass [T]
   * @param area where the strength is below that about the spot [m^2]
   * @param pass strength that must be met at least on any way to another weak spot or beyond the
   *     window's edge [T]
   * @param passX where that is, within a place of the grid [m]
   * @param passY where that is
   * @param outwards whether that way leads out of the window, not to another spot
   */
  public record Zone(
      double level, double area, double pass, double passX, double passY, boolean outwards) {

    /** Diameter of the circle of the same area [m]. */
    public double across() {
      return 2 * Math.sqrt(area / Math.PI);
    }
  }
}
