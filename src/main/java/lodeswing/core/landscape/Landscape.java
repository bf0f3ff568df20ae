package lodeswing.core.landscape;

import java.util.Optional;
import java.util.function.DoubleConsumer;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.Motion;
import lodeswing.core.motion.PreparingForecast;
import lodeswing.core.motion.TextbookMotion;
import lodeswing.core.motion.WorkExceededException;
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

  /** Relative error of a step from which the loose table serves. */
  private static final double LOOSE = 1e-6;

  /** Memory of a scan for rest points, about. */
  private static final long SCAN_BYTES = 4L << 20;

  private final Layout layout;
  private final Motion motion;
  private final RestPoints restPoints;
  private final SealRule sealRule;
  private final TableErrors tableErrors;
  private final PlanScale planScale;
  private final LimitMap limitMap;
  private final MirrorSymmetry symmetry;
  private final TabulatedRig.Making making;
  private final Optional<Landscape> loose;

  private Landscape(Layout layout, TabulatedRig rig) {
    this.layout = layout;
    this.motion = rig.motion();
    this.restPoints = rig.restPoints();
    this.tableErrors = rig.errors();
    this.making = rig.making();
    this.planScale = PlanScale.of(layout);
    this.limitMap = LimitMap.of(motion);
    this.sealRule = sealRule(restPoints, tableErrors);
    this.symmetry = MirrorSymmetry.of(layout, restPoints.list());
    this.loose = rig.loose().map(of -> new Landscape(this, of));
  }

  private Landscape(Layout layout, Motion motion, RestPoints restPoints) {
    this.layout = layout;
    this.motion = motion;
    this.restPoints = restPoints;
    this.tableErrors = TableErrors.NONE;
    this.making = TabulatedRig.Making.NOTHING;
    this.planScale = PlanScale.of(layout);
    this.limitMap = LimitMap.of(motion);
    this.sealRule = sealRule(restPoints, tableErrors);
    this.symmetry = MirrorSymmetry.of(layout, restPoints.list());
    this.loose = Optional.empty();
  }

  private Landscape(Landscape fine, TabulatedRig.Loose rig) {
    this.layout = fine.layout;
    this.motion = rig.motion();
    this.restPoints = fine.restPoints;
    this.tableErrors = rig.errors();
    this.making = fine.making;
    this.planScale = fine.planScale;
    this.limitMap = fine.limitMap;
    this.sealRule = sealRule(restPoints, tableErrors);
    this.symmetry = fine.symmetry;
    this.loose = Optional.empty();
  }

  private Landscape(Landscape other, Layout layout, Motion motion, Optional<Landscape> loose) {
    this.layout = layout;
    this.motion = motion;
    this.restPoints = other.restPoints;
    this.tableErrors = other.tableErrors;
    this.making = other.making;
    this.planScale = other.planScale;
    this.limitMap = LimitMap.of(motion);
    this.sealRule = other.sealRule;
    this.symmetry = other.symmetry;
    this.loose = loose;
  }

  private static SealRule sealRule(RestPoints restPoints, TableErrors errors) {
    double barrier = restPoints.shallowestBarrier();
    double drift = Double.isFinite(barrier) ? DRIFT_SHARE * barrier : 0;
    return restPoints.sealRule(errors.energy() + drift);
  }

  /** Makes a layout ready, on all cores, whatever it takes. */
  public static Landscape of(Layout layout) {
    return of(layout, Double.POSITIVE_INFINITY, spent -> {});
  }

  /**
   * Makes a layout ready, on all cores.
   *
   * @param mostWork work that it may take, in the unit of {@link #expectedWork}
   * @param hearer told the work spent so far in that unit, by several threads
   * @throws WorkExceededException where it takes more
   */
  public static Landscape of(Layout layout, double mostWork, DoubleConsumer hearer) {
    return of(layout, false, mostWork, hearer);
  }

  /**
   * Makes a layout ready, on all cores, for steps of a relative error of {@value #LOOSE} or more
   * alone: the loose table is all that it has, which takes less to make.
   *
   * @param mostWork work that it may take, in the unit of {@link #expectedWork}
   * @param hearer told the work spent so far in that unit, by several threads
   * @throws WorkExceededException where it takes more
   */
  public static Landscape loose(Layout layout, double mostWork, DoubleConsumer hearer) {
    return of(layout, true, mostWork, hearer);
  }

  private static Landscape of(
      Layout layout, boolean looseOnly, double mostWork, DoubleConsumer hearer) {
    if (layout instanceof BenchLayout bench) {
      return new Landscape(layout, TabulatedRig.of(bench, looseOnly, mostWork, hearer));
    }
    Motion motion = new TextbookMotion((TextbookLayout) layout);
    RestPoints points = new RestPointFinder(motion, ScanRegion.of(layout)).find();
    return new Landscape(layout, motion, points);
  }

  /**
   * The work that making a layout ready will take, found without beginning it: evaluations of a
   * tabulated potential, 17 to 78 nanoseconds of one core each; 0 where no energy is tabulated.
   */
  public static double expectedWork(Layout layout) {
    return expectedWork(layout, Double.POSITIVE_INFINITY);
  }

  /**
   * The same, not followed beyond a limit.
   *
   * @param most above it, any figure above it may be answered
   */
  public static double expectedWork(Layout layout, double most) {
    return layout instanceof BenchLayout bench && TabulatedRig.tabulates(bench)
        ? new PreparingForecast(bench).work(most)
        : 0;
  }

  /** The work that making it ready took, in the unit of {@link #expectedWork}. */
  public double work() {
    return making.work();
  }

  /** About how much memory it holds. */
  public long bytes() {
    return SCAN_BYTES + making.bytes();
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

  /**
   * The same landscape by a table as fine as a tolerance asks: one of fewer cells, which more of
   * the processor's cache holds, from a relative error of {@value #LOOSE} a step on, where that
   * table adds a tenth of it at most.
   */
  public Landscape asFineAs(Tolerance tolerance) {
    return tolerance.relative() >= LOOSE ? loose.orElse(this) : this;
  }

  /**
   * The same landscape under the loss of another layout, for next to nothing: energies know nothing
   * of losses.
   *
   * @return empty where the other layout differs in more than its loss
   */
  public Optional<Landscape> underLossOf(Layout other) {
    if (layout instanceof BenchLayout own && other instanceof BenchLayout rig) {
      return own.withLoss(rig.loss()).equals(rig)
          ? Optional.of(underLoss(rig, ((BenchMotion) motion).withLoss(rig.loss())))
          : Optional.empty();
    }
    if (layout instanceof TextbookLayout own && other instanceof TextbookLayout plane) {
      var slowed = new TextbookLayout(own.omega0(), plane.drag(), own.height(), own.magnets());
      return slowed.equals(plane)
          ? Optional.of(underLoss(plane, new TextbookMotion(plane)))
          : Optional.empty();
    }
    return Optional.empty();
  }

  private Landscape underLoss(Layout other, Motion otherMotion) {
    return new Landscape(
        this,
        other,
        otherMotion,
        loose.map(
            own ->
                own.underLoss(
                    other,
                    own.motion instanceof BenchMotion bench
                        ? bench.withLoss(((BenchLayout) other).loss())
                        : otherMotion)));
  }

  /** Errors that the table adds to the exact motion. */
  public TableErrors tableErrors() {
    return tableErrors;
  }

  /** Where a motion may meet one of its limits. */
  public LimitMap limitMap() {
    return limitMap;
  }

  /** Which mirrors it is its own picture in. */
  public MirrorSymmetry symmetry() {
    return symmetry;
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
