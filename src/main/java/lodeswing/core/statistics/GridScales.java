package lodeswing.core.statistics;

import java.util.Arrays;

/** The scales at which a grid is measured: powers of two and thrice them. */
final class GridScales {

  private GridScales() {}

  static double[] upToSixteenthOf(int side) {
    double[] scales = new double[64];
    int count = 0;
    for (int scale = 1; scale <= Math.max(side / 16, 1); scale++) {
      int odd = scale >> Integer.numberOfTrailingZeros(scale);
      if (odd == 1 || odd == 3) {
        scales[count++] = scale;
      }
    }
    return Arrays.copyOf(scales, count);
  }
}
