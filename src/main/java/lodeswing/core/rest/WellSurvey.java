package lodeswing.core.rest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import lodeswing.core.motion.Motion;

/** Joins critical points, unsafe zones and the flood of a grid to wells, barriers and passes. */
final class WellSurvey {

  /** Relative error of a refined saddle's energy: rounding of sums of a few hundred terms. */
  private static final double ROUNDING = 1e-13;

  private final Motion motion;
  private final ScanRegion region;
  private final ScanGrid grid;
  private final UnsafeZones zones;
  private final Set<RestPoints.Doubt> doubts = EnumSet.noneOf(RestPoints.Doubt.class);

  WellSurvey(Motion motion, ScanRegion region, ScanGrid grid, UnsafeZones zones) {
    this.motion = motion;
    this.region = region;
    this.grid = grid;
    this.zones = zones;
  }

  /**
   * The whole result.
   *
   * @param found minima where the model holds, in any order
   * @param passed saddles in safe cells, in any order
   * @param inside all critical points in safe cells
   */
  RestPoints survey(
      List<CriticalPoint> found, List<CriticalPoint> passed, List<CriticalPoint> inside) {
    List<CriticalPoint> minima = new PlaceOrder(motion, region).sorted(found);
    List<CriticalPoint> high = new ArrayList<>(passed);
    high.sort(
        Comparator.comparingDouble(CriticalPoint::potential)
            .thenComparingDouble(CriticalPoint::q0)
            .thenComparingDouble(CriticalPoint::q1));
    List<Pass> overSaddles = overSaddles(minima, high);
    List<Pass> onGrid = GridMerge.passes(grid, zones, minima);
    int sinks = unknownSink(minima) + 1;
    MergeTree tree = new MergeTree(minima.size(), sinks, together(minima, overSaddles, onGrid));
    List<RestPoint> restPoints = restPoints(minima, tree);
    short[] cells = WellRegions.mark(grid, minima, regionLevels(restPoints, onGrid));
    List<Saddle> saddles = saddles(minima, high, overSaddles);
    SealMap sealMap = new SealMap(grid, cells);
    sealMap.addPatches(motion, minima, restPoints, saddles);
    noteRestPointsAtZones(minima);
    return new RestPoints(
        new RestPoints.Found(restPoints, saddles, zones.list()), tree, census(inside), sealMap);
  }

  private int unknownSink(List<CriticalPoint> minima) {
    return minima.size() + zones.count();
  }

  private List<Pass> overSaddles(List<CriticalPoint> minima, List<CriticalPoint> saddles) {
    Descent descent = new Descent(motion, grid, zones, minima);
    List<Pass> passes = new ArrayList<>();
    for (int s = 0; s < saddles.size(); s++) {
      CriticalPoint p = saddles.get(s);
      int one = known(descent.sinkBelow(p, 1), minima);
      int other = known(descent.sinkBelow(p, -1), minima);
      passes.add(new Pass(p.potential(), ROUNDING * Math.abs(p.potential()), one, other, s));
    }
    return passes;
  }

  private int known(int sink, List<CriticalPoint> minima) {
    if (sink != Descent.UNKNOWN) {
      return sink;
    }
    doubts.add(RestPoints.Doubt.SADDLE_SIDE_UNKNOWN);
    return unknownSink(minima);
  }

  /** The saddles' passes and those of the grid that no saddle explains. */
  private List<Pass> together(
      List<CriticalPoint> minima, List<Pass> overSaddles, List<Pass> onGrid) {
    MergeTree exact = new MergeTree(minima.size(), unknownSink(minima) + 1, overSaddles);
    List<Pass> all = new ArrayList<>(overSaddles);
    for (Pass pass : onGrid) {
      if (exact.joinedAbove(pass.one(), pass.other()) > pass.energy() + pass.error()) {
        all.add(pass);
        if (pass.one() < minima.size() && pass.other() < minima.size()) {
          doubts.add(RestPoints.Doubt.PASS_WITHOUT_SADDLE);
        }
      }
    }
    return all;
  }

  private List<RestPoint> restPoints(List<CriticalPoint> minima, MergeTree tree) {
    PlaceOrder places = new PlaceOrder(motion, region);
    List<RestPoint> list = new ArrayList<>();
    for (int m = 0; m < minima.size(); m++) {
      CriticalPoint p = minima.get(m);
      double[] plan = places.plan(p);
      int index = m;
      RestPoint.Barrier barrier =
          tree.lowestPass(m)
              .map(pass -> barrier(index, p, pass, minima))
              .orElseGet(() -> barrierOfLoneWell(p));
      list.add(
          new RestPoint(
              m,
              p.q0(),
              p.q1(),
              plan[0],
              plan[1],
              p.potential(),
              barrier,
              smallSwing(p),
              places.surroundings(p),
              p.continuum()));
    }
    if (list.isEmpty()) {
      doubts.add(RestPoints.Doubt.NO_REST_POINT);
    }
    return list;
  }

