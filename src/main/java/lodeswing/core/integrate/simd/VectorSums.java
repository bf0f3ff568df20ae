package lodeswing.core.integrate.simd;

import static lodeswing.core.integrate.simd.Shape.DOUBLES;
import static lodeswing.core.integrate.simd.Shape.WIDTH;
import static lodeswing.core.integrate.simd.Shape.all;

import jdk.incubator.vector.DoubleVector;
import lodeswing.core.integrate.lane.Plan;
import lodeswing.core.integrate.lane.Row;

/**
 * Weighted sums of slots, up to four terms in a pass: longer methods would outgrow what the
 * compiler turns into vector code.
 */
final class VectorSums {

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
    int size = row.size();
    for (; term + 4 <= size; term += 4) {
      int first = term;
      int base = from;
      plan.add(() -> four(row, first, base));
      from = row.to();
    }
    if (size - term >= 2) {
      int first = term;
      int base = from;
      plan.add(() -> two(row, first, base));
      from = row.to();
      term += 2;
    }
    if (size > term) {
      int first = term;
      int base = from;
      plan.add(() -> one(row, first, base));
    }
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
      a.fma(at(sa + i), at(from + i)).intoArray(s, to + i);
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
      b.fma(at(sb + i), a.fma(at(sa + i), at(from + i))).intoArray(s, to + i);
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
      DoubleVector half = b.fma(at(sb + i), a.fma(at(sa + i), at(from + i)));
      d.fma(at(sd + i), c.fma(at(sc + i), half)).intoArray(s, to + i);
    }
  }
}
