package lodeswing.core.statistics;

import java.util.Arrays;

/**
 * Labels at the nodes of a square grid, and how often each occurs.
 *
 * <p>Row-major: node (row, column) is entry row * side + column. A node stands for itself, a point;
 * neighbours lie one spacing apart. Nodes without a label take part in nothing. Immutable.
 */
public final class LabelGrid {

  /** In the array given: this node has no label. */
  public static final int NO_LABEL = Integer.MIN_VALUE;

  /** Fewest nodes along a side. */
  public static final int LEAST_SIDE = 8;

  /** In {@link #index}: this node has no label. */
  static final int NONE = -1;

  private final int side;
  private final int[] labels;
  private final int[] counts;
  private final int[] index;

  private LabelGrid(int side, int[] labels, int[] index) {
    this.side = side;
    this.labels = labels;
    this.index = index;
    counts = new int[labels.length];
    for (int k : index) {
      if (k != NONE) {
        counts[k]++;
      }
    }
  }

  /**
   * A grid of labels; the array is read once and not kept.
   *
   * @param side nodes along a side, {@value #LEAST_SIDE} or more
   * @param labels side * side labels, {@link #NO_LABEL} where there is none
   */
  public static LabelGrid of(int side, int[] labels) {
    if (side < LEAST_SIDE || labels.length != side * side) {
      throw new IllegalArgumentException(labels.length + " labels for a side of " + side);
    }
    int[] distinct =
        Arrays.stream(labels).filter(label -> label != NO_LABEL).sorted().distinct().toArray();
    int[] index = new int[labels.length];
    for (int n = 0; n < index.length; n++) {
      index[n] = labels[n] == NO_LABEL ? NONE : Arrays.binarySearch(distinct, labels[n]);
    }
    return new LabelGrid(side, distinct, index);
  }

  /** Nodes along a side. */
  public int side() {
    return side;
  }

  /** The labels that occur, ascending; a fresh array. */
  public int[] labels() {
    return labels.clone();
  }

  /** How many nodes have a label; 0 for one that does not occur. */
  public int count(int label) {
    int k = Arrays.binarySearch(labels, label);
    return k < 0 ? 0 : counts[k];
  }

  /** How many nodes have a label at all. */
  public int labelled() {
    return Arrays.stream(counts).sum();
  }

  /** Every n-th node of every n-th row, from the first: the same plane seen more coarsely. */
  LabelGrid thinned(int step) {
    int coarse = (side - 1) / step + 1;
    int[] kept = new int[coarse * coarse];
    for (int row = 0; row < coarse; row++) {
      for (int column = 0; column < coarse; column++) {
        kept[row * coarse + column] = index[row * step * side + column * step];
      }
    }
    return new LabelGrid(coarse, labels, kept);
  }

  /** The same grid with some labels taken away. */
  LabelGrid without(boolean[] dropped) {
    int[] relabelled = new int[index.length];
    for (int n = 0; n < index.length; n++) {
      relabelled[n] = index[n] == NONE || dropped[index[n]] ? NO_LABEL : labels[index[n]];
    }
    return of(side, relabelled);
  }

  /** Position among {@link #labels()} of a node's label, or {@link #NONE}. */
  int index(int node) {
    return index[node];
  }

  /** A fresh copy of the positions of all nodes. */
  int[] indices() {
    return index.clone();
  }
}
