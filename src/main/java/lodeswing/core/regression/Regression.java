package lodeswing.core.regression;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * What a fit found, and what it is worth.
 *
 * <p>Errors come from the curve's slopes at the solution, with the scatter taken from the
 * residuals: the covariance is s^2 (J'J)^-1, s^2 the sum of squares over the degrees of freedom. A
 * direction in which the curve does not change to rounding is left out, and the parameters that lie
 * in it are told as undetermined.
 *
 * <p>Source: G. A. F. Seber, C. J. Wild, Nonlinear Regression (1989), section 2.1 (cited from
 * memory).
 */
public final class Regression {

  /** Part of the greatest singular value of scaled slopes below which nothing is told. */
  private static final double SINGULAR = 1e-9;

  /** Share of a parameter within untold directions from which on it is undetermined. */
  private static final double UNTOLD = 1e-3;

  private static final double HALF_CONFIDENCE = 0.975;

  private final List<FreeParameter> parameters;
  private final double[] values;
  private final double[] residuals;
  private final double[][] slopes;
  private final boolean converged;
  private final double[][] covariance;
  private final boolean[] determined;

  Regression(
      List<FreeParameter> parameters,
      double[] values,
      double[] residuals,
      double[][] slopes,
      boolean converged) {
    this.parameters = List.copyOf(parameters);
    this.values = values;
    this.residuals = residuals;
    this.slopes = slopes;
    this.converged = converged;
    this.covariance = new double[values.length][values.length];
    this.determined = new boolean[values.length];
    weigh();
  }

  /** Residuals of a curve of which nothing is sought. */
  public static Regression without(double[] values, double[] observed) {
    double[] residuals = new double[values.length];
    Arrays.setAll(residuals, i -> observed[i] - values[i]);
    return new Regression(List.of(), new double[0], residuals, new double[values.length][0], true);
  }

  private void weigh() {
    int count = values.length;
    if (count == 0) {
      return;
    }
    double[] size = new double[count];
    double[][] scaled = new double[slopes.length][count];
    for (int k = 0; k < count; k++) {
      double squares = 0;
      for (double[] row : slopes) {
        squares += row[k] * row[k];
      }
      size[k] = squares > 0 ? Math.sqrt(squares) : 1;
      for (int i = 0; i < slopes.length; i++) {
        scaled[i][k] = slopes[i][k] / size[k];
      }
    }
    var parts = new SingularValueDecomposition(new Array2DRowRealMatrix(scaled, false));
    double[] strengths = parts.getSingularValues();
    double[][] directions = parts.getV().getData();
    double variance = residualVariance();
    for (int k = 0; k < count; k++) {
      double untold = 0;
      for (int d = 0; d < count; d++) {
        if (!told(strengths, d)) {
          untold += directions[k][d] * directions[k][d];
        }
      }
      determined[k] = untold < UNTOLD;
      for (int l = 0; l < count; l++) {
        double sum = 0;
        for (int d = 0; d < count; d++) {
          if (told(strengths, d)) {
            sum += directions[k][d] * directions[l][d] / (strengths[d] * strengths[d]);
          }
        }
        covariance[k][l] = variance * sum / (size[k] * size[l]);
      }
    }
  }

  private static boolean told(double[] strengths, int direction) {
    return strengths[direction] > SINGULAR * strengths[0];
  }

  private double residualVariance() {
    double sum = 0;
    for (double residual : residuals) {
      sum += residual * residual;
    }
    return sum / degreesOfFreedom();
  }

  /** The parameters that were free. */
  public List<FreeParameter> parameters() {
    return parameters;
  }

  /** Value of a parameter, by its place. */
  public double value(int parameter) {
    return values[parameter];
  }

  /** All values, a copy. */
  public double[] values() {
    return values.clone();
  }

  /** Whether the data tell a parameter at all. */
  public boolean determined(int parameter) {
    return determined[parameter];
  }

  /** Standard error of a parameter; only of use where it is determined. */
  public double standardError(int parameter) {
    return Math.sqrt(covariance[parameter][parameter]);
  }

  /** Half the width of a parameter's 95 % interval, by Student's distribution. */
  public double halfWidth(int parameter) {
    double times =
        new TDistribution(degreesOfFreedom()).inverseCumulativeProbability(HALF_CONFIDENCE);
    return times * standardError(parameter);
  }

  /** Correlation of two parameters' errors, from -1 to 1; 0 where one has none. */
  public double correlation(int one, int other) {
    double both = standardError(one) * standardError(other);
    return both > 0 ? Math.max(-1, Math.min(1, covariance[one][other] / both)) : 0;
  }

  /** Observed less fitted values, a copy. */
  public double[] residuals() {
    return residuals.clone();
  }

  /** Root of the mean square of the residuals. */
  public double residualRms() {
    return Math.sqrt(residualVariance() * degreesOfFreedom() / residuals.length);
  }

  /** How many values were fitted. */
  public int residualCount() {
    return residuals.length;
  }

  /** Values less parameters. */
  public int degreesOfFreedom() {
    return residuals.length - values.length;
  }

  /** Whether the iteration came to an end by itself. */
  public boolean converged() {
    return converged;
  }

  /**
   * Standard error of the fitted curve at one of its values, from the parameters' errors.
   *
   * @param slopesThere slopes of another curve by the same parameters
   */
  public double standardErrorOf(double[] slopesThere) {
    double sum = 0;
    for (int k = 0; k < values.length; k++) {
      for (int l = 0; l < values.length; l++) {
        sum += slopesThere[k] * covariance[k][l] * slopesThere[l];
      }
    }
    return Math.sqrt(Math.max(0, sum));
  }

  /** Names of the parameters that the data do not tell. */
  public List<String> undetermined() {
    List<String> names = new ArrayList<>();
    for (int k = 0; k < values.length; k++) {
      if (!determined[k]) {
        names.add(parameters.get(k).name());
      }
    }
    return names;
  }
}
