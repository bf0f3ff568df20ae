package lodeswing.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;

/**
 * A layout that outcomes on lanes are held against other runs on.
 *
 * @param name how a check calls it
 * @param layout what stands there
 * @param reach half-width of the square that bobs are let go in [plan unit]
 */
record LaneScene(String name, Layout layout, double reach) {

  private static final double TEXTBOOK_REACH = 2;
  private static final double BENCH_REACH = 0.06;

  /** Part of the reach that a bob let go moves by in a unit of time, at most. */
  private static final double THROW = 0.2;

  /** Twelve rings of attractors, some of which repel, and eight benches with every kind of loss. */
  static List<LaneScene> twenty() {
    List<LaneScene> scenes = new ArrayList<>();
    for (int attractors = 1; attractors <= 12; attractors++) {
      scenes.add(new LaneScene("ring of " + attractors, ring(attractors), TEXTBOOK_REACH));
    }
    List<LossLaw.DragElement> air = List.of(new LossLaw.DragElement(0.42, 3e-3));
    for (String name : List.of("three-stations", "one-well", "kitchen-drawer", "turned-centre")) {
      scenes.add(bench(name, "", 4, List.of(), 0));
    }
    scenes.add(bench("three-stations", ", air", 6, air, 0));
    scenes.add(bench("three-stations", ", friction", 6, List.of(), 2e-6));
    scenes.add(bench("kitchen-drawer", ", air, friction", 6, air, 2e-6));
    scenes.add(bench("quiet-plate", ", air", 6, air, 0));
    return scenes;
  }

  private static TextbookLayout ring(int attractors) {
    List<TextbookLayout.Attractor> magnets = new ArrayList<>();
    for (int m = 0; m < attractors; m++) {
      double angle = 2 * Math.PI * m / attractors;
      double strength = m % 4 == 3 ? -0.5 : 1;
      magnets.add(
          new TextbookLayout.Attractor(
              0.6 * StrictMath.cos(angle), 0.6 * StrictMath.sin(angle), strength));
    }
    return new TextbookLayout(0.5, 0.15 + 0.01 * attractors, 0.3, magnets);
  }

  private static LaneScene bench(
      String sample, String suffix, double swings, List<LossLaw.DragElement> drag, double torque) {
    BenchLayout b = TrialLayouts.bench(sample);
    double linear = LossLaw.fromSwingsToHalf(swings, b.suspension().body(), b.gravity()).linear();
    LossLaw loss = new LossLaw(linear, drag, torque);
    return new LaneScene(sample + suffix, TrialLayouts.withLoss(sample, loss), BENCH_REACH);
  }

  /**
   * Random releases, plan x, y, vx, vy side by side.
   *
   * @param count how many
   * @param seed of the random numbers
   * @param times how many times the reach they are spread over
   */
  double[] releases(int count, long seed, double times) {
    Random random = new Random(seed);
    double[] releases = new double[4 * count];
    for (int i = 0; i < 4 * count; i++) {
      releases[i] = (i % 4 < 2 ? 1 : THROW) * times * reach * (2 * random.nextDouble() - 1);
    }
    return releases;
  }
}
