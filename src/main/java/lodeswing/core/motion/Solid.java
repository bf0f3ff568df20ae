package lodeswing.core.motion;

import java.util.Optional;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.Sphere;

/**
 * Outline of a magnet as the Minkowski sum of a box, a disc across the axis and a ball, so that one
 * support function covers every shape: a disc is rim and half height, a block is a box, a sphere a
 * ball, a dipole nothing. A ring counts as filled.
 *
 * @param halfLength half extent along its own x [m]
 * @param halfWidth half extent along its own y [m]
 * @param halfHeight half extent along its axis [m]
 * @param rim radius of the disc [m]
 * @param ball radius of the ball [m]
 */
record Solid(double halfLength, double halfWidth, double halfHeight, double rim, double ball) {

  /** The outline of a magnet. */
  static Solid of(Magnet magnet) {
    if (magnet instanceof Block block) {
      return new Solid(block.length() / 2, block.width() / 2, block.halfHeight(), 0, 0);
    }
    if (magnet instanceof Sphere sphere) {
      return new Solid(0, 0, 0, 0, sphere.radius());
    }
    return new Solid(0, 0, magnet.halfHeight(), magnet.planRadius(), 0);
  }

  /** The outline of a bob's magnet, a point where there is none. */
  static Solid of(Optional<Magnet> magnet) {
    return magnet.map(Solid::of).orElseGet(() -> new Solid(0, 0, 0, 0, 0));
  }

  /**
   * Largest distance of the outline from its centre along a unit vector, given by its components in
   * the solid's own frame.
   */
  double support(double nx, double ny, double nz) {
    double box =
        Math.fma(
            halfLength, Math.abs(nx), Math.fma(halfWidth, Math.abs(ny), halfHeight * Math.abs(nz)));
    return Math.fma(rim, Math.sqrt(Math.fma(nx, nx, ny * ny)), box) + ball;
  }

  /** Radius of a ball about the centre that holds the outline [m]. */
  double boundingRadius() {
    double plan = Math.sqrt(halfLength * halfLength + halfWidth * halfWidth) + rim;
    return Math.sqrt(plan * plan + halfHeight * halfHeight) + ball;
  }
}
