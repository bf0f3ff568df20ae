package lodeswing.core.statistics;

/** The label of one place of a plane. */
@FunctionalInterface
interface Plane {

  int at(double x, double y);

  /** The same, many places at once. */
  default PlaneLabelling labelling() {
    return (x, y, label) -> {
      for (int n = 0; n < label.length; n++) {
        label[n] = at(x[n], y[n]);
      }
    };
  }

  /** Labels at the middles of side x side equal cells of a square. */
  default LabelGrid grid(double low, double high, int side) {
    return grid(new double[] {low, high}, new double[] {low, high}, side);
  }

  /** Labels at the middles of side x side equal cells of a rectangle. */
  default LabelGrid grid(double[] x, double[] y, int side) {
    int[] label = new int[side * side];
    for (int n = 0; n < label.length; n++) {
      int row = n / side;
      int column = n % side;
      label[n] =
          at(
              x[0] + (x[1] - x[0]) * (column + 0.5) / side,
              y[0] + (y[1] - y[0]) * (row + 0.5) / side);
    }
    return LabelGrid.of(side, label);
  }
}
