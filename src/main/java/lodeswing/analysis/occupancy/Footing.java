package lodeswing.analysis.occupancy;

import java.util.List;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;

/**
 * The parts of the plan that lie over a magnet: on the bench the circle about it in plan (of the
 * bob magnet's size where it has none), in a textbook layout all within one height of it.
 *
 * @param discs x, y and radius of each
 */
record Footing(List<Disc> discs) {

  /** One of them. */
  record Disc(double x, double y, double radius) {}

  Footing {
    discs = List.copyOf(discs);
  }

  static Footing of(Layout layout) {
    if (layout instanceof TextbookLayout textbook) {
      return new Footing(
          textbook.magnets().stream()
              .map(magnet -> new Disc(magnet.x(), magnet.y(), textbook.height()))
              .toList());
    }
    BenchLayout bench = (BenchLayout) layout;
    double own = bench.bob().map(bob -> bob.magnet().planRadius()).orElse(0.0);
    return new Footing(
        bench.magnets().stream()
            .map(magnet -> new Disc(magnet.centre().x(), magnet.centre().y(), radius(magnet, own)))
            .toList());
  }

  private static double radius(PlacedMagnet placed, double own) {
    double radius = placed.magnet().planRadius();
    return radius > 0 ? radius : own;
  }

  boolean holds(double x, double y) {
    return discs.stream().anyMatch(disc -> Math.hypot(x - disc.x(), y - disc.y()) <= disc.radius());
  }
}
