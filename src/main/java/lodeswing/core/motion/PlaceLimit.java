package lodeswing.core.motion;

import java.util.function.DoubleBinaryOperator;

/**
 * A limit that depends on the place alone, so its least margin is its margin.
 *
 * @param kind what happens at the border
 * @param place margin over (beta, alpha)
 */
record PlaceLimit(Kind kind, DoubleBinaryOperator place) implements Limit {

  @Override
  public double margin(double[] state) {
    return place.applyAsDouble(state[0], state[1]);
  }

  @Override
  public double leastMargin(double q0, double q1) {
    return place.applyAsDouble(q0, q1);
  }
}
