package lodeswing.core.rest;

import java.util.ArrayList;
import java.util.List;
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
   * magnet's plan; in a textbook layout, if it lies within half the nearest spacing of an attractor
   * (with one attractor: within the height).
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
    List<MagnetPlace> places = new ArrayList<>();
    for (PlacedMagnet m : layout.magnets()) {
      boolean attracts = layout.bob().map(b -> b.poleDown() != m.poleUp()).orElse(false);
      places.add(
          new MagnetPlace(m.centre().x(), m.centre().y(), m.magnet().planRadius(), attracts));
      scale = Math.min(scale, centreHeight - m.centre().z() - m.magnet().halfHeight());
    }
    if (scale == Double.POSITIVE_INFINITY) {
      scale = EMPTY_PLATE_SHARE * layout.axisHeight();
    }
    return new ScanRegion(places, Math.max(scale, LEAST_BENCH_SCALE));
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
