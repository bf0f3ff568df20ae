package lodeswing.analysis.trace;

import java.util.List;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.magnet.BobEnergy;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.MagnetEnergy;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.web.layout.SampleLayouts;

/** Layouts that paths are tried on: the samples, and some of them with another loss. */
public final class TrialLayouts {

  private static final SampleLayouts SAMPLES = SampleLayouts.load();

  private TrialLayouts() {}

  /** A sample by its name. */
  public static Layout sample(String name) {
    return SAMPLES.get(name).document().layout();
  }

  /** A bench sample by its name. */
  public static BenchLayout bench(String name) {
    return (BenchLayout) sample(name);
  }

  /** A bench sample with another loss. */
  public static BenchLayout withLoss(String name, LossLaw loss) {
    BenchLayout b = bench(name);
    return new BenchLayout(
        b.suspension(), b.bob(), b.gap(), b.magnets(), b.backing(), b.gravity(), loss);
  }

  /** A bench sample with a torque of friction at its pivot beside its own loss. */
  public static BenchLayout withFriction(String name, double torque) {
    LossLaw own = bench(name).loss();
    return withLoss(name, new LossLaw(own.linear(), own.drag(), torque));
  }

  /** The bare bar of a sample without its magnets, with linear loss, air drag and friction. */
  public static BenchLayout everyLoss() {
    BenchLayout b = bench("heavy-bar");
    double linear = LossLaw.fromQualityFactor(90, b.suspension().body(), b.gravity()).linear();
    LossLaw loss = new LossLaw(linear, b.loss().drag(), b.loss().pivotTorque());
    return new BenchLayout(
        b.suspension(), b.bob(), b.gap(), List.of(), b.backing(), b.gravity(), loss);
  }

  /** A bench sample with its bob at another height. */
  public static BenchLayout withGap(String name, double gap) {
    BenchLayout b = bench(name);
    return new BenchLayout(
        b.suspension(), b.bob(), gap, b.magnets(), b.backing(), b.gravity(), b.loss());
  }

  /** The triangle of papers with another drag. */
  public static TextbookLayout triangle(double drag) {
    TextbookLayout own = (TextbookLayout) sample("paper-triangle");
    return new TextbookLayout(own.omega0(), drag, own.height(), List.copyOf(own.magnets()));
  }

  /** The exact energy of a bench. */
  public static MagnetEnergy exactEnergy(BenchLayout layout) {
    BenchLayout.BobMagnet bob = layout.bob().orElseThrow();
    return new MagnetEnergy(
        BobEnergy.of(
            bob.magnet(), bob.poleDown(), new MagnetArray(layout.magnets(), layout.backing())),
        layout.suspension().body(),
        layout.axisHeight());
  }

  /** The motion of a bench by the exact energy, without a table. */
  public static BenchMotion exactMotion(BenchLayout layout) {
    MagnetEnergy energy = exactEnergy(layout);
    return BenchMotion.amongMagnets(
        layout, energy, energy.axialForce(layout.suspension().pullLine()));
  }
}
