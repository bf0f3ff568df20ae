package lodeswing.core.statistics;

/** The blocks, four by four, that a grid is cut into for the jackknife. */
final class GridBlocks {

  private static final int ALONG = 4;

  /** How many blocks there are. */
  static final int COUNT = ALONG * ALONG;

  private final int[] along;

  GridBlocks(int side) {
    along = new int[side];
    for (int i = 0; i < side; i++) {
      along[i] = i * ALONG / side;
    }
  }

  int of(int row, int column) {
    return along[row] * ALONG + along[column];
  }
}
