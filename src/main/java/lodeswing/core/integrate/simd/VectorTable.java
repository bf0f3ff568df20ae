package lodeswing.core.integrate.simd;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;
import static lodeswing.core.integrate.simd.Shape.DOUBLES;
import static lodeswing.core.integrate.simd.Shape.LONGS;
import static lodeswing.core.integrate.simd.Shape.WIDTH;
import static lodeswing.core.integrate.simd.Shape.all;

import jdk.incubator.vector.DoubleVector;
import jdk.incubator.vector.IntVector;
import jdk.incubator.vector.LongVector;
import jdk.incubator.vector.VectorOperators;
import jdk.incubator.vector.VectorShape;
import jdk.incubator.vector.VectorSpecies;
import lodeswing.core.integrate.lane.Plan;
import lodeswing.core.motion.AngleEnergy;
import lodeswing.core.motion.CellDirectory;
import lodeswing.core.motion.PotentialTable;

/**
 * The potential energy and its slopes from the cells of a {@link PotentialTable}.
 *
 * <p>Each lane by itself: Horner's rule in the first variable on the eight powers of the second at
 * once, on vectors, then in the second variable on single numbers. That is the order of the table's
 * own evaluation. Where no cell holds, the table is asked as by anyone else.
 */
final class VectorTable {

  private static final int POWERS = 8;
  private static final int CELL = POWERS * POWERS;
  private static final int CELL_BITS = 6;
  private static final int EXPONENT = 52;
  private static final VectorSpecies<Integer> INTS =
      VectorSpecies.of(int.class, VectorShape.forBitSize(DOUBLES.vectorBitSize() / 2));
  private static final DoubleVector ZERO = all(0.0);
  private static final DoubleVector ONE = all(1.0);
  private static final DoubleVector MINUS_ONE = all(-1.0);
  private static final DoubleVector TWO = all(2.0);

  /** Numbers below half of it lose their fraction when it is added, and are its lowest bits. */
  private static final DoubleVector WHOLE = all(0x1p52);

  private static final LongVector LEVEL = all((long) CellDirectory.LEVEL);
  private static final LongVector EXPONENT_BIAS = all(1023L);
  private static final IntVector NO_INT = IntVector.zero(INTS);
  private static final double[] EXPONENTS = {0, 1, 2, 3, 4, 5, 6, 7};

  private final double[] s;
  private final double[] x = new double[LANES];
  private final double[] y = new double[LANES];

  private final int[] wholeX = new int[LANES];
  private final int[] wholeY = new int[LANES];
  private final int[] index = new int[LANES];
  private final int[] entry = new int[LANES];
  private final int[] cell = new int[LANES];
  private final double[] rows = new double[2 * POWERS * LANES];
  private final double[] across = new double[LANES];
  private final double[] along = new double[LANES];
  private final double[] scale = new double[LANES];
  private final double[] exact = new double[3];

  /** Whether any lane is where the table has no cell. */
  private boolean outside;

  VectorTable(double[] slots) {
    s = slots;
  }

  /**
   * Writes the slopes.
   *
   * @param plan receives the passes
   * @param energy the magnets' energy
   * @param state slot of the two angles
   * @param to first of the two slots
   */
  void slopes(Plan plan, AngleEnergy energy, int state, int to) {
    if (energy instanceof PotentialTable table) {
      CellDirectory directory = table.directory();
      plan.add(() -> places(directory, state, x, wholeX));
      plan.add(() -> places(directory, state + LANES, y, wholeY));
      plan.add(() -> nets(directory));
      plan.add(() -> entries(directory));
      plan.add(() -> within(directory));
      for (int power = 0; power < POWERS; power += WIDTH) {
        int first = power;
        plan.add(() -> slopeRows(table.coefficients(), first));
      }
      plan.add(() -> slopeColumns(to));
      plan.add(() -> slopesOutside(table, state, to));
    } else {
      plan.add(() -> exactSlopes(energy, state, to));
    }
  }

