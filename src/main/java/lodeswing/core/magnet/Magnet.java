package lodeswing.core.magnet;

/**
 * A permanent magnet, uniformly magnetised along its own z axis, north face up, centred on the
 * origin of its own frame.
 */
public sealed interface Magnet permits Disc, Ring, Block, Sphere, Dipole {

  /** Magnetic moment [A m^2], positive. */
  double moment();

  /** Half its extent along its axis [m]; 0 for a dipole. */
  double halfHeight();

  /** Radius of the smallest circle about its axis that holds its plan [m]; 0 for a dipole. */
  double planRadius();

  /**
   * The same magnet with another strength.
   *
   * @param factor of its remanence or moment, above 0
   */
  Magnet strengthened(double factor);

  /** Volume of its material [m^3]; 0 for a dipole. */
  double volume();

  /**
   * Magnetic scalar potential [A] outside the material, H = -grad of it, in the magnet's own frame.
   */
  double potential(double x, double y, double z);

  /**
   * Flux density [T] in the magnet's own frame, outside and (for extended shapes) inside the
   * material.
   *
   * @param b receives the components along x, y and z; length at least 3
   */
  void field(double x, double y, double z, double[] b);
}
