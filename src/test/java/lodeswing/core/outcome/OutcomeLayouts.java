package lodeswing.core.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;

/** Landscapes that the tests of outcomes share, each made once. */
final class OutcomeLayouts {

  private static final ConcurrentHashMap<Layout, Landscape> MADE = new ConcurrentHashMap<>();

  private OutcomeLayouts() {}

  static Landscape of(Layout layout) {
    return MADE.computeIfAbsent(layout, Landscape::of);
  }

  /** Attractors of strength 1 evenly on a ring. */
  static Landscape plane(int attractors) {
    return of(ring(attractors, 0.2));
  }

  static TextbookLayout ring(int attractors, double drag) {
    List<TextbookLayout.Attractor> magnets = new ArrayList<>();
    for (int m = 0; m < attractors; m++) {
      double angle = 2 * Math.PI * m / attractors;
      magnets.add(
          new TextbookLayout.Attractor(
              0.57735 * StrictMath.cos(angle), 0.57735 * StrictMath.sin(angle), 1));
    }
    return new TextbookLayout(0.5, drag, 0.3, magnets);
  }

  /** The three stations with so much loss that half the swing is gone in four. */
  static Landscape bench() {
    return of(lossy("three-stations", 4, List.of(), 0));
  }

  /** A rig with linear loss, air drag and friction at its pivot. */
  static Landscape benchWithDragAndFriction() {
    return of(lossy("three-stations", 8, List.of(new LossLaw.DragElement(0.42, 3e-3)), 2e-6));
  }

  /** A bob without a magnet that may strike a magnet standing in its way. */
  static Landscape blocked() {
    BenchLayout b = TrialLayouts.bench("quiet-plate");
    Disc tall = new Disc(0.01, 0.008, 0.1);
    PlacedMagnet inTheWay =
        new PlacedMagnet(tall, new Vec3(0.03, 0, tall.halfHeight()), 0, Pole.SOUTH);
    return of(
        new BenchLayout(
            b.suspension(),
            Optional.empty(),
            0.004,
            List.of(inTheWay),
            Optional.empty(),
            b.gravity(),
            b.loss()));
  }

  private static BenchLayout lossy(
      String name, double swings, List<LossLaw.DragElement> drag, double torque) {
    BenchLayout b = TrialLayouts.bench(name);
    double linear = LossLaw.fromSwingsToHalf(swings, b.suspension().body(), b.gravity()).linear();
    return TrialLayouts.withLoss(name, new LossLaw(linear, drag, torque));
  }
}