  /**
   * Writes the energy where the slopes were written last.
   *
   * @param plan receives the passes
   * @param energy the magnets' energy
   * @param state slot of the two angles
   * @param to the slot
   */
  void value(Plan plan, AngleEnergy energy, int state, int to) {
    if (energy instanceof PotentialTable table) {
      for (int power = 0; power < POWERS; power += WIDTH) {
        int first = power;
        plan.add(() -> valueRows(table.coefficients(), first));
      }
      plan.add(() -> valueColumns(to));
      plan.add(() -> valueOutside(table, state, to));
    } else {
      plan.add(() -> exactValue(energy, state, to));
    }
  }

  /** Places on the finest net, 0 to across, and their whole parts. */
  private void places(CellDirectory directory, int angles, double[] places, int[] wholes) {
    DoubleVector halfWidth = all(directory.halfWidth());
    DoubleVector perAngle = all(directory.perAngle());
    DoubleVector beyond = all((double) directory.across());
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector place =
          DoubleVector.fromArray(DOUBLES, s, angles + i).add(halfWidth).mul(perAngle);
      place = beyond.blend(place, place.compare(VectorOperators.LT, beyond));
      place = beyond.blend(place, place.compare(VectorOperators.GE, ZERO));
      place.intoArray(places, i);
      LongVector whole = floor(place).add(WHOLE).reinterpretAsLongs();
      ((IntVector) whole.convertShape(VectorOperators.L2I, INTS, 0)).intoArray(wholes, i);
    }
  }

  private static DoubleVector floor(DoubleVector x) {
    DoubleVector near = x.add(WHOLE).sub(WHOLE);
    return near.blend(near.sub(ONE), near.compare(VectorOperators.GT, x));
  }

  /** From whole places to where their entries lie. */
  private void nets(CellDirectory directory) {
    int depth = directory.depth();
    int[] nets = directory.nets();
    IntVector low = IntVector.broadcast(INTS, (1 << depth) - 1);
    IntVector deepest = IntVector.broadcast(INTS, depth);
    for (int i = 0; i < LANES; i += WIDTH) {
      IntVector a = IntVector.fromArray(INTS, wholeX, i);
      IntVector b = IntVector.fromArray(INTS, wholeY, i);
      a.lanewise(VectorOperators.LSHR, depth)
          .mul(CellDirectory.ROW)
          .add(b.lanewise(VectorOperators.LSHR, depth))
          .intoArray(index, i);
      IntVector net = IntVector.fromArray(INTS, nets, 0, index, i);
      IntVector coarser = net.and(CellDirectory.LEVEL);
      IntVector row =
          a.and(low)
              .lanewise(VectorOperators.LSHR, coarser)
              .lanewise(VectorOperators.LSHL, deepest.sub(coarser));
      b.and(low)
          .lanewise(VectorOperators.LSHR, coarser)
          .add(row)
          .add(net.lanewise(VectorOperators.LSHR, CellDirectory.LEVEL_BITS))
          .intoArray(index, i);
    }
  }

  private void entries(CellDirectory directory) {
    int[] entries = directory.entries();
    IntVector least = NO_INT;
    for (int i = 0; i < LANES; i += WIDTH) {
      IntVector found = IntVector.fromArray(INTS, entries, 0, index, i);
      found.intoArray(entry, i);
      found
          .lanewise(VectorOperators.ASHR, CellDirectory.LEVEL_BITS)
          .max(NO_INT)
          .lanewise(VectorOperators.LSHL, CELL_BITS)
          .add(PotentialTable.FIRST_COEFFICIENT)
          .intoArray(cell, i);
      least = least.min(found);
    }
    outside = least.reduceLanes(VectorOperators.MIN) < 0;
  }

  private void within(CellDirectory directory) {
    DoubleVector perAngle = all(2 * directory.perAngle());
    for (int i = 0; i < LANES; i += WIDTH) {
      LongVector found =
          (LongVector)
              IntVector.fromArray(INTS, entry, i).convertShape(VectorOperators.I2L, LONGS, 0);
      DoubleVector per =
          found
              .and(LEVEL)
              .neg()
              .add(EXPONENT_BIAS)
              .lanewise(VectorOperators.LSHL, EXPONENT)
              .reinterpretAsDoubles();
      own(DoubleVector.fromArray(DOUBLES, x, i).mul(per)).intoArray(across, i);
      own(DoubleVector.fromArray(DOUBLES, y, i).mul(per)).intoArray(along, i);
      per.mul(perAngle).intoArray(scale, i);
    }
  }

  /** From cells, 0 or above, to the coordinate within one. */
  private static DoubleVector own(DoubleVector cells) {
    return cells.sub(floor(cells)).fma(TWO, MINUS_ONE);
  }

  /** Rows of as many powers as a vector holds, from one on, times the power, and of slopes. */
  private void slopeRows(double[] c, int power) {
    DoubleVector exponent = DoubleVector.fromArray(DOUBLES, EXPONENTS, power);
    for (int i = 0; i < LANES; i++) {
      int from = cell[i] + power;
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
      a.mul(exponent).intoArray(rows, to);
      d.intoArray(rows, to + POWERS);
    }
  }

  private void slopeColumns(int to) {
    for (int i = 0; i < LANES; i++) {
      int from = 2 * POWERS * i;
      double v = along[i];
      double pv = rows[from + 7];
      double pu = rows[from + 15];
      pv = Math.fma(pv, v, rows[from + 6]);
      pu = Math.fma(pu, v, rows[from + 14]);
      pv = Math.fma(pv, v, rows[from + 5]);
      pu = Math.fma(pu, v, rows[from + 13]);
      pv = Math.fma(pv, v, rows[from + 4]);
      pu = Math.fma(pu, v, rows[from + 12]);
      pv = Math.fma(pv, v, rows[from + 3]);
      pu = Math.fma(pu, v, rows[from + 11]);
      pv = Math.fma(pv, v, rows[from + 2]);
      pu = Math.fma(pu, v, rows[from + 10]);
      pv = Math.fma(pv, v, rows[from + 1]);
      pu = Math.fma(pu, v, rows[from + 9]);
      pu = Math.fma(pu, v, rows[from + 8]);
      s[to + i] = pu * scale[i];
      s[to + LANES + i] = pv * scale[i];
    }
  }

  private void slopesOutside(PotentialTable table, int state, int to) {
    for (int i = 0; outside && i < LANES; i++) {
      if (entry[i] < 0) {
        exactSlopes(table, state, to, i);
      }
    }
  }

  private void exactSlopes(AngleEnergy energy, int state, int to) {
    for (int i = 0; i < LANES; i++) {
      exactSlopes(energy, state, to, i);
    }
  }

  private void exactSlopes(AngleEnergy energy, int state, int to, int i) {
    energy.slopes(s[state + i], s[state + LANES + i], exact);
    s[to + i] = exact[1];
    s[to + LANES + i] = exact[2];
  }

  private void valueRows(double[] c, int power) {
    for (int i = 0; i < LANES; i++) {
      int from = cell[i] + power;
      DoubleVector u = all(across[i]);
      DoubleVector a = DoubleVector.fromArray(DOUBLES, c, from + 56);
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from + 48));
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from + 40));
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from + 32));
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from + 24));
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from + 16));
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from + 8));
      a = a.fma(u, DoubleVector.fromArray(DOUBLES, c, from));
      a.intoArray(rows, 2 * POWERS * i + power);
    }
  }

  private void valueColumns(int to) {
    for (int i = 0; i < LANES; i++) {
      int from = 2 * POWERS * i;
      double v = along[i];
      double p = rows[from + POWERS - 1];
      for (int q = POWERS - 2; q >= 0; q--) {
        p = Math.fma(p, v, rows[from + q]);
      }
      s[to + i] = p;
    }
  }

  private void valueOutside(PotentialTable table, int state, int to) {
    for (int i = 0; outside && i < LANES; i++) {
      if (entry[i] < 0) {
        exactValue(table, state, to, i);
      }
    }
  }

  private void exactValue(AngleEnergy energy, int state, int to) {
    for (int i = 0; i < LANES; i++) {
      exactValue(energy, state, to, i);
    }
  }

  private void exactValue(AngleEnergy energy, int state, int to, int i) {
    s[to + i] = energy.value(s[state + i], s[state + LANES + i]);
  }
}
