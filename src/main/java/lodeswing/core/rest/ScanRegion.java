package lodeswing.core.rest;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;

/**
 * Where the potential has its detail: the magnets' places and the shortest length over which the
 * potential changes.
 *
 * @param magnets places of the magnets, in the layout's order
 * @param lengthScale shortest length of the potential's detail [plan unit], positive: about the gap
 *     between bob and magnets
 */
public record ScanRegion(List<MagnetPlace> magnets, double lengthScale) {

  /** Least length scale of a bench layout [m]: closer than this the bob as good as touches. */
  private static final double LEAST_BENCH_SCALE = 0.001;

  /** Share of the clear distance to the next magnet within which a well is still a magnet's own. */
  private static final double OWN_SHARE = 0.25;

  /** Length scale where nothing stands on the plate, as a share of the rig's size. */
  private static final double EMPTY_PLATE_SHARE = 0.1;

  public ScanRegion {
    if (!(lengthScale > 0) || Double.isInfinite(lengthScale)) {
      throw new IllegalArgumentException("length scale must be positive, was " + lengthScale);
    }
    magnets = List.copyOf(magnets);
  }

  /**
   * The region of a layout. On the bench a rest point belongs to a magnet if it lies within the
   * magnet's half width, and, where the magnet attracts the bob, within a quarter of the clear
   * distance to the nearest other magnet beyond that (a magnet alone: a quarter of the length
   * scale): the suspension draws a well towards the middle, and a quarter leaves the half of the
   * way about the middle between two magnets to neither. In a textbook layout it belongs to an
   * attractor if it lies within half the nearest spacing of it (with one attractor: within the
   * height).
   */
  public static ScanRegion of(Layout layout) {
    if (layout instanceof BenchLayout bench) {
      return ofBench(bench);
    }
    return ofTextbook((TextbookLayout) layout);
  }

  private static ScanRegion ofTextbook(TextbookLayout layout) {
    double spacing = 2 * layout.height();
    double nearest = Double.POSITIVE_INFINITY;
    List<TextbookLayout.Attractor> all = layout.magnets();
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        nearest =
            Math.min(
                nearest,
                Math.hypot(all.get(i).x() - all.get(j).x(), all.get(i).y() - all.get(j).y()));
      }
    }
    double radius = 0.5 * (nearest < Double.POSITIVE_INFINITY ? nearest : spacing);
    List<MagnetPlace> places = new ArrayList<>();
    for (TextbookLayout.Attractor a : all) {
      boolean attracts = a.strength() > 0;
      places.add(new MagnetPlace(a.x(), a.y(), attracts ? radius : 0, attracts));
    }
    return new ScanRegion(places, layout.height());
  }

  private static ScanRegion ofBench(BenchLayout layout) {
    double centreHeight = layout.bobCentreHeight();
    double scale = Double.POSITIVE_INFINITY;
    for (PlacedMagnet m : layout.magnets()) {
      scale = Math.min(scale, centreHeight - m.centre().z() - m.magnet().halfHeight());
    }
    if (scale == Double.POSITIVE_INFINITY) {
      scale = EMPTY_PLATE_SHARE * layout.axisHeight();
    }
    scale = Math.max(scale, LEAST_BENCH_SCALE);
    List<MagnetPlace> places = new ArrayList<>();
    for (int i = 0; i < layout.magnets().size(); i++) {
      PlacedMagnet m = layout.magnets().get(i);
      boolean attracts = layout.bob().map(b -> b.poleDown() != m.poleUp()).orElse(false);
      double radius = m.magnet().planRadius();
      if (attracts) {
        radius += OWN_SHARE * clearDistance(i, layout.magnets()).orElse(scale);
      }
      places.add(new MagnetPlace(m.centre().x(), m.centre().y(), radius, attracts));
    }
    return new ScanRegion(places, scale);
  }

  /** Plan distance between a magnet's edge and the nearest other one's; empty without another. */
  private static OptionalDouble clearDistance(int index, List<PlacedMagnet> all) {
    PlacedMagnet one = all.get(index);
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < all.size(); i++) {
      if (i != index) {
        PlacedMagnet other = all.get(i);
        double between =
            Math.hypot(
                other.centre().x() - one.centre().x(), other.centre().y() - one.centre().y());
        double clear = between - one.magnet().planRadius() - other.magnet().planRadius();
        nearest = Math.min(nearest, Math.max(0, clear));
      }
    }
    return nearest < Double.POSITIVE_INFINITY ? OptionalDouble.of(nearest) : OptionalDouble.empty();
  }

  /**
   * A magnet's place in plan.
   *
   * @param x plan position of its centre [plan unit]
   * @param y plan position of its centre [plan unit]
   * @param radius distance within which a rest point lies over it [plan unit], 0 if none does
   * @param attracts whether it attracts a bob right above it
   */
  public record MagnetPlace(double x, double y, double radius, boolean attracts) {}
}
