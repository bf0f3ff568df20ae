package lodeswing.analysis.occupancy;

/**
 * Square cells over a square about the middle, numbered row by row from the upper left.
 *
 * @param halfWidth half of the square's side, positive [plan unit]
 * @param side cells along a side
 */
public record CellGrid(double halfWidth, int side) {

  /** What {@link #index} answers beside the grid. */
  static final int OUTSIDE = -1;

  /** Side of a cell [plan unit]. */
  public double cell() {
    return 2 * halfWidth / side;
  }

  /** How many cells there are. */
  public int count() {
    return side * side;
  }

  /** The cell that holds a place, or {@link #OUTSIDE}. */
  int index(double x, double y) {
    double column = Math.floor((x + halfWidth) / cell());
    double row = Math.floor((halfWidth - y) / cell());
    boolean inside = column >= 0 && column < side && row >= 0 && row < side;
    return inside ? (int) (row * side + column) : OUTSIDE;
  }

  /** x of a cell's middle. */
  public double x(int index) {
    return (index % side + 0.5) * cell() - halfWidth;
  }

  /** y of a cell's middle. */
  public double y(int index) {
    int row = index / side;
    return halfWidth - (row + 0.5) * cell();
  }
}
