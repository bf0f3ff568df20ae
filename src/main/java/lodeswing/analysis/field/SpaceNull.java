package lodeswing.analysis.field;

/**
 * A place in space where the whole field vanishes.
 *
 * <p>A field without sources and curl can vanish in one way only: along a line, the spine, it comes
 * in (or leaves) from both sides, and in the plane across, the fan, it leaves (or comes in) to all
 * sides; a saddle. Source: C. E. Parnell, J. M. Smith, T. Neukirch and E. R. Priest, Phys. Plasmas
 * 3 (1996) 759.
 *
 * @param x place [m]
 * @param y place [m]
 * @param z height [m]
 * @param index sign of the determinant of the field's slopes: 1 where the field comes in over the
 *     fan and leaves along the spine, -1 the other way
 * @param spineX direction of the spine, of length 1
 * @param spineY of it
 * @param spineZ of it
 */
public record SpaceNull(
    double x, double y, double z, int index, double spineX, double spineY, double spineZ) {}
