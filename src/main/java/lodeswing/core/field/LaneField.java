package lodeswing.core.field;

import static lodeswing.core.field.FieldSlots.POINTS;

import lodeswing.core.integrate.lane.LaneProvider;

/**
 * Flux density at blocks of points; belongs to one thread.
 *
 * <p>Whether a source is near or far, how many means its integrals take and how many terms its
 * series, is decided for a block as a whole by the box that holds its points, never by the width of
 * the vectors: so every width gives the same bits.
 */
public final class LaneField {

  private static final String VECTORS = "lodeswing.core.field.simd.VectorFieldLanes";

  private final FieldSources sources;
  private final FieldLanes lanes;
  private final double[] slots;

  /** Computes the field of sources on the lanes that a provider chose. */
  public LaneField(FieldSources sources, LaneProvider provider) {
    this.sources = sources;
    this.lanes = provider.onVectors(FieldLanes.class, VECTORS).orElseGet(ScalarFieldLanes::new);
    this.slots = lanes.slots();
  }

  /**
   * Flux density at points.
   *
   * @param x places [m], the first {@code count}, like y and z
   * @param count how many; blocks are formed of neighbours, so let these be near each other
   * @param b receives x, y and z of each point side by side [T]
   */
  public void at(double[] x, double[] y, double[] z, int count, double[] b) {
    for (int from = 0; from < count; from += POINTS) {
      int size = Math.min(POINTS, count - from);
      for (int i = 0; i < POINTS; i++) {
        // Lanes without a point of their own repeat the last one, which leaves the box as it is.
        int point = from + Math.min(i, size - 1);
        slots[FieldSlots.X + i] = x[point];
        slots[FieldSlots.Y + i] = y[point];
        slots[FieldSlots.Z + i] = z[point];
      }
      compute();
      for (int i = 0; i < size; i++) {
        b[3 * (from + i)] = slots[FieldSlots.BX + i];
        b[3 * (from + i) + 1] = slots[FieldSlots.BY + i];
        b[3 * (from + i) + 2] = slots[FieldSlots.BZ + i];
      }
    }
  }

  /** The block's own slots: places before {@link #compute}, flux density after it. */
  double[] slots() {
    return slots;
  }

  /** Flux density at the places that the slots hold. */
  void compute() {
    PointBox box = PointBox.of(slots);
    for (int i = 0; i < 3 * POINTS; i++) {
      slots[FieldSlots.BX + i] = 0;
    }
    for (FieldSource source : sources.list()) {
      source.add(lanes, box);
    }
  }
}
