package lodeswing.web.basin;

import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.web.layout.LayoutDocument;

/** The window that a map has where the request names none. */
public final class UsualWindow {

  /** On the bench the magnets fill about this part of the window's half width. */
  private static final double BENCH_ROOM = 1.6;

  /** Papers draw the plane model out to about so many times the magnets' distance. */
  private static final double TEXTBOOK_ROOM = 3.5;

  /** Part of the greatest release along an axis that a square may use up to its corners. */
  private static final double ALLOWED = 0.65;

  private static final double BARE_PLATE = 0.25;
  private static final double BARE_PLANE = 2;

  private UsualWindow() {}

  /** Half of its side in the layout's unit of length, in two digits; its middle is the origin. */
  public static double halfWidth(LayoutDocument document) {
    if (document.layout() instanceof BenchLayout bench) {
      return rounded(halfWidth(bench) * document.shownPerUnit());
    }
    double farthest =
        ((TextbookLayout) document.layout())
            .magnets().stream()
                .mapToDouble(m -> Math.max(Math.abs(m.x()), Math.abs(m.y())))
                .max()
                .orElse(0);
    return rounded(farthest > 0 ? TEXTBOOK_ROOM * farthest : BARE_PLANE);
  }

  private static double halfWidth(BenchLayout bench) {
    BenchMotion motion = BenchMotion.withoutMagnets(bench);
    double[] along = new double[4];
    double[] across = new double[4];
    motion.toPlan(new double[] {motion.reach(), 0, 0, 0}, along);
    motion.toPlan(new double[] {0, motion.reach(), 0, 0}, across);
    double allowed = ALLOWED * Math.min(along[0], across[1]);
    double farthest = 0;
    for (PlacedMagnet m : bench.magnets()) {
      double middle = Math.max(Math.abs(m.centre().x()), Math.abs(m.centre().y()));
      farthest = Math.max(farthest, middle + m.magnet().planRadius());
    }
    return farthest > 0 ? Math.min(allowed, BENCH_ROOM * farthest) : BARE_PLATE * allowed;
  }

  private static double rounded(double value) {
    double step = Math.pow(10, Math.floor(Math.log10(value)) - 1);
    // dividing by the inverse keeps 0.1 from becoming 0.1000...01
    return step < 1
        ? Math.rint(value / step) / Math.rint(1 / step)
        : Math.rint(value / step) * step;
  }
}