  private RestPoint.Barrier barrier(
      int index, CriticalPoint p, Pass pass, List<CriticalPoint> minima) {
    OptionalInt saddle =
        pass.saddle() == Pass.NO_SADDLE ? OptionalInt.empty() : OptionalInt.of(pass.saddle());
    double height = Math.max(0, pass.energy() - p.potential());
    return new RestPoint.Barrier(
        pass.energy(), height, pass.error(), side(pass.beyond(index), minima), saddle);
  }

  private RestPoint.Barrier barrierOfLoneWell(CriticalPoint p) {
    double lowest = Double.POSITIVE_INFINITY;
    for (int n = 0; n < grid.nodes(); n++) {
      if (grid.onEdge(n)) {
        lowest = Math.min(lowest, grid.potential[n]);
      }
    }
    return new RestPoint.Barrier(
        lowest, lowest - p.potential(), 0, new Side.Nothing(), OptionalInt.empty());
  }

  private RestPoint.SmallSwing smallSwing(CriticalPoint p) {
    double[] mass = new double[2];
    motion.inertia(p.q0(), p.q1(), mass);
    SymmetricPair pair =
        SymmetricPair.of(
            p.curvature00() / mass[0],
            p.curvature01() / Math.sqrt(mass[0] * mass[1]),
            p.curvature11() / mass[1]);
    double slow = p.level() ? Double.POSITIVE_INFINITY : 2 * Math.PI / Math.sqrt(pair.low());
    return new RestPoint.SmallSwing(2 * Math.PI / Math.sqrt(pair.high()), slow);
  }

  private Side side(int sink, List<CriticalPoint> minima) {
    if (sink < minima.size()) {
      return new Side.OfRestPoint(sink);
    }
    return sink == unknownSink(minima) ? new Side.Unknown() : new Side.OfZone(sink - minima.size());
  }

  private List<Saddle> saddles(
      List<CriticalPoint> minima, List<CriticalPoint> saddles, List<Pass> passes) {
    PlaceOrder places = new PlaceOrder(motion, region);
    List<Saddle> list = new ArrayList<>();
    for (int s = 0; s < saddles.size(); s++) {
      CriticalPoint p = saddles.get(s);
      double[] plan = places.plan(p);
      Side one = side(passes.get(s).one(), minima);
      Side other = side(passes.get(s).other(), minima);
      list.add(
          new Saddle(
              s, p.q0(), p.q1(), plan[0], plan[1], p.potential(), one, other, p.continuum()));
    }
    return list;
  }

  /** For each well the lower of its pass and of the level at which the grid joins it to another. */
  private static double[] regionLevels(List<RestPoint> restPoints, List<Pass> onGrid) {
    double[] level = new double[restPoints.size()];
    Arrays.setAll(level, m -> restPoints.get(m).barrier().passEnergy());
    for (Pass pass : onGrid) {
      for (int sink : new int[] {pass.one(), pass.other()}) {
        if (sink < level.length) {
          level[sink] = Math.min(level[sink], pass.energy());
        }
      }
    }
    return level;
  }

  private void noteRestPointsAtZones(List<CriticalPoint> minima) {
    for (CriticalPoint p : minima) {
      if (!grid.cellSafe(grid.cellCorner(p.q0(), p.q1()))) {
        doubts.add(RestPoints.Doubt.REST_POINT_AT_ZONE);
      }
    }
  }

  private RestPoints.Census census(List<CriticalPoint> inside) {
    int index = inside.stream().mapToInt(CriticalPoint::index).sum();
    int turns = grid.turnsOfSafeCells();
    if (index != turns) {
      doubts.add(RestPoints.Doubt.COUNT_DIFFERS);
    }
    return new RestPoints.Census(
        count(inside, CriticalPoint.Kind.MINIMUM),
        count(inside, CriticalPoint.Kind.SADDLE),
        count(inside, CriticalPoint.Kind.MAXIMUM),
        turns,
        grid.nodes(),
        doubts);
  }

  private static int count(List<CriticalPoint> points, CriticalPoint.Kind kind) {
    return (int) points.stream().filter(p -> p.kind() == kind).count();
  }
}
