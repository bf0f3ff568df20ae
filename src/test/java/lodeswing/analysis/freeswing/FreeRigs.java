package lodeswing.analysis.freeswing;

import java.util.List;
import java.util.Optional;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.Release;
import lodeswing.core.suspension.BarPart;
import lodeswing.core.suspension.BarShape;
import lodeswing.core.suspension.Cord;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Material;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.Yoke;
import lodeswing.web.layout.SampleLayouts;

/** Rigs that the tests of this package share. */
final class FreeRigs {

  static final double GRAVITY = 9.80665;
  static final Cord CORD = new Cord(0.5, 0.06);

  /** Leg 400 mm and drop 500 mm: 2 swings along y to 3 along x. */
  static final Yoke TWO_TO_THREE = new Yoke(0.6, 0.5, 0.4, 0.06);

  private FreeRigs() {}

  /** A steel rod with a brass weight, on a hook whose axes are so far apart. */
  static HookedBar bar(double hookOffset) {
    return new HookedBar(
        hookOffset,
        List.of(
            BarPart.of(new BarShape.Cylinder(0.006, 0.4), Material.STEEL, 0.19),
            BarPart.of(new BarShape.Cylinder(0.04, 0.03), Material.BRASS, 0.405)),
        0.42);
  }

  static BenchLayout layout(Suspension suspension, LossLaw loss) {
    return new BenchLayout(
        suspension, Optional.empty(), 0.03, List.of(), Optional.empty(), GRAVITY, loss);
  }

  static BenchLayout lossless(Suspension suspension) {
    return layout(suspension, LossLaw.none());
  }

  static Layout sample(String name) {
    return SampleLayouts.load().get(name).document().layout();
  }

  static FreePath path(Layout layout, Release release, double duration, double longest) {
    FreeSwing swing = FreeSwing.of(layout);
    double[] start = swing.motion().toState(release).orElseThrow();
    return swing.follow(start, duration, longest, done -> {});
  }
}
