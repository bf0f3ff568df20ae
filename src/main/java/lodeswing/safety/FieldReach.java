package lodeswing.safety;

import java.util.List;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.MagneticConstant;

/**
 * How far a field reaches: the distance in front of the pole face (of a dipole from the point)
 * beyond which the flux density stays below a value. There it reaches farthest: far away twice as
 * far in density as beside the magnet (J. D. Jackson, Classical Electrodynamics, 3rd ed. (1999),
 * eq. 5.56).
 *
 * <p>Distances of many sizes are those on the axis; nearer, a ring or a flat disc is strongest over
 * its rim, so the greatest density over the whole face counts.
 */
final class FieldReach {

  /** Each look outside in is nearer by this factor. */
  private static final double NEARER = 1.1;

  /** Looks from the middle of the face to past its rim. */
  private static final double[] ASIDE = {0, 0.25, 0.5, 0.7, 0.85, 0.95, 1, 1.1};

  private static final double CLOSEST = 1e-5;
  private static final double PRECISION = 1e-9;

  private FieldReach() {}

  /**
   * The distance for one magnet by itself [m]; 0 where it has less a hundredth of a millimetre
   * away.
   *
   * @param density flux density [T], above 0
   */
  static double of(Magnet magnet, double density) {
    return of(List.of(new Share(magnet, 1)), density);
  }

  /**
   * Magnets that are alike.
   *
   * @param magnet one of them
   * @param count how many
   */
  record Share(Magnet magnet, int count) {}

  /**
   * A distance from the nearest of some magnets beyond which they do not have a flux density
   * together, however they lie: each is taken as if its face pointed there and it were as near as
   * the nearest.
   */
  static double of(List<Share> magnets, double density) {
    double moment = 0;
    double size = 0;
    for (Share share : magnets) {
      moment += share.count() * share.magnet().moment();
      size = Math.max(size, share.magnet().planRadius() + share.magnet().halfHeight());
    }
    if (moment == 0) {
      return 0;
    }
    double far = 2 * Math.cbrt(MagneticConstant.MU_0 * moment / (2 * Math.PI * density)) + 4 * size;
    double near = far;
    while (greatest(magnets, near) <= density) {
      far = near;
      near /= NEARER;
      if (near < CLOSEST) {
        return 0;
      }
    }
    while (far - near > PRECISION * far) {
      double middle = (near + far) / 2;
      if (greatest(magnets, middle) > density) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return near;
  }

  /** The greatest flux density at a distance from the faces, that of all magnets summed [T]. */
  static double greatest(List<Share> magnets, double distance) {
    double sum = 0;
    for (Share share : magnets) {
      sum += share.count() * greatest(share.magnet(), distance);
    }
    return sum;
  }

  private static double greatest(Magnet magnet, double distance) {
    double height = magnet.halfHeight() + distance;
    double greatest = 0;
    double[] b = new double[3];
    for (double aside : ASIDE) {
      double[][] places =
          magnet instanceof Block block
              ? new double[][] {
                {aside * block.length() / 2, 0},
                {0, aside * block.width() / 2},
                {aside * block.length() / 2, aside * block.width() / 2}
              }
              : new double[][] {{aside * magnet.planRadius(), 0}};
      for (double[] place : places) {
        magnet.field(place[0], place[1], height, b);
        greatest = Math.max(greatest, Math.hypot(b[2], Math.hypot(b[0], b[1])));
      }
    }
    return greatest;
  }
}
