package lodeswing.core.regression;

import java.util.List;

/**
 * Slopes of a curve by differences: central, one-sided at a bound, over a step that the curve takes
 * nearly straight.
 */
public final class Slopes {

  /** How much a step shrinks at most at a time. */
  private static final double SHRINK = 1e-3;

  private static final int MOST_TRIES = 6;

  private final CurveModel model;
  private final List<FreeParameter> parameters;

  /** Slopes of a curve by its parameters. */
  public Slopes(CurveModel model, List<FreeParameter> parameters) {
    this.model = model;
    this.parameters = List.copyOf(parameters);
  }

  /**
   * The slopes at a point, a row a value, a column a parameter.
   *
   * @param at the point, within the bounds
   * @param values of the curve there
   */
  public double[][] at(double[] at, double[] values) {
    double[][] slopes = new double[values.length][at.length];
    for (int k = 0; k < at.length; k++) {
      column(at, values, k, slopes);
    }
    return slopes;
  }

  private void column(double[] at, double[] values, int k, double[][] slopes) {
    FreeParameter parameter = parameters.get(k);
    double step = model.slopeStep() * Math.max(Math.abs(at[k]), parameter.scale());
    for (int tries = 0; ; tries++) {
      double[] moved = at.clone();
      moved[k] = parameter.clamped(at[k] + step);
      double high = moved[k];
      double[] above = high > at[k] ? model.values(moved) : values;
      moved[k] = parameter.clamped(at[k] - step);
      double low = moved[k];
      double[] below = low < at[k] ? model.values(moved) : values;
      double change = 0;
      for (int i = 0; i < values.length; i++) {
        slopes[i][k] = (above[i] - below[i]) / (high - low);
        change = Math.max(change, Math.abs(above[i] - below[i]));
      }
      if (change <= model.straightOver() || tries == MOST_TRIES) {
        return;
      }
      step *= Math.max(SHRINK, model.straightOver() / (2 * change));
    }
  }
}
