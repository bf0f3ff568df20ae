package lodeswing.core.magnet;

import lodeswing.core.geometry.Vec3;

/**
 * An upright magnet, or its image, as a source of field: where it stands, how it is turned, which
 * way its moment points.
 */
public record PlacedSource(
    Magnet magnet, double x, double y, double z, double cosTurn, double sinTurn, double sign) {

  static PlacedSource of(PlacedMagnet placed, Vec3 centre) {
    boolean turned = placed.magnet() instanceof Block && placed.turn() != 0;
    return new PlacedSource(
        placed.magnet(),
        centre.x(),
        centre.y(),
        centre.z(),
        turned ? Math.cos(placed.turn()) : 1,
        turned ? Math.sin(placed.turn()) : 0,
        placed.poleUp().sign());
  }

  /** Its scalar potential at a place of the layout's frame [A], outside the material. */
  public double potential(double px, double py, double pz) {
    double dx = px - x;
    double dy = py - y;
    return sign
        * magnet.potential(cosTurn * dx + sinTurn * dy, cosTurn * dy - sinTurn * dx, pz - z);
  }

  /**
   * Its flux density at a place of the layout's frame.
   *
   * @param b receives the components along x, y and z [T]; length at least 3
   */
  public void field(double px, double py, double pz, double[] b) {
    double dx = px - x;
    double dy = py - y;
    magnet.field(cosTurn * dx + sinTurn * dy, cosTurn * dy - sinTurn * dx, pz - z, b);
    double bx = b[0];
    double by = b[1];
    b[0] = sign * (cosTurn * bx - sinTurn * by);
    b[1] = sign * (sinTurn * bx + cosTurn * by);
    b[2] *= sign;
  }
}
