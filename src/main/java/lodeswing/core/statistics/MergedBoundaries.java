package lodeswing.core.statistics;

/**
 * How far each boundary node of a grid lies from the boundaries of all labels.
 *
 * <p>Label k has its own boundary: with all other labels merged into one, the nodes that have a
 * neighbour (of eight) on the other side. A boundary node is a node of any of them; its reach is
 * the largest chessboard distance [spacings] from it to the nearest node of each label's boundary.
 * Nodes whose reach exceeds their distance to the grid's edge are not judged, since what they lack
 * may lie just outside.
 */
final class MergedBoundaries {

  private static final int FAR = Integer.MAX_VALUE / 2;

  private final LabelGrid grid;
  private final int side;
  private final int[] reach;
  private final boolean[] onBoundary;

  private MergedBoundaries(LabelGrid grid) {
    this.grid = grid;
    side = grid.side();
    reach = new int[side * side];
    onBoundary = new boolean[side * side];
  }

  static MergedBoundaries of(LabelGrid grid) {
    MergedBoundaries all = new MergedBoundaries(grid);
    int[] distance = new int[grid.side() * grid.side()];
    for (int k = 0; k < grid.labels().length; k++) {
      all.markBoundary(k, distance);
      all.spread(distance);
      for (int n = 0; n < distance.length; n++) {
        all.reach[n] = Math.max(all.reach[n], distance[n]);
      }
    }
    return all;
  }

  private void markBoundary(int k, int[] distance) {
    for (int n = 0; n < distance.length; n++) {
      boolean boundary = separates(k, n);
      distance[n] = boundary ? 0 : FAR;
      onBoundary[n] |= boundary;
    }
  }

  /** Whether a node or a neighbour of it, but not both, bears label k. */
  private boolean separates(int k, int node) {
    int own = grid.index(node);
    if (own == LabelGrid.NONE) {
      return false;
    }
    int row = node / side;
    int column = node % side;
    for (int r = Math.max(row - 1, 0); r <= Math.min(row + 1, side - 1); r++) {
      for (int c = Math.max(column - 1, 0); c <= Math.min(column + 1, side - 1); c++) {
        int other = grid.index(r * side + c);
        if (other != LabelGrid.NONE && (other == k) != (own == k)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Turns zeros and far marks into chessboard distances to the nearest zero, by two passes (A.
   * Rosenfeld and J. L. Pfaltz, J. ACM 13 (1966) 471).
   */
  private void spread(int[] distance) {
    for (int n = 0; n < distance.length; n++) {
      relax(distance, n, -1);
    }
    for (int n = distance.length - 1; n >= 0; n--) {
      relax(distance, n, 1);
    }
  }

  private void relax(int[] distance, int node, int step) {
    int column = node % side;
    int best = distance[node];
    if (column + step >= 0 && column + step < side) {
      best = Math.min(best, distance[node + step] + 1);
    }
    int beyond = node - column + step * side;
    if (beyond >= 0 && beyond < distance.length) {
      for (int c = Math.max(column - 1, 0); c <= Math.min(column + 1, side - 1); c++) {
        best = Math.min(best, distance[beyond + c] + 1);
      }
    }
    distance[node] = best;
  }

  private boolean judged(int node) {
    int row = node / side;
    int column = node % side;
    int edge = Math.min(Math.min(row, column), side - 1 - Math.max(row, column));
    return onBoundary[node] && reach[node] <= edge;
  }

  /** How many boundary nodes are judged. */
  int nodes() {
    int nodes = 0;
    for (int n = 0; n < reach.length; n++) {
      nodes += judged(n) ? 1 : 0;
    }
    return nodes;
  }

  /** The largest reach of the judged nodes; 0 without any. */
  int farthest() {
    int farthest = 0;
    for (int n = 0; n < reach.length; n++) {
      farthest = judged(n) ? Math.max(farthest, reach[n]) : farthest;
    }
    return farthest;
  }

  /**
   * Share of the judged nodes whose reach is at most a radius; a judged node must exist.
   *
   * <p>Its interval is the wider of the jackknife over blocks and that of independent nodes, so
   * that it does not shrink to a point where all nodes agree.
   */
  Estimate shareWithin(int radius) {
    GridBlocks blocks = new GridBlocks(side);
    double[] within = new double[GridBlocks.COUNT];
    int[] nodes = new int[GridBlocks.COUNT];
    int allWithin = 0;
    int allNodes = 0;
    for (int n = 0; n < reach.length; n++) {
      if (judged(n)) {
        int block = blocks.of(n / side, n % side);
        int hit = reach[n] <= radius ? 1 : 0;
        nodes[block]++;
        within[block] += hit;
        allNodes++;
        allWithin += hit;
      }
    }
    Interval independent = new Proportion(allWithin, allNodes).clopperPearson(Estimate.CONFIDENCE);
    Estimate share = Jackknife.ratio(within, nodes).orElseThrow().within(0, 1);
    return new Estimate(share.value(), share.standardError(), share.interval().hull(independent));
  }
}
