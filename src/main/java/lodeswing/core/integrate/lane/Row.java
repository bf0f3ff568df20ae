package lodeswing.core.integrate.lane;

import java.util.ArrayList;
import java.util.List;

/**
 * One weighted sum, the same for every lane and for slots side by side: to = base + w0 s0 + w1 s1 +
 * ..., added in this order by fused multiply-adds.
 *
 * <p>Arrays are not copied and must not be changed.
 */
public final class Row {

  /** In place of a base: the sum starts from its first product. */
  public static final int NO_BASE = -1;

  private final int span;
  private final int to;
  private final int base;
  private final double[] weights;
  private final int[] slots;

  /**
   * A sum.
   *
   * @param span how many slots side by side are summed alike
   * @param to slot that receives it
   * @param base slot that it starts from
   * @param weights weights
   * @param slots a slot for each weight
   */
  Row(int span, int to, int base, double[] weights, int[] slots) {
    this.span = span;
    this.to = to;
    this.base = base;
    this.weights = weights;
    this.slots = slots;
  }

  /** How many numbers are summed alike, side by side from each slot on. */
  public int numbers() {
    return span * LaneBlock.LANES;
  }

  /** Slot that receives the sum. */
  public int to() {
    return to;
  }

  /** Slot that it starts from. */
  public int base() {
    return base;
  }

  /** How many terms it has. */
  public int size() {
    return slots.length;
  }

  /** Weight of a term. */
  public double weight(int term) {
    return weights[term];
  }

  /** Slot of a term. */
  public int slot(int term) {
    return slots[term];
  }

  /** Terms on their way to a row; those of weight zero are left out. */
  static final class Terms {
    private final List<Double> weights = new ArrayList<>();
    private final List<Integer> slots = new ArrayList<>();

    void add(double weight, int slot) {
      if (weight != 0) {
        weights.add(weight);
        slots.add(slot);
      }
    }

    Row row(int span, int to, int base) {
      return new Row(
          span,
          to,
          base,
          weights.stream().mapToDouble(Double::doubleValue).toArray(),
          slots.stream().mapToInt(Integer::intValue).toArray());
    }
  }
}
