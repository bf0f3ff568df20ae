package lodeswing.core.magnet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.core.geometry.Vec3;

/**
 * The magnets of a plate, with the steel below them where there is any.
 *
 * <p>Steel is a plane of infinite permeability: each magnet gains its mirror image in the plane,
 * whose moment keeps its vertical component and turns its horizontal one round (J. D. Jackson,
 * Classical Electrodynamics, 3rd ed. (1999), section 5.12 and problem 5.17, for permeability to
 * infinity). Above the steel only; a thin sheet pulls less than this.
 *
 * <p>Immutable and safe for use by many threads. Not finite where a dipole stands.
 */
public final class MagnetArray {

  private static final double CONTACT_SLACK = 1e-9;

  private final List<PlacedMagnet> magnets;
  private final Optional<SteelBacking> backing;
  private final List<PlacedSource> sources;

  /**
   * An array of magnets.
   *
   * @throws IllegalArgumentException where a magnet reaches into the steel
   */
  public MagnetArray(List<PlacedMagnet> magnets, Optional<SteelBacking> backing) {
    this.magnets = List.copyOf(magnets);
    this.backing = backing;
    List<PlacedSource> all = new ArrayList<>();
    for (PlacedMagnet placed : this.magnets) {
      all.add(PlacedSource.of(placed, placed.centre()));
      backing.ifPresent(steel -> all.add(PlacedSource.of(placed, mirrored(placed, steel))));
    }
    this.sources = List.copyOf(all);
  }

  private static Vec3 mirrored(PlacedMagnet placed, SteelBacking steel) {
    Vec3 centre = placed.centre();
    double bottom = centre.z() - placed.magnet().halfHeight();
    if (bottom < steel.top() - CONTACT_SLACK) {
      throw new IllegalArgumentException(
          "a magnet's lower face at " + bottom + " m reaches into the steel at " + steel.top());
    }
    return new Vec3(centre.x(), centre.y(), 2 * steel.top() - centre.z());
  }

  /** The magnets as given, without images. */
  public List<PlacedMagnet> magnets() {
    return magnets;
  }

  /** The steel below them. */
  public Optional<SteelBacking> backing() {
    return backing;
  }

  /** Magnets and images as sources of field. */
  public List<PlacedSource> sources() {
    return sources;
  }

  /**
   * Flux density of all magnets and images.
   *
   * @param x in the layout's frame [m], like y and z
   * @param b receives the components along x, y and z [T]; length at least 3
   */
  public void field(double x, double y, double z, double[] b) {
    double sumX = 0;
    double sumY = 0;
    double sumZ = 0;
    for (PlacedSource source : sources) {
      source.field(x, y, z, b);
      sumX += b[0];
      sumY += b[1];
      sumZ += b[2];
    }
    b[0] = sumX;
    b[1] = sumY;
    b[2] = sumZ;
  }

  /** Magnetic scalar potential of all magnets and images [A], outside the material. */
  public double potential(double x, double y, double z) {
    double sum = 0;
    for (PlacedSource source : sources) {
      sum += source.potential(x, y, z);
    }
    return sum;
  }
}
