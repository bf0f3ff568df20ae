package lodeswing.core.rest;

import java.util.Arrays;

/** Nodes along one coordinate: evenly fine where magnets act, wider and wider outside. */
final class ScanAxis {

  private static final double GROWTH = 1.15;

  /** Buckets may not be finer than this many of them make them: a wide axis has wide ones. */
  private static final int MOST_BUCKETS = 1 << 16;

  /** Widest axis, in steps of its fine part: beyond it places near its ends lose their digits. */
  private static final double WIDEST = 1e12;

  private final double[] node;
  private final double perBucket;
  private final int[] bucketStart;

  private ScanAxis(double[] node, double fineStep) {
    this.node = node;
    double bucketWidth = Math.max(fineStep, (last() - first()) / MOST_BUCKETS);
    int buckets = (int) Math.ceil((last() - first()) / bucketWidth) + 1;
    this.perBucket = 1 / bucketWidth;
    this.bucketStart = new int[buckets];
    int cell = 0;
    for (int b = 0; b < buckets; b++) {
      double left = first() + b * bucketWidth;
      while (cell < node.length - 2 && node[cell + 1] <= left) {
        cell++;
      }
      // one cell early: rounding in the bucket's number never skips a cell
      bucketStart[b] = Math.max(cell - 1, 0);
    }
  }

  /**
   * An axis from -reach to reach.
   *
   * @param reach half-width of the axis
   * @param fineFrom where the fine part begins
   * @param fineTo where the fine part ends
   * @param fineStep spacing of the fine part
   * @param coarseStep widest spacing outside
   * @throws IllegalArgumentException where the axis is too wide for its fine part
   */
  static ScanAxis of(
      double reach, double fineFrom, double fineTo, double fineStep, double coarseStep) {
    // the negated comparison also catches NaN
    if (!(fineStep > 0 && reach > 0 && reach < WIDEST * fineStep)) {
      throw new IllegalArgumentException(
          "an axis up to " + reach + " cannot be scanned in steps of " + fineStep);
    }
    double from = Math.max(-reach + fineStep, Math.min(fineFrom, reach - 3 * fineStep));
    double to = Math.min(reach - fineStep, Math.max(fineTo, from + 2 * fineStep));
    int cells = Math.max(2, (int) Math.floor((to - from) / fineStep));
    double[] left = outwards(from + reach, fineStep, coarseStep);
    double end = from + cells * fineStep;
    double[] right = outwards(reach - end, fineStep, coarseStep);
    double[] node = new double[left.length + cells + 1 + right.length];
    for (int i = 0; i < left.length; i++) {
      node[left.length - 1 - i] = from - left[i];
    }
    for (int i = 0; i <= cells; i++) {
      node[left.length + i] = from + i * fineStep;
    }
    for (int i = 0; i < right.length; i++) {
      node[left.length + cells + 1 + i] = end + right[i];
    }
    node[0] = -reach;
    node[node.length - 1] = reach;
    return new ScanAxis(node, fineStep);
  }

  private static double[] outwards(double length, double fineStep, double coarseStep) {
    double[] distance = new double[64];
    int count = 0;
    double step = fineStep;
    double at = 0;
    while (at < length) {
      step = Math.min(step * GROWTH, Math.max(coarseStep, fineStep));
      at = length - (at + step) < 0.5 * step ? length : at + step;
      if (count == distance.length) {
        distance = Arrays.copyOf(distance, 2 * count);
      }
      distance[count++] = at;
    }
    return Arrays.copyOf(distance, count);
  }

  int size() {
    return node.length;
  }

  double at(int i) {
    return node[i];
  }

  double first() {
    return node[0];
  }

  double last() {
    return node[node.length - 1];
  }

  double cellWidth(int cell) {
    return node[cell + 1] - node[cell];
  }

  /** The cell that holds a value, or -1 outside the axis. */
  int cell(double value) {
    if (!(value >= first() && value <= last())) {
      return -1;
    }
    int bucket = (int) ((value - first()) * perBucket);
    int cell = bucketStart[Math.min(bucket, bucketStart.length - 1)];
    while (cell < node.length - 2 && value >= node[cell + 1]) {
      cell++;
    }
    return cell;
  }
}
