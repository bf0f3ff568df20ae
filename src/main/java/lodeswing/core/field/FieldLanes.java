package lodeswing.core.field;

/**
 * Passes over a block of points, a lane each: what the flux density of round sources is made of.
 *
 * <p>Every implementation does the same + - * / sqrt and fma on a point in the same order, none of
 * them across points, so that all give the same bits. An instance belongs to one thread.
 *
 * <p>Within a few radii a disc's flux density comes from two complete elliptic integrals a face by
 * Bulirsch's descending means (N. Derby and S. Olbert, Am. J. Phys. 78 (2010) 229, eqs 1 to 5);
 * both share one arithmetic-geometric mean. As many means are taken for all points of a block as
 * the worst of them needs. Farther off it comes from the multipole series (see {@link DiscSeries}).
 */
public interface FieldLanes {

  /** Cosine of the angle at which a modulus counts as 0, as in the scalar form. */
  double SMALLEST_MODULUS = 1e-120;

  /** Keeps the axis itself from dividing by 0; what is divided is 0 there. */
  double SMALLEST_DISTANCE = 1e-200;

  /** The slots, see {@link FieldSlots}. */
  double[] slots();

  /** Writes the places seen from a source's centre. */
  void locate(double x, double y, double z);

  /**
   * Adds a point dipole, or a sphere with its inside.
   *
   * @param strength mu0 m/(4 pi), signed [T m^3]
   * @param insideSquared square of the sphere's radius; 0 for a dipole
   * @param inside flux density along z within it [T]
   */
  void addDipole(double strength, double insideSquared, double inside);

  /**
   * Begins a charged face's two integrals.
   *
   * @param face {@link FieldSlots#UPPER} or {@link FieldSlots#LOWER}
   * @param radius of the disc [m]
   * @param shift height of the source's centre over the face [m]
   */
  void beginFace(int face, double radius, double shift);

  /** Takes one more mean on a face. */
  void takeMean(int face);

  /** Ends a face's integrals: writes its axial and its radial part. */
  void endFace(int face);

  /**
   * Adds what both faces make, where the square of the distance is at most a border.
   *
   * @param radius of the disc [m]
   * @param factor half the remanence, signed [T]
   */
  void addNear(double radius, double factor, double border);

  /**
   * Begins the series of a far source.
   *
   * @param squared square of the circumscribed radius [m^2]
   */
  void beginFar(double squared);

  /**
   * One step of both backward recurrences (C. W. Clenshaw, MTAC 9 (1955) 118).
   *
   * @param series the coefficients
   * @param term which term
   */
  void takeTerm(DiscSeries series, int term);

  /**
   * Adds the series, where the square of the distance is beyond a border.
   *
   * @param factor the remanence, signed [T]
   */
  void addFar(double factor, double border);
}
