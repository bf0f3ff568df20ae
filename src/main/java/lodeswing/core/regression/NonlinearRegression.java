package lodeswing.core.regression;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Fits a curve by the method of Levenberg and Marquardt.
 *
 * <p>Slopes are central differences, one-sided at a bound. Values beyond a bound are taken back to
 * it. The best point that was looked at is the answer, also where the iteration finds that it can
 * do no better for rounding.
 *
 * <p>Source: J. J. More, in Numerical Analysis, Lecture Notes in Mathematics 630 (1978) 105, as
 * Apache Commons Math carries it out.
 */
public final class NonlinearRegression {

  /** Step of the slopes as a part of a parameter: near the cube root of the rounding. */
  static final double SLOPE_STEP = 6e-6;

  private final double tolerance;
  private final int iterations;

  /**
   * A way to fit.
   *
   * @param tolerance relative change of the sum of squares, and of the parameters, at which it ends
   * @param iterations at most
   */
  public NonlinearRegression(double tolerance, int iterations) {
    this.tolerance = tolerance;
    this.iterations = iterations;
  }

  /**
   * Fits a curve.
   *
   * @param model the curve
   * @param parameters what may change, at least one
   * @param observed what the curve is to meet, more values than parameters
   */
  public Regression fit(CurveModel model, List<FreeParameter> parameters, double[] observed) {
    if (parameters.isEmpty() || observed.length <= parameters.size()) {
      throw new IllegalArgumentException(
          observed.length + " values cannot tell " + parameters.size() + " parameters");
    }
    Search search = new Search(model, parameters, observed);
    search.run();
    return search.result();
  }

  /** One fit under way. */
  private final class Search {

    private final CurveModel model;
    private final List<FreeParameter> parameters;
    private final double[] observed;
    private double[] best;
    private double least = Double.POSITIVE_INFINITY;
    private boolean converged;

    Search(CurveModel model, List<FreeParameter> parameters, double[] observed) {
      this.model = model;
      this.parameters = parameters;
      this.observed = observed;
      this.best = parameters.stream().mapToDouble(FreeParameter::start).toArray();
    }

    void run() {
      MultivariateJacobianFunction curve = this::valueAndSlopes;
      var problem =
          new LeastSquaresBuilder()
              .start(best)
              .model(curve)
              .parameterValidator(this::withinBounds)
              .target(observed)
              .lazyEvaluation(false)
              .maxEvaluations(10 * iterations)
              .maxIterations(iterations)
              .build();
      try {
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(tolerance)
            .withParameterRelativeTolerance(tolerance)
            .withOrthoTolerance(tolerance)
            .optimize(problem);
        converged = true;
      } catch (ConvergenceException e) {
        // Nothing better within the rounding.
        converged = true;
      } catch (TooManyEvaluationsException | TooManyIterationsException e) {
        converged = false;
      }
    }

    private RealVector withinBounds(RealVector point) {
      double[] inside = point.toArray();
      for (int k = 0; k < inside.length; k++) {
        double value = Double.isNaN(inside[k]) ? best[k] : inside[k];
        inside[k] = parameters.get(k).clamped(value);
      }
      return new ArrayRealVector(inside, false);
    }

    private Pair<RealVector, RealMatrix> valueAndSlopes(RealVector point) {
      double[] at = point.toArray();
      double[] values = model.values(at);
      double squares = squares(values);
      if (squares < least) {
        least = squares;
        best = at.clone();
      }
      return new Pair<>(
          new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes(at, values), false));
    }

    private double squares(double[] values) {
      double sum = 0;
      for (int i = 0; i < values.length; i++) {
        double off = observed[i] - values[i];
        sum += off * off;
      }
      return sum;
    }

    private double[][] slopes(double[] at, double[] values) {
      double[][] slopes = new double[values.length][at.length];
      for (int k = 0; k < at.length; k++) {
        FreeParameter parameter = parameters.get(k);
        double step = parameter.slopeStep(at[k]);
        double[] moved = at.clone();
        moved[k] = parameter.clamped(at[k] + step);
        double high = moved[k];
        double[] above = high > at[k] ? model.values(moved) : values;
        moved[k] = parameter.clamped(at[k] - step);
        double low = moved[k];
        double[] below = low < at[k] ? model.values(moved) : values;
        for (int i = 0; i < values.length; i++) {
          slopes[i][k] = (above[i] - below[i]) / (high - low);
        }
      }
      return slopes;
    }

    Regression result() {
      double[] values = model.values(best);
      double[] residuals = new double[values.length];
      Arrays.setAll(residuals, i -> observed[i] - values[i]);
      return new Regression(parameters, best, residuals, slopes(best, values), converged);
    }
  }
}
