package lodeswing.core.landscape;

import lodeswing.core.motion.Motion;
import lodeswing.core.motion.TextbookMotion;
import lodeswing.core.rest.RestPointFinder;
import lodeswing.core.rest.RestPoints;
import lodeswing.core.rest.ScanRegion;
import lodeswing.core.rest.SealRule;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;

/**
 * A layout made ready for analyses: what moves, where it can rest, and from when an end is certain.
 *
 * <p>Costly to make, cheap to use; immutable and safe for several threads.
 */
public final class Landscape {

  /** Drift that an integrator at the traces' tolerance may add, as a share of the barrier. */
  private static final double DRIFT_SHARE = 1e-6;

  private final Layout layout;
  private final Motion motion;
  private final RestPoints restPoints;
  private final SealRule sealRule;
  private final TableErrors tableErrors;
  private final PlanScale planScale;

  private Landscape(
      Layout layout, Motion motion, RestPoints restPoints, TableErrors errors, PlanScale scale) {
    this.layout = layout;
    this.motion = motion;
    this.restPoints = restPoints;
    this.tableErrors = errors;
    this.planScale = scale;
    double barrier = restPoints.shallowestBarrier();
    double margin =
        Double.isFinite(barrier) ? errors.energy() + DRIFT_SHARE * barrier : errors.energy();
    this.sealRule = restPoints.sealRule(margin);
  }

  /** Makes a layout ready, on all cores. */
  public static Landscape of(Layout layout) {
    PlanScale scale = PlanScale.of(layout);
    if (layout instanceof BenchLayout bench) {
      TabulatedRig rig = TabulatedRig.of(bench);
      return new Landscape(layout, rig.motion(), rig.restPoints(), rig.errors(), scale);
    }
    Motion motion = new TextbookMotion((TextbookLayout) layout);
    RestPoints points = new RestPointFinder(motion, ScanRegion.of(layout)).find();
    return new Landscape(layout, motion, points, TableErrors.NONE, scale);
  }

  /** The layout. */
  public Layout layout() {
    return layout;
  }

  /** Its equations of motion. */
  public Motion motion() {
    return motion;
  }

  /** Its rest points and passes. */
  public RestPoints restPoints() {
    return restPoints;
  }

  /** The rule that says from when an end is certain. */
  public SealRule sealRule() {
    return sealRule;
  }

  /** Errors that the table adds to the exact motion. */
  public TableErrors tableErrors() {
    return tableErrors;
  }

  /** Lengths in plan that horizons are held against. */
  public PlanScale planScale() {
    return planScale;
  }

  /** Whether nothing takes energy out. */
  public boolean lossless() {
    return layout.lossless();
  }
}
