package lodeswing.web.field;

import java.util.Arrays;
import lodeswing.core.field.Frame;

/**
 * The figures of a map.
 *
 * @param least strength [T]
 * @param most strength [T]
 * @param median of its points [T]
 * @param mostX where it is strongest [m]
 * @param mostY where it is strongest [m]
 * @param isEmpty whether no point has a strength
 */
record MapFigures(
    double least, double most, double median, double mostX, double mostY, boolean isEmpty) {

  static MapFigures of(double[] strengths, Frame frame) {
    double[] sorted = Arrays.stream(strengths).filter(Double::isFinite).sorted().toArray();
    if (sorted.length == 0) {
      return new MapFigures(0, 0, 0, 0, 0, true);
    }
    double most = sorted[sorted.length - 1];
    int at = 0;
    while (strengths[at] != most) {
      at++;
    }
    return new MapFigures(
        sorted[0],
        most,
        sorted[sorted.length / 2],
        frame.x(at % frame.columns()),
        frame.y(at / frame.columns()),
        false);
  }
}
