package lodeswing.core.rest;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.motion.Motion;

/**
 * Which well alone holds a place, below that well's pass: cells of the scan, patches in small
 * wells.
 */
final class SealMap {

  /** In place of a well: ask the patches. */
  private static final short PATCHES = WellRegions.NONE - 1;

  private final ScanGrid grid;
  private final short[] cell;
  private final List<WellPatch> patches = new ArrayList<>();

  SealMap(ScanGrid grid, short[] cell) {
    this.grid = grid;
    this.cell = cell;
  }

  /** Gives each well that the scan's cells are too coarse for a patch of its own. */
  void addPatches(
      Motion motion, List<CriticalPoint> minima, List<RestPoint> restPoints, List<Saddle> saddles) {
    for (int w = 0; w < minima.size(); w++) {
      RestPoint.Barrier barrier = restPoints.get(w).barrier();
      CriticalPoint p = minima.get(w);
      if (isCoarseAt(p, w)
          && barrier.saddle().isPresent()
          && barrier.height() > 0
          && !p.continuum()) {
        Saddle over = saddles.get(barrier.saddle().getAsInt());
        double toSaddle = p.distance(over.q0(), over.q1());
        addPatch(new WellPatch(motion, w, p, barrier.height(), toSaddle), p);
      }
    }
  }

  private boolean isCoarseAt(CriticalPoint p, int well) {
    int lower = grid.cellCorner(p.q0(), p.q1());
    boolean coarse = cell[lower] != well;
    for (int k = 0; k < 8; k++) {
      int m = grid.neighbour(lower, k);
      coarse |= m < 0 || cell[m] != well;
    }
    return coarse;
  }

  /** Its cells ask the patch, whatever they held before; where any is unsafe they hold nothing. */
  private void addPatch(WellPatch patch, CriticalPoint p) {
    List<Integer> covered = covered(patch, p);
    boolean usable = patch.closed();
    for (int lower : covered) {
      usable &= grid.cellSafe(lower);
    }
    if (usable) {
      patches.add(patch);
    }
    for (int lower : covered) {
      if (usable || cell[lower] != PATCHES) {
        cell[lower] = usable ? PATCHES : WellRegions.NONE;
      }
    }
  }

  private List<Integer> covered(WellPatch patch, CriticalPoint p) {
    int last0 = grid.axis0.size() - 2;
    int last1 = grid.axis1.size() - 2;
    int from0 = Math.max(grid.axis0.cell(p.q0() - patch.extent0()), 0);
    int from1 = Math.max(grid.axis1.cell(p.q1() - patch.extent1()), 0);
    int to0 = grid.axis0.cell(p.q0() + patch.extent0());
    int to1 = grid.axis1.cell(p.q1() + patch.extent1());
    List<Integer> covered = new ArrayList<>();
    for (int i = from0; i <= (to0 < 0 ? last0 : to0); i++) {
      for (int j = from1; j <= (to1 < 0 ? last1 : to1); j++) {
        covered.add(i * grid.size1() + j);
      }
    }
    return covered;
  }

  /** The well that alone holds a place below its pass, or {@link SealRule#NONE}. */
  int wellAt(double q0, double q1) {
    int lower = grid.cellCorner(q0, q1);
    if (lower < 0) {
      return SealRule.NONE;
    }
    int code = cell[lower];
    if (code != PATCHES) {
      return code;
    }
    for (int k = 0; k < patches.size(); k++) {
      if (patches.get(k).holds(q0, q1)) {
        return patches.get(k).well();
      }
    }
    return SealRule.NONE;
  }

  /** Whether a well is held by a patch, which ends below the pass. */
  boolean patched(int well) {
    return patches.stream().anyMatch(p -> p.well() == well);
  }
}
