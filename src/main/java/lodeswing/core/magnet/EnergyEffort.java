package lodeswing.core.magnet;

import java.util.List;

/**
 * How much work one energy of a bob magnet is, in evaluations of a tabulated potential.
 *
 * <p>The number of points on the bob's faces comes from the very rules that {@link BobEnergy}
 * takes; closed forms count as many tabulated potentials as they take the time of. Immutable;
 * allocates nothing.
 */
public final class EnergyEffort {

  /** Closed form of a disc against a tabulated potential, by estimate. */
  private static final double DISC = 10;

  /** A ring is two discs. */
  private static final double RING = 20;

  /** Closed form of a block against a tabulated potential, held against the sample heavy-bar. */
  private static final double BLOCK = 15;

  /** Making the table of one kind of disc or ring. */
  private static final double TABLE = 1.5e6;

  private final BobProbe probe;
  private final Magnet bob;
  private final List<PlacedSource> sources;
  private final double imagePlane;
  private final double tables;

  /** The effort of a bob over an array. */
  public EnergyEffort(Magnet bob, MagnetArray array) {
    this.bob = bob;
    this.probe = BobProbe.of(bob, Pole.NORTH);
    this.sources = array.sources();
    this.imagePlane = array.backing().map(SteelBacking::top).orElse(Double.NaN);
    boolean faces = probe instanceof FaceProbe;
    long kinds =
        faces
            ? sources.stream()
                .map(PlacedSource::magnet)
                .filter(EnergyEffort::tabulated)
                .distinct()
                .count()
            : 0;
    this.tables = TABLE * kinds;
  }

  /** The work before the first energy: tables of the kinds of magnets. */
  public double tables() {
    return tables;
  }

  /**
   * The work of one energy.
   *
   * @param x place of the bob's centre in the layout's frame [m], like y and z
   * @param tilt cosine of the bob's axis to the vertical
   */
  public double at(double x, double y, double z, double tilt) {
    double sum = 0;
    for (int i = 0; i < sources.size(); i++) {
      PlacedSource place = sources.get(i);
      double dx = x - place.x();
      double dy = y - place.y();
      double u = place.cosTurn() * dx + place.sinTurn() * dy;
      double v = place.cosTurn() * dy - place.sinTurn() * dx;
      sum += of(place.magnet(), u, v, z - place.z(), tilt);
    }
    return Double.isNaN(imagePlane) ? sum : sum + of(bob, 0, 0, 2 * (z - imagePlane), tilt);
  }

  private double of(Magnet source, double x, double y, double z, double tilt) {
    if (!(probe instanceof FaceProbe faces)) {
      return closedForm(source);
    }
    double edge = SourceEdge.distance(source, x, y, z);
    double height = Math.abs(z) - source.halfHeight();
    FaceRule rule = faces.faces().rule(source, edge, height, tilt);
    double farEnough = bob.planRadius() + bob.halfHeight();
    double each = tabulated(source) && edge > farEnough ? 1 : closedForm(source);
    return 2.0 * rule.size() * each;
  }

  private static boolean tabulated(Magnet magnet) {
    return magnet instanceof Disc || magnet instanceof Ring;
  }

  private static double closedForm(Magnet magnet) {
    if (magnet instanceof Disc) {
      return DISC;
    }
    if (magnet instanceof Ring) {
      return RING;
    }
    return magnet instanceof Block ? BLOCK : 1;
  }
}
