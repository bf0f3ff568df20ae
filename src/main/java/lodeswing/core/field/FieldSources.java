package lodeswing.core.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.magnet.MagneticConstant;
import lodeswing.core.magnet.PlacedSource;
import lodeswing.core.magnet.Ring;
import lodeswing.core.magnet.Sphere;

/**
 * The magnets of a plate and their images, ready for lanes: a ring is a disc less a disc, discs of
 * one shape share one series.
 *
 * <p>Immutable and safe for use by many threads.
 */
public final class FieldSources {

  private final List<FieldSource> list;

  /** The sources of an array. */
  public FieldSources(MagnetArray array) {
    Map<Double, DiscSeries> series = new HashMap<>();
    List<FieldSource> all = new ArrayList<>();
    for (PlacedSource source : array.sources()) {
      add(source, series, all);
    }
    this.list = List.copyOf(all);
  }

  private static void add(
      PlacedSource source, Map<Double, DiscSeries> series, List<FieldSource> all) {
    Magnet magnet = source.magnet();
    if (magnet instanceof Disc disc) {
      all.add(round(source, disc.radius(), disc.height() / 2, disc.remanence(), series));
    } else if (magnet instanceof Ring ring) {
      double half = ring.height() / 2;
      all.add(round(source, ring.outerRadius(), half, ring.remanence(), series));
      all.add(round(source, ring.innerRadius(), half, -ring.remanence(), series));
    } else if (magnet instanceof Sphere sphere) {
      all.add(point(source, sphere.radius(), 2 * sphere.remanence() / 3));
    } else if (magnet instanceof Dipole) {
      all.add(point(source, 0, 0));
    } else if (magnet instanceof Block) {
      all.add(new FieldSource.Plain(source));
    }
  }

  private static FieldSource round(
      PlacedSource source,
      double radius,
      double half,
      double remanence,
      Map<Double, DiscSeries> series) {
    double cosine = half / Math.sqrt(radius * radius + half * half);
    return new FieldSource.Round(
        source.x(),
        source.y(),
        source.z(),
        radius,
        half,
        source.sign() * remanence,
        series.computeIfAbsent(cosine, DiscSeries::new),
        new Disc(radius, 2 * half, 1));
  }

  private static FieldSource point(PlacedSource source, double radius, double inside) {
    double strength = MagneticConstant.MU_0 * source.magnet().moment() / (4 * Math.PI);
    return new FieldSource.Point(
        source.x(),
        source.y(),
        source.z(),
        source.sign() * strength,
        radius,
        source.sign() * inside);
  }

  /** How many there are, a ring counting twice. */
  public int count() {
    return list.size();
  }

  /**
   * Flux density at a single point, equal to {@link MagnetArray#field} but for rounding and several
   * times as fast, since a series takes no more terms than its distance needs.
   *
   * @param b receives x, y and z [T]
   */
  public void field(double x, double y, double z, double[] b) {
    double[] work = new double[3];
    b[0] = 0;
    b[1] = 0;
    b[2] = 0;
    for (FieldSource source : list) {
      source.addAt(x, y, z, b, work);
    }
  }

  /** All of them. */
  List<FieldSource> list() {
    return list;
  }
}
