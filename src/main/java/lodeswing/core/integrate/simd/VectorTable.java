package lodeswing.core.integrate.simd;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;
import static lodeswing.core.integrate.simd.Shape.DOUBLES;
import static lodeswing.core.integrate.simd.Shape.WIDTH;
import static lodeswing.core.integrate.simd.Shape.all;

import jdk.incubator.vector.DoubleVector;
import lodeswing.core.integrate.lane.Plan;
import lodeswing.core.motion.AngleEnergy;
import lodeswing.core.motion.PotentialTable;

/**
 * The magnets' energy and its slopes from the cells of a {@link PotentialTable}.
 *
 * <p>Each lane by itself: Horner's rule in the first variable on the eight powers of the second at
 * once, on vectors, then in the second variable on single numbers. That is the order of the table's
 * own evaluation. Where no cell holds, the table is asked as by anyone else.
 */
final class VectorTable {

  private static final int POWERS = 8;
  private static final int CELL = POWERS * POWERS;

  private final double[] s;
  private final int[] cell = new int[LANES];
  private final double[] rows = new double[2 * POWERS * LANES];
  private final double[] across = new double[LANES];
  private final double[] along = new double[LANES];
  private final double[] scale = new double[LANES];
  private final double[] exact = new double[3];

  VectorTable(double[] slots) {
    s = slots;
  }

  /**
   * Writes energy and slopes.
   *
   * @param plan receives the passes
   * @param energy the magnets' energy
   * @param state slot of the two angles
   * @param to first of the three slots
   */
  void gradient(Plan plan, AngleEnergy energy, int state, int to) {
    if (energy instanceof PotentialTable table) {
      plan.add(() -> find(table, state));
      for (int power = 0; power < POWERS; power += WIDTH) {
        int first = power;
        plan.add(() -> rows(table.coefficients(), first));
      }
      plan.add(() -> columns(to));
      plan.add(() -> outside(table, state, to));
    } else {
      plan.add(() -> one(energy, state, to));
    }
  }

  private void find(PotentialTable table, int state) {
    double[] frames = table.frames();
    for (int i = 0; i < LANES; i++) {
      double u = s[state + i];
      double v = s[state + LANES + i];
      int found = table.cell(u, v);
      cell[i] = found;
      int frame = 3 * Math.max(found, 0);
      double factor = frames[frame + 2];
      across[i] = (u - frames[frame]) * factor;
      along[i] = (v - frames[frame + 1]) * factor;
      scale[i] = factor;
    }
  }

  /** Rows of as many powers as a vector holds, from one on. */
  private void rows(double[] c, int power) {
    for (int i = 0; i < LANES; i++) {
      int from = CELL * Math.max(cell[i], 0) + power;
      DoubleVector u = all(across[i]);
      DoubleVector a = DoubleVector.fromArray(DOUBLES, c, from + 56);
      DoubleVector d = a;
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from + 48));
      d = d.fma(u, a);
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from + 40));
      d = d.fma(u, a);
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from + 32));
      d = d.fma(u, a);
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from + 24));
      d = d.fma(u, a);
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from + 16));
      d = d.fma(u, a);
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from + 8));
      d = d.fma(u, a);
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from));
      int to = 2 * POWERS * i + power;
      a.intoArray(rows, to);
      d.intoArray(rows, to + POWERS);
    }
  }

  private void columns(int to) {
    for (int i = 0; i < LANES; i++) {
      int from = 2 * POWERS * i;
      double v = along[i];
      double p = 0;
      double pu = 0;
      double pv = 0;
      for (int q = POWERS - 1; q >= 0; q--) {
        pv = Math.fma(pv, v, p);
        p = Math.fma(p, v, rows[from + q]);
        pu = Math.fma(pu, v, rows[from + POWERS + q]);
      }
      s[to + i] = p;
      s[to + LANES + i] = pu * scale[i];
      s[to + 2 * LANES + i] = pv * scale[i];
    }
  }

  private void outside(PotentialTable table, int state, int to) {
    for (int i = 0; i < LANES; i++) {
      if (cell[i] < 0) {
        exact(table, state, to, i);
      }
    }
  }

  private void one(AngleEnergy energy, int state, int to) {
    for (int i = 0; i < LANES; i++) {
      exact(energy, state, to, i);
    }
  }

  private void exact(AngleEnergy energy, int state, int to, int i) {
    energy.gradient(s[state + i], s[state + LANES + i], exact);
    s[to + i] = exact[0];
    s[to + LANES + i] = exact[1];
    s[to + 2 * LANES + i] = exact[2];
  }
}
