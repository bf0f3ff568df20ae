package lodeswing.core.landscape;

import java.util.Optional;
import java.util.function.DoubleConsumer;
import lodeswing.core.magnet.BobEnergy;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.motion.AngleEnergy;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.ContactRegion;
import lodeswing.core.motion.MagnetEnergy;
import lodeswing.core.motion.PotentialTable;
import lodeswing.core.motion.PreparingForecast;
import lodeswing.core.motion.PullTable;
import lodeswing.core.motion.Region;
import lodeswing.core.motion.RigPotential;
import lodeswing.core.motion.WorkBudget;
import lodeswing.core.rest.RestPointFinder;
import lodeswing.core.rest.RestPoints;
import lodeswing.core.rest.ScanRegion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * A rig on the bench with the table of its potential energy.
 *
 * <p>The table's errors of energy are held below 1e-8 of the shallowest barrier, those of its
 * slopes below 1e-8 of the barrier over the length of the energy's detail. That barrier is known
 * only once there is a table, so a coarse one comes first, good to 1e-5 of the energy's range.
 */
record TabulatedRig(
    BenchMotion motion,
    RestPoints restPoints,
    TableErrors errors,
    Optional<Loose> loose,
    Making making) {

  /**
   * The same rig by a table of fewer cells, for maps whose steps have greater errors.
   *
   * @param motion what moves
   * @param errors what its table adds
   */
  record Loose(BenchMotion motion, TableErrors errors) {}

  /**
   * What it took.
   *
   * @param work work spent, in the unit of {@link WorkBudget}
   * @param bytes memory that the tables hold
   */
  record Making(double work, long bytes) {
    static final Making NOTHING = new Making(0, 0);
  }

  private static final double BARRIER_SHARE = 1e-8;

  /** The same of the loose table. */
  private static final double LOOSE_SHARE = 1e-6;

  /** Errors of the coarse table, as a share of the energy's range. */
  private static final double COARSE_SHARE = 1e-5;

  /** Room for the barrier to turn out lower on the fine table. */
  private static final double BARRIER_ROOM = 0.9;

  /** Barriers below this share of the range do not tighten the table further: they hold nothing. */
  private static final double LEAST_BARRIER = 1e-3;

  /** Error of the force along the support's pull, as a share of the weight. */
  private static final double AXIAL_SHARE = 1e-5;

  /** Whether there is an energy to tabulate. */
  static boolean tabulates(BenchLayout layout) {
    boolean bare = layout.magnets().isEmpty() && layout.backing().isEmpty();
    return !bare && layout.bob().isPresent();
  }

  /**
   * Makes the rig.
   *
   * @param looseOnly whether the table of fewer cells is all that is wanted; it then stands in the
   *     fine one's place
   * @param mostWork work that it may take, in the unit of {@link WorkBudget}
   * @param hearer told the work spent so far, by several threads
   * @throws lodeswing.core.motion.WorkExceededException where it takes more
   */
  static TabulatedRig of(
      BenchLayout layout, boolean looseOnly, double mostWork, DoubleConsumer hearer) {
    if (!tabulates(layout)) {
      BenchMotion motion = BenchMotion.withoutMagnets(layout);
      return new TabulatedRig(
          motion, find(motion, layout), TableErrors.NONE, Optional.empty(), Making.NOTHING);
    }
    BenchLayout.BobMagnet bob = layout.bob().orElseThrow();
    TwoAxisBody body = layout.suspension().body();
    PreparingForecast forecast = new PreparingForecast(layout);
    WorkBudget budget = new WorkBudget(mostWork, forecast::effortAt, hearer);
    budget.spend(forecast.beforehand() + 2 * WorkBudget.SCAN);
    BobEnergy energy =
        BobEnergy.of(
            bob.magnet(), bob.poleDown(), new MagnetArray(layout.magnets(), layout.backing()));
    MagnetEnergy exact = new MagnetEnergy(energy, body, layout.axisHeight());
    Region region = new ContactRegion(layout);
    double weight = body.mass() * layout.gravity();
    PullTable pull =
        PullTable.build(
            exact.axialForce(layout.suspension().pullLine()),
            BenchMotion.MAX_ANGLE,
            AXIAL_SHARE * weight,
            region,
            budget);
    double range = range(layout, exact);
    double slopes = 1 / angleScale(layout);
    PotentialTable.Fitted fitted =
        PotentialTable.fit(
            new RigPotential(body, layout.gravity(), exact), BenchMotion.MAX_ANGLE, region, budget);
    double rough = COARSE_SHARE * range;
    BenchMotion coarse = new BenchMotion(layout, fitted.table(rough, slopes * rough), pull);
    double shallowest = find(coarse, layout).shallowestBarrier();
    double barrier = Math.min(range, Math.max(BARRIER_ROOM * shallowest, LEAST_BARRIER * range));
    Making making;
    if (looseOnly) {
      PotentialTable table = tableTo(LOOSE_SHARE * barrier, slopes, fitted);
      BenchMotion motion = new BenchMotion(layout, table, pull);
      RestPoints restPoints = find(motion, layout);
      budget.lift();
      making = new Making(budget.spent(), table.bytes() + pull.bytes());
      return new TabulatedRig(motion, restPoints, errors(motion, table), Optional.empty(), making);
    }
    PotentialTable table = tableTo(BARRIER_SHARE * barrier, slopes, fitted);
    BenchMotion motion = new BenchMotion(layout, table, pull);
    RestPoints restPoints = find(motion, layout);
    PotentialTable fewer = tableTo(LOOSE_SHARE * barrier, slopes, fitted);
    BenchMotion loose = new BenchMotion(layout, fewer, pull);
    budget.lift();
    making = new Making(budget.spent(), table.bytes() + fewer.bytes() + pull.bytes());
    return new TabulatedRig(
        motion,
        restPoints,
        errors(motion, table),
        Optional.of(new Loose(loose, errors(loose, fewer))),
        making);
  }

  private static PotentialTable tableTo(
      double energy, double slopes, PotentialTable.Fitted fitted) {
    return fitted.table(energy, slopes * energy);
  }

  private static TableErrors errors(BenchMotion motion, PotentialTable table) {
    double[] inertia = new double[2];
    motion.inertia(0, 0, inertia);
    double acceleration = table.slopeError() / Math.min(inertia[0], inertia[1]);
    return new TableErrors(table.energyError(), acceleration, table.cells());
  }

  private static RestPoints find(BenchMotion motion, BenchLayout layout) {
    return new RestPointFinder(motion, ScanRegion.of(layout)).find();
  }

  /** Angle over which the magnets' energy changes: the gap seen from the axis. */
  private static double angleScale(BenchLayout layout) {
    return ScanRegion.of(layout).lengthScale() / layout.suspension().body().bobArm();
  }

  /** How far the magnets' energy goes up and down over the magnets and the middle. */
  private static double range(BenchLayout layout, AngleEnergy exact) {
    BenchMotion bare = BenchMotion.withoutMagnets(layout);
    double least = Math.min(0, exact.value(0, 0));
    double most = Math.max(0, exact.value(0, 0));
    for (PlacedMagnet magnet : layout.magnets()) {
      double[] state =
          bare.toState(new Release(magnet.centre().x(), magnet.centre().y(), 0, 0))
              .orElse(new double[4]);
      double value = exact.value(state[0], state[1]);
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
    return Math.max(most - least, Double.MIN_NORMAL);
  }
}
