package lodeswing.core.statistics;

import java.util.function.UnaryOperator;

/**
 * What errors of inputs make of results, for a model that is known as a function alone.
 *
 * <p>Each input is shifted by its standard uncertainty to both sides, half the difference of the
 * results is its share, and the shares of inputs that know nothing of each other are added in
 * quadrature. Source: JCGM 100:2008, 5.1.2 and note 2 to 5.1.3.
 */
public final class Propagation {

  private Propagation() {}

  /**
   * Standard uncertainties of the results.
   *
   * @param model results from inputs; results that there are none of are NaN
   * @param at the inputs
   * @param errors standard uncertainties of the inputs, 0 for what is exact
   */
  public static double[] errors(UnaryOperator<double[]> model, double[] at, double[] errors) {
    double[] squares = new double[model.apply(at.clone()).length];
    for (int input = 0; input < at.length; input++) {
      if (errors[input] == 0) {
        continue;
      }
      double[] shifted = at.clone();
      shifted[input] = at[input] + errors[input];
      double[] above = model.apply(shifted.clone());
      shifted[input] = at[input] - errors[input];
      double[] below = model.apply(shifted);
      for (int result = 0; result < squares.length; result++) {
        double share = (above[result] - below[result]) / 2;
        squares[result] += share * share;
      }
    }
    for (int result = 0; result < squares.length; result++) {
      squares[result] = Math.sqrt(squares[result]);
    }
    return squares;
  }
}
