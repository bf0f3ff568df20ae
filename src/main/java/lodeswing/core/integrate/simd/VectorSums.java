package lodeswing.core.integrate.simd;

import static lodeswing.core.integrate.simd.Shape.DOUBLES;
import static lodeswing.core.integrate.simd.Shape.WIDTH;
import static lodeswing.core.integrate.simd.Shape.all;

import jdk.incubator.vector.DoubleVector;
import lodeswing.core.integrate.lane.Plan;
import lodeswing.core.integrate.lane.Row;

/** Weighted sums of slots, up to four terms in a pass: eight were no faster, and more to read. */
final class VectorSums {

  private static final int MOST = 4;

  private final double[] s;

  VectorSums(double[] slots) {
    s = slots;
  }

  private DoubleVector at(int slot) {
    return DoubleVector.fromArray(DOUBLES, s, slot);
  }

  void sum(Plan plan, Row row) {
    int from = row.base();
    int term = 0;
    if (from == Row.NO_BASE) {
      plan.add(() -> product(row));
      from = row.to();
      term = 1;
    }
    while (term < row.size()) {
      int count = Math.min(MOST, row.size() - term);
      plan.add(pass(row, term, from, count));
      from = row.to();
      term += count;
    }
  }

  private Runnable pass(Row row, int term, int from, int count) {
    return switch (count) {
      case 1 -> () -> one(row, term, from);
      case 2 -> () -> two(row, term, from);
      case 3 -> () -> three(row, term, from);
      default -> () -> four(row, term, from);
    };
  }

  private void product(Row row) {
    DoubleVector a = all(row.weight(0));
    int sa = row.slot(0);
    int to = row.to();
    int numbers = row.numbers();
    for (int i = 0; i < numbers; i += WIDTH) {
      a.mul(at(sa + i)).intoArray(s, to + i);
    }
  }

  private void one(Row row, int term, int from) {
    DoubleVector a = all(row.weight(term));
    int sa = row.slot(term);
    int to = row.to();
    int numbers = row.numbers();
    for (int i = 0; i < numbers; i += WIDTH) {
      DoubleVector sum = a.fma(at(sa + i), at(from + i));
      sum.intoArray(s, to + i);
    }
  }

  private void two(Row row, int term, int from) {
    DoubleVector a = all(row.weight(term));
    DoubleVector b = all(row.weight(term + 1));
    int sa = row.slot(term);
    int sb = row.slot(term + 1);
    int to = row.to();
    int numbers = row.numbers();
    for (int i = 0; i < numbers; i += WIDTH) {
      DoubleVector sum = a.fma(at(sa + i), at(from + i));
      sum = b.fma(at(sb + i), sum);
      sum.intoArray(s, to + i);
    }
  }

  private void three(Row row, int term, int from) {
    DoubleVector a = all(row.weight(term));
    DoubleVector b = all(row.weight(term + 1));
    DoubleVector c = all(row.weight(term + 2));
    int sa = row.slot(term);
    int sb = row.slot(term + 1);
    int sc = row.slot(term + 2);
    int to = row.to();
    int numbers = row.numbers();
    for (int i = 0; i < numbers; i += WIDTH) {
      DoubleVector sum = a.fma(at(sa + i), at(from + i));
      sum = b.fma(at(sb + i), sum);
      sum = c.fma(at(sc + i), sum);
      sum.intoArray(s, to + i);
    }
  }

  private void four(Row row, int term, int from) {
    DoubleVector a = all(row.weight(term));
    DoubleVector b = all(row.weight(term + 1));
    DoubleVector c = all(row.weight(term + 2));
    DoubleVector d = all(row.weight(term + 3));
    int sa = row.slot(term);
    int sb = row.slot(term + 1);
    int sc = row.slot(term + 2);
    int sd = row.slot(term + 3);
    int to = row.to();
    int numbers = row.numbers();
    for (int i = 0; i < numbers; i += WIDTH) {
      DoubleVector sum = a.fma(at(sa + i), at(from + i));
      sum = b.fma(at(sb + i), sum);
      sum = c.fma(at(sc + i), sum);
      sum = d.fma(at(sd + i), sum);
      sum.intoArray(s, to + i);
    }
  }
}
