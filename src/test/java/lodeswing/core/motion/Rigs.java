package lodeswing.core.motion;

import java.util.List;
import java.util.Optional;
import lodeswing.core.loss.AirDrag;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.BarPart;
import lodeswing.core.suspension.BarShape;
import lodeswing.core.suspension.Cord;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Material;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.TwoAxisBody;
import lodeswing.core.suspension.Yoke;

/** Rigs that the tests of this package share. */
final class Rigs {

  static final double GRAVITY = 9.80665;
  static final Cord CORD = new Cord(0.42, 0.045);
  static final Yoke YOKE = new Yoke(0.3, 0.15, 0.35, 0.06);
  static final HookedBar BAR = bar();

  private Rigs() {}

  private static HookedBar bar() {
    BarPart rod = BarPart.of(new BarShape.Cylinder(0.006, 0.4), Material.STEEL, 0.19);
    BarPart nut = BarPart.of(new BarShape.HexNut(0.013, 0.008, 0.0065), Material.STEEL, 0.35);
    BarPart bob = BarPart.of(new BarShape.Cylinder(0.04, 0.03), Material.BRASS, 0.405);
    return new HookedBar(0.004, List.of(rod, nut, bob), 0.42);
  }

  static List<Suspension> all() {
    return List.of(CORD, YOKE, BAR);
  }

  static BenchLayout layout(Suspension suspension, LossLaw loss) {
    return new BenchLayout(
        suspension, Optional.empty(), 0.03, List.of(), Optional.empty(), GRAVITY, loss);
  }

  /** A magnet-like attractor a little off the middle, as strong as a bench magnet. */
  static PointAttractor attractor(BenchLayout layout) {
    return attractor(layout, 3e-4);
  }

  static PointAttractor attractor(BenchLayout layout, double strength) {
    TwoAxisBody body = layout.suspension().body();
    return new PointAttractor(body, layout.axisHeight(), strength, 0.01, 0.04, -0.02, -0.003);
  }

  static BenchMotion over(BenchLayout layout, PointAttractor attractor) {
    return BenchMotion.amongMagnets(layout, attractor, forceOf(layout, attractor));
  }

  static AxialForce forceOf(BenchLayout layout, PointAttractor attractor) {
    return (beta, alpha) -> {
      double sa = Math.sin(alpha);
      double ca = Math.cos(alpha);
      double[] between = {0, sa, -ca};
      double sb = Math.sin(beta);
      double cb = Math.cos(beta);
      double[] along = {sb, cb * sa, -cb * ca};
      return attractor.forceAlong(
          beta,
          alpha,
          switch (layout.suspension().pullLine()) {
            case ALONG_BAR -> along;
            case BETWEEN_AXES -> between;
          });
    };
  }

  /** Every kind of loss at once, each felt on the bench. */
  static LossLaw everyLoss(Suspension suspension) {
    TwoAxisBody body = suspension.body();
    double linear = LossLaw.fromSwingsToHalf(25, body, GRAVITY).linear();
    AirDrag air = AirDrag.inRoom(1.1);
    List<LossLaw.DragElement> drag =
        List.of(air.small(body.bobArm(), 0.002), air.small(body.bobArm() / 2, 0.001));
    return new LossLaw(linear, drag, 2e-4 * GRAVITY * body.firstMoment());
  }

  /** The same without friction at the pivot, which is a torque and no force. */
  static LossLaw everyLossButFriction(Suspension suspension) {
    LossLaw all = everyLoss(suspension);
    return new LossLaw(all.linear(), all.drag(), 0);
  }
}
